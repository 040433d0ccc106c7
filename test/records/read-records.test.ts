import { headings } from '../../src/base/geometry/index.js';
import { describe, expect, it } from 'vitest';
import { readRecords } from '../../src/core/records/index.js';
import { edited, told } from './small-house.js';

const foot = 304_800_000;
const inch = 25_400_000;

describe('a house with nothing wrong', () => {
  const outcome = readRecords(edited());
  const records = outcome.value;

  it('has no problems', () => {
    expect(told(outcome)).toEqual([]);
    expect(records).toBeDefined();
  });

  it('comes in working order', () => {
    expect(records?.rooms.map(({ number }) => number)).toEqual(['101', '102']);
    expect(records?.categories.map(({ slug }) => slug)).toEqual(['interior-door', 'ceiling-board']);
    expect(records?.options.map(({ slug }) => slug)).toEqual(['flush-door', 'fir-tg-1x6', 'pine-shiplap-1x8']);
    expect(records?.trades.map(({ slug }) => slug)).toEqual(['finish-carpentry', 'framing']);
    expect(records?.sources[0]?.path).toBe('content/categories/ceiling-board.md');
  });

  it('reads the house', () => {
    expect(records?.house).toMatchObject({
      name: 'Larch Hollow',
      contract: {
        sum: 148_600_000,
        tax: [{ rate: { amount: 625, scale: 4 }, on: ['material', 'freight'] }],
        creditReturns: { amount: 100, scale: 2 },
        creditMarkup: false,
      },
      allowances: [{ id: 'wood-ceilings', amount: { by: 'lump', sum: 980_000 } }],
      calendar: { reviewDays: 5, closed: [{ from: '2026-07-03', to: '2026-07-10' }] },
      milestones: [
        { id: 'framing', when: { by: 'date', date: '2026-05-04' } },
        { id: 'drywall', when: { by: 'after', after: 'framing', days: 40 } },
        { id: 'trim' },
      ],
      body: 'The house.',
    });
  });

  it('reads rooms', () => {
    const [foyer, study] = records?.rooms ?? [];
    expect(study).toMatchObject({
      slug: 'study',
      shape: { by: 'size', eastWest: 14 * foot, northSouth: 12.5 * foot, open: [{ wall: 'east', to: 'foyer' }] },
      ceiling: [
        {
          name: 'Ceiling',
          form: { form: 'gable', ridge: headings.east, plate: 8 * foot, pitch: { rise: 6, run: 12 } },
        },
      ],
      openings: [
        { by: 'own', mark: 'D01', operation: 'swing', sill: 0, hinge: 'left', swing: 'study' },
        { by: 'own', mark: 'W01', operation: 'fixed', sill: 2.5 * foot, path: ['openings', 1] },
      ],
      features: [{ kind: 'built-in', id: 'bench', path: ['features', 0] }],
      selections: [
        {
          at: ['ceiling'],
          chosen: 'fir-tg-1x6',
          supply: 'contractor',
          waste: { amount: 12, scale: 2 },
          path: ['selections', 0],
        },
        { at: ['D01'], considering: [] },
      ],
    });
    // From the south-west corner, which a walk has at 0, 0: 1 to 5 feet east, 2 to 5 feet north.
    expect(foyer?.voids[0]?.corners).toEqual([
      { x: foot, y: 2 * foot },
      { x: foot, y: 5 * foot },
      { x: 5 * foot, y: 5 * foot },
      { x: 5 * foot, y: 2 * foot },
    ]);
    expect(foyer?.shape).toMatchObject({
      by: 'walk',
      walls: [{}, {}, {}, { name: 'west', go: 'north', openTo: 'study' }],
    });
    expect(foyer?.openings).toEqual([
      { by: 'seen', mark: 'D01', recordedIn: 'study', wall: 'north', at: 2 * foot, path: ['openings', 0] },
    ]);
  });

  it('reads options and their attributes', () => {
    expect(records?.options[1]).toMatchObject({
      category: 'ceiling-board',
      parts: [
        {
          part: 'main',
          unit: 'sq ft',
          material: { amount: 740, scale: 2 },
          labor: { amount: 410, scale: 2 },
          pack: { name: 'bundle', holds: 24 },
          waste: { amount: 10, scale: 2 },
        },
      ],
      freight: 18_500,
      leadDays: 30,
      weight: { pounds: 2.1, per: 'sq ft' },
      thickness: 0.75 * inch,
      attributes: {
        nominal: { text: '1x8', value: { kind: 'text', text: '1x8' } },
        face: { text: '6 3/4"', value: { kind: 'length', length: 6.75 * inch } },
        stock: { text: "8', 10'", value: { kind: 'lengths', lengths: [8 * foot, 10 * foot] } },
        grade: { value: { text: 'clear' } },
      },
      needs: [{ what: 'Strapping', by: 'framing', before: 'drywall' }],
    });
    expect(records?.options[0]).toMatchObject({ freight: 0, parts: [{ waste: { amount: 0 } }] });
  });

  it('knows where each value stands', () => {
    const origin = records?.rooms[1]?.origin;
    expect(origin?.at(['selections', 0, 'chosen'])).toEqual({ line: 20, column: 13 });
    expect(origin?.key(['selections', 0, 'chosen'])).toEqual({ line: 20, column: 5 });
    expect(origin?.at(['selections', 1, 'at', 0])).toEqual({ line: 24, column: 10 });
    // What is not written has the place of what holds it.
    expect(origin?.at(['selections', 1, 'waste'])).toEqual({ line: 24, column: 5 });
  });
});

describe('what the pictures of a room go by', () => {
  const study = 'content/rooms/study.md';
  const sections = "sections: [{ name: Across, at: 4', looks: east }]";

  it('is read: side, sections, division of a window', () => {
    const { value } = readRecords(
      edited(
        ['content/house.md', 'contract:', 'picture: study\ncontract:'],
        [study, 'selections:', `view-from: south-west\n${sections}\nselections:`],
        [study, `sill: 2'-6"`, `sill: 2'-6", division: 2x12`],
      ),
    );
    const room = value?.rooms.find(({ slug }) => slug === 'study');
    expect(value?.house.picture).toBe('study');
    expect(room).toMatchObject({ viewFrom: 'south-west', sections: [{ name: 'Across', at: 4 * foot, looks: 'east' }] });
    expect(room?.openings.find(({ mark }) => mark === 'W01')).toMatchObject({ division: { across: 2, up: 12 } });
  });

  it('is nothing where nothing is said', () => {
    const { value } = readRecords(edited());
    expect(value?.house).not.toHaveProperty('picture');
    for (const key of ['viewFrom', 'sections']) expect(value?.rooms[0]).not.toHaveProperty(key);
    expect(value?.rooms.flatMap(({ openings }) => openings).some((one) => 'division' in one)).toBe(false);
  });

  it.each<readonly [file: string, from: string, to: string, problem: string]>([
    [
      'content/house.md',
      'contract:',
      'picture: studdy\ncontract:',
      `room-unknown the house is pictured by a room 'studdy'`,
    ],
    [study, 'selections:', 'view-from: sout\nselections:', `value-unknown 'view-from' cannot be 'sout'`],
    [study, `sill: 2'-6"`, `sill: 2'-6", division: 2 by 3`, `text-form '2 by 3' is not a division`],
    [
      study,
      'kind: door',
      'kind: cased, division: 2x2',
      `door-fact D01 is neither window nor door, and says 'division'`,
    ],
  ])('%s: %s is %s', (file, from, to, problem) => {
    expect(told(readRecords(edited([file, from, to])))).toContainEqual(expect.stringContaining(problem));
  });
});

describe('colours of a swatch', () => {
  const door = 'content/options/interior-door/flush-door.md';
  const swatch = (colors: string) => {
    const read = readRecords(edited([door, 'colors: ["#ffffff"]', `colors: ${colors}`]));
    return { told: told(read), swatch: read.value?.options.find(({ slug }) => slug === 'flush-door')?.swatch };
  };

  it('are a list', () => {
    expect(swatch('["#a9744a", "#cfdadb"]').swatch).toEqual({ pattern: 'slab-door', colors: ['#a9744a', '#cfdadb'] });
  });

  it('or stand by the part that has each, and are a list in that order too', () => {
    expect(swatch('{ leaf: "#a9744a", glass: "#cfdadb" }').swatch).toEqual({
      pattern: 'slab-door',
      colors: ['#a9744a', '#cfdadb'],
      roles: { leaf: '#a9744a', glass: '#cfdadb' },
    });
  });

  it.each([
    ['{ leef: "#a9744a" }', `key-unknown there is no key 'leef' here | did you mean 'leaf'?`],
    ['{}', `list-short 'colors' is empty`],
    ['{ leaf: brown }', `text-form 'brown' is not a color`],
  ])('%s', (colors, problem) => {
    expect(swatch(colors).told).toEqual([expect.stringContaining(problem)]);
  });
});

describe('parts of a ceiling', () => {
  const written = `ceiling: { form: gable, ridge: east-west, plate: 8'-0", pitch: 6/12 }`;
  const parts = (over: string): string => `ceiling:
  - { name: Low, form: flat, height: 8'-0", over: { x: 0", y: 0", width: 4'-0", depth: 12'-6" } }
  - { name: High, form: flat, height: 9'-0", over: ${over} }`;
  const read = (over: string) => readRecords(edited(['content/rooms/study.md', written, parts(over)]));

  it('are over a rectangle, or over corners where there are other angles', () => {
    const outcome = read(`[ { x: 4', y: 0" }, { x: 4', y: 12'-6" }, { x: 14', y: 12'-6" }, { x: 13'-6", y: 0" } ]`);
    expect(told(outcome)).toEqual([]);
    const study = outcome.value?.rooms.find(({ slug }) => slug === 'study');
    expect(study?.ceiling.map(({ over }) => over?.map(({ x, y }) => [x / foot, y / foot]))).toEqual([
      [
        [0, 0],
        [0, 12.5],
        [4, 12.5],
        [4, 0],
      ],
      [
        [4, 0],
        [4, 12.5],
        [14, 12.5],
        [13.5, 0],
      ],
    ]);
  });

  it('need three corners, each with x and y', () => {
    expect(told(read(`[ { x: 4', y: 0" }, { x: 4', y: 12'-6" } ]`))).toEqual([
      `rooms/study.md:10:52 list-short 'over' needs at least 3 entries | add what is missing`,
    ]);
    expect(told(read(`[ { x: 4', y: 0" }, { x: 4' }, { x: 14', y: 0" } ]`))[0]).toMatch(
      /^rooms\/study\.md:10:72 key-missing /u,
    );
  });
});

it('places a room west and south of another with minus signs', () => {
  const { value } = readRecords(
    edited(['content/rooms/study.md', 'use: study\n', `use: study\nplace: { from: foyer, x: -14'-4", y: -6" }\n`]),
  );
  expect(value?.rooms.find(({ slug }) => slug === 'study')?.place).toEqual({
    from: 'foyer',
    at: { x: -(14 * foot + 4 * inch), y: -6 * inch },
  });
});
