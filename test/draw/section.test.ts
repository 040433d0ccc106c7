import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOf, patchFrom } from '../../src/base/geometry/index.js';
import { flightProfile, stairOf } from '../../src/core/feature/index.js';
import { svgText } from '../../src/base/svg/index.js';
import type { Length } from '../../src/base/units/index.js';
import type { RoomMeasure } from '../../src/core/model/index.js';
import { drawSection, printPalette, sectionsOf, type Drawing, type LetteredSection } from '../../src/draw/index.js';
import { sectionScene } from '../../src/draw/section/scene.js';
import { ft, measured, type Sketch } from './fixtures.js';
import { collisions, outside, struckThrough, textsOf, unfinite } from './reading.js';
import { rooms } from './rooms.js';

const base = { palette: printPalette, id: 's', number: '101', name: 'Hall' };

function draw(
  measure: RoomMeasure,
  section: Partial<LetteredSection> & Pick<LetteredSection, 'at' | 'looks'>,
): Drawing {
  return drawSection(measure, { letter: 'A', name: 'Cut', ...section }, base);
}

function words({ svg }: Drawing): string[] {
  return textsOf(svg).map(({ content }) => content);
}

function size(eastWest: number, northSouth: number): Sketch['shape'] {
  return { by: 'size', eastWest: ft(eastWest), northSouth: ft(northSouth), open: [] };
}

/** 20' wide, plates at 8', 6/12: the ridge is at 8' + 10' / 2 = 13'. */
const gable: Sketch = {
  slug: 'gable',
  shape: size(20, 30),
  ceiling: { form: 'gable', ridge: { x: 0, y: 1 }, plate: ft(8), pitch: { rise: 6, run: 12 } },
};

describe('a section through a gable', () => {
  it('says width, plate and ridge', () => {
    const texts = words(draw(measured(gable), { at: ft(12), looks: 'north' }));
    for (const text of [`20'-0"`, `8'-0"`, `13'-0"`]) expect(texts).toContain(text);
    expect(texts).toContain('Section A: Cut, looking north – 101 Hall');
    expect(texts.join(' ')).toContain(`Cut 12'-0" north of the south-west corner`);
  });

  it('cuts what was cut by hand', () => {
    const { poche, shell } = sectionScene(measured(gable), { at: ft(12), looks: 'north' });
    // Walls of 6", floor of 0.85' and ceiling of 0.4' plumb, as drawn: 21' of floor and of ceiling, and two walls up to the ceiling's underside at their
    // middle, 0.25' out and 0.125' under the plate.
    expect(areaOf(poche)).toBeCloseTo(21 * 0.85 + 21 * 0.4 + 2 * 0.5 * (8 - 0.125), 4);
    expect(areaOf(shell.open)).toBeCloseTo(20 * (8 + 13) * 0.5, 4);
  });

  it('leaves out the openings that it goes through', () => {
    const window = {
      mark: 'W01',
      kind: 'window',
      wall: 'west',
      at: ft(10),
      width: ft(4),
      height: ft(3),
      sill: ft(2),
    } as const;
    const without = sectionScene(measured(gable), { at: ft(12), looks: 'north' });
    const withIt = measured({ ...gable, openings: [{ ...window, to: 'outside' }] });
    const scene = sectionScene(withIt, { at: ft(12), looks: 'north' });
    expect(areaOf(without.poche) - areaOf(scene.poche)).toBeCloseTo(0.5 * 3, 4);
    const texts = words(draw(withIt, { at: ft(12), looks: 'north' }));
    // Sill, height of the opening, and from its head to the plate.
    for (const text of [`2'-0"`, `3'-0"`]) expect(texts).toContain(text);
    const beside = sectionScene(withIt, { at: ft(3), looks: 'north' });
    expect(areaOf(beside.poche)).toBeCloseTo(areaOf(without.poche), 6);
  });

  it('is the same wherever along the ridge it is cut', () => {
    const measure = measured(gable);
    const shapes = (at: Length) => {
      const { poche, seen } = sectionScene(measure, { at, looks: 'north' });
      return { poche, seen: seen.map(({ facet, patches }) => ({ id: facet.id, patches })) };
    };
    const first = shapes(ft(15));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 * 192 - 1 }), (sixteenths) => {
        expect(shapes((sixteenths * 1_587_500) as Length)).toEqual(first);
      }),
      { numRuns: 40 },
    );
  });

  it('is drawn to the same bytes twice', () => {
    const [one, other] = [measured(gable), measured(gable)].map((measure) =>
      svgText(draw(measure, { at: ft(12), looks: 'east' }).svg),
    );
    expect(one).toBe(other);
  });
});

describe('a section along a flight', () => {
  const hall = measured({
    slug: 'hall',
    shape: size(10, 24),
    ceiling: { form: 'flat', height: ft(18) },
    features: [
      {
        kind: 'stair',
        id: 'stair',
        name: 'Main stair',
        rise: `9'-4 1/2"`,
        risers: 15,
        going: `10"`,
        width: `3'`,
        rails: 0,
        x: `6'`,
        y: `4'`,
        go: 'north',
      },
    ],
  });

  it('says its steps, its rise and its headroom', () => {
    const [section, ...more] = sectionsOf(hall);
    expect(more).toEqual([]);
    expect(section).toMatchObject({ letter: 'A', at: ft(7.5), looks: 'west', isChosen: true });
    const texts = words(drawSection(hall, section!, base));
    // 9'-4 1/2" / 15 = 7 1/2", and 18' - 9'-4 1/2" over the last nosing, which is the floor above.
    for (const text of [`15 R at 7 1/2", 14 T at 10"`, `9'-4 1/2" floor to floor`, `8'-7 1/2" headroom`])
      expect(texts).toContain(text);
  });

  it('cuts as many steps as there are treads', () => {
    const { bodies } = sectionScene(hall, { at: ft(7.5), looks: 'west' });
    const [flight] = bodies;
    const level = flight!.shown.flatMap(({ outline }) =>
      outline.filter((corner, i) => {
        const next = outline[(i + 1) % outline.length]!;
        return Math.abs(corner.y - next.y) < 1e-5 && corner.y > 0.1;
      }),
    );
    expect(level).toHaveLength(14);
    expect(sectionScene(hall, { at: ft(3), looks: 'west' }).bodies).toEqual([]);
  });
});

it('says its whole title on a narrow sheet, on more lines than one', () => {
  const room = measured({ slug: 'closet', shape: size(3, 4), ceiling: { form: 'flat', height: ft(8) } });
  const name = 'Across the shelves and the slopes of the ceiling';
  const options = { ...base, name: 'Closet of the north bedroom', box: { width: 5, height: 5 } };
  const drawing = drawSection(room, { at: ft(2), looks: 'north', letter: 'A', name }, options);
  const all = words(drawing);
  const lines = all.slice(
    all.findIndex((text) => text.startsWith('Section')),
    all.findIndex((text) => text.startsWith('Scale')),
  );
  expect(lines.length).toBeGreaterThan(1);
  expect(lines.join(' ')).toBe(`Section A: ${name}, looking north – 101 Closet of the north bedroom`);
  expect(outside(drawing.svg)).toEqual([]);
});

it('cuts a flight that runs askew: all cuts together are the flight', () => {
  const stair = { kind: 'stair', id: 'stair', name: 'Stair', rise: `9'-4 1/2"`, risers: 15, going: `10"`, width: `3'` };
  const room = measured({
    slug: 'hall',
    shape: size(20, 24),
    ceiling: { form: 'flat', height: ft(18) },
    features: [{ ...stair, rails: 0, x: `4'`, y: `8'`, go: 'north-east' }],
  });
  const step = 0.25;
  let volume = 0;
  for (let at = step / 2; at < 24; at += step) {
    const { bodies } = sectionScene(room, { at: ft(at), looks: 'north' });
    volume += step * areaOf(bodies.flatMap(({ shown }) => shown));
  }
  const profile = flightProfile(room.features.map(stairOf).find((one) => one !== undefined)!);
  expect(volume / (3 * areaOf([patchFrom(profile)]))).toBeCloseTo(1, 2);
  const { svg } = drawSection(room, { at: ft(10), looks: 'north', letter: 'A', name: 'Askew' }, base);
  expect(unfinite(svg)).toEqual([]);
});

it('cuts beams at their ends and says how far up they are', () => {
  const beams = { kind: 'timber', id: 'beams', name: 'Beams', count: 3, length: `20'`, width: `6"`, depth: `10"` };
  const room = measured({
    slug: 'kitchen',
    shape: size(20, 16),
    ceiling: { form: 'flat', height: ft(9) },
    features: [{ ...beams, run: 'east-west', at: `4'`, spacing: `4'`, underside: `8'-2"` }],
  });
  const [section] = sectionsOf(room);
  expect(section).toMatchObject({ name: 'Across beams', looks: 'west' });
  const { bodies } = sectionScene(room, section!);
  expect(bodies.flatMap(({ shown }) => shown.map((patch) => Math.round(areaOf([patch]) * 144)))).toEqual([60, 60, 60]);
  expect(words(drawSection(room, section!, base))).toContain(`Beams, underside +8'-2"`);
});

it('cuts a breast with its firebox and says the height of the hearth', () => {
  const room = measured({
    slug: 'parlor',
    shape: size(20, 16),
    ceiling: { form: 'flat', height: ft(9) },
    features: [
      {
        ...{ kind: 'chimney-breast', id: 'breast', name: 'Breast', wall: 'north', at: `7'`, width: `6'`, depth: `2'` },
        firebox: { width: `3'`, height: `3'`, sill: `1'` },
        hearth: { width: `6'`, depth: `1'-6"`, thickness: `2"`, height: `10"` },
      },
    ],
  });
  const [section] = sectionsOf(room);
  expect(section).toMatchObject({ at: ft(10), looks: 'west' });
  const { bodies } = sectionScene(room, section!);
  // 2' by 9' less a firebox of 3' by 0.72 of the depth, and the hearth before it.
  expect(areaOf(bodies[0]!.shown)).toBeCloseTo(2 * 9 - 3 * 1.44 + (1.5 * 10) / 12, 3);
  expect(words(drawSection(room, section!, base))).toContain(`10"`);
});

it('closes the ceiling over a breast that it cuts along, ridge and all', () => {
  const breast = {
    kind: 'chimney-breast',
    id: 'breast',
    name: 'Breast',
    wall: 'north',
    at: `7'`,
    width: `6'`,
    depth: `2'`,
  };
  const through = sectionScene(measured({ ...gable, features: [breast] }), { at: ft(29), looks: 'south' });
  const before = sectionScene(measured(gable), { at: ft(29), looks: 'south' });
  expect(areaOf(through.poche)).toBeCloseTo(areaOf(before.poche), 4);
  expect(through.poche).toHaveLength(1);
});

it('goes by the record where that has sections, and by none where it has an empty list', () => {
  const measure = measured(gable);
  const recorded = [
    { name: 'One', at: ft(3), looks: 'north' },
    { name: 'Two', at: ft(4), looks: 'east' },
  ] as const;
  expect(sectionsOf(measure, recorded).map(({ letter, name }) => `${letter} ${name}`)).toEqual(['A One', 'B Two']);
  expect(sectionsOf(measure, [])).toEqual([]);
  expect(sectionsOf(measured({ ...gable, ceiling: { form: 'flat', height: ft(8) } }))).toEqual([]);
});

describe.each(Object.entries(rooms))('sections of the %s', (_name, room) => {
  const measure = room();
  const depth = Math.max(...measure.plan.map(({ y }) => y)) - Math.min(...measure.plan.map(({ y }) => y));
  const width = Math.max(...measure.plan.map(({ x }) => x)) - Math.min(...measure.plan.map(({ x }) => x));
  const cuts = (['north', 'east', 'south', 'west'] as const).map((looks, i) => {
    const share = [0.3, 0.5, 0.62, 0.81][i]!;
    const at = Math.round((i % 2 === 0 ? depth : width) * share) as Length;
    return draw(measure, { at, looks });
  });

  it.each(cuts.map((drawing) => [drawing.title, drawing] as const))(
    '%s keeps its text apart and inside',
    (_, { svg }) => {
      expect(collisions(svg)).toEqual([]);
      expect(struckThrough(svg)).toEqual([]);
      expect(outside(svg)).toEqual([]);
      expect(unfinite(svg)).toEqual([]);
    },
  );
});
