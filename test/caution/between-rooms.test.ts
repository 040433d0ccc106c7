import { describe, expect, test } from 'vitest';
import type { Caution } from '../../src/core/caution/index.js';
import { smallBook, type Edits } from '../book/small-house.js';
import { threeRooms, threeRoomsBook, type RoomText } from '../small-house/three-rooms.js';
import { category, option, room, seenBy, selection, wall } from './house.js';

/** What a category records, and an option of it, in the small house. */
const textures: Edits = {
  'content/rooms/study.md': null,
  'content/categories/texture.md': `---
name: Texture
trade: carpentry
section: "09 29 00"
sequence: 40
needed-at: drywall
layer: substrate
measure: { by: area, openings: none, times: 1, words: Area., source: "common practice, no source" }
attributes:
  level: { label: Level, kind: number, required: true }
  applied: { label: Applied, kind: text, required: true }
---
`,
  'content/options/texture/trowel.md': texture('Trowel', 'by hand'),
  'content/options/texture/smooth.md': texture('Smooth', 'none'),
};

function texture(name: string, applied: string): string {
  return `---
name: ${name}
maker: Site-applied
model: T
summary: A texture.
price: { material: $0.10 / sq ft, labor: $1.00 / sq ft }
lead: 0 days
attributes: { level: 4, applied: ${applied} }
swatch: { pattern: texture, colors: ["#eeeeee"] }
specification: { general: A texture., products: Mud., execution: Trowel it. }
care: Wash it.
---
`;
}

function roomText(name: string, number: string, lines: readonly string[], selections: readonly string[]): string {
  const chosen = selections.map((one) => `  - ${one}\n`).join('');
  return `---\nname: ${name}\nnumber: "${number}"\nlevel: main\nuse: living\n${lines.join('\n')}\nselections:\n${chosen}---\n`;
}

const of = (place: string, texture: string): string => `{ at: ${place}, category: texture, standard: ${texture} }`;

/** A room 16' × 14' with a flat ceiling at 9', open to the east to a den 12' × 14' over all of that side. Trowel in the one, smooth in the other. */
function openRooms(den: readonly string[], more: Edits = {}): readonly Caution[] {
  const book = smallBook(
    {
      ...textures,
      'content/rooms/living.md': roomText(
        'Living',
        '101',
        [`size: 16'-0" x 14'-0"`, 'open: { east: den }', `ceiling: flat 9'-0"`],
        [of('walls', 'trowel'), of('ceiling', 'trowel')],
      ),
      'content/rooms/den.md': roomText('Den', '102', den, [of('walls', 'smooth'), of('ceiling', 'smooth')]),
      ...more,
    },
    '2026-04-20',
    ({ code }) => code === 'allowance-unused' || code === 'walls-out-of-line',
  );
  return book.cautions.filter(({ rule }) => rule === 'texture-between-rooms');
}

const inLine = [`size: 12'-0" x 14'-0"`, 'open: { west: living }'];
const level = `ceiling: flat 9'-0"`;

/** Its north and south walls stand a foot outside the line of the living room's, so that each turns a corner beside the open side. */
const wider = [
  'walls:',
  `  - { name: north, go: east, run: 12'-0" }`,
  `  - { name: east, go: south, run: 16'-0" }`,
  `  - { name: south, go: west, run: 12'-0" }`,
  `  - { name: south-west, go: north, run: 1'-0" }`,
  `  - { name: west, go: north, run: 14'-0", open-to: living }`,
  `  - { name: north-west, go: north, run: 1'-0" }`,
];

describe('textures over an open side of a house that is laid out', () => {
  const walls = 'Den and Living, walls: Smooth against Trowel.';
  const ceilings = 'Den and Living, ceilings: Smooth against Trowel.';
  const seen = (den: readonly string[], more: Edits = {}) => openRooms(den, more).map((one) => one.seen);

  test('meet where walls and ceilings go on in one plane', () => {
    expect(seen([...inLine, level])).toEqual([`${walls} ${ceilings}`]);
  });

  test('end at the corners of a wider room', () => {
    expect(seen([...wider, level])).toEqual([ceilings]);
  });

  test('meet at the one end where a wall goes on', () => {
    // Wider to the south alone: the north walls are in line.
    const [, , east, south, southWest, west] = wider as [string, string, string, string, string, string];
    const one = [
      'walls:',
      `  - { name: north, go: east, run: 12'-0" }`,
      east.replace(`16'-0"`, `15'-0"`),
      south,
      southWest,
      west,
    ];
    const same = { 'content/rooms/living.md': living([of('north', 'smooth'), of('[south, west]', 'trowel')]) };
    expect(seen([...one, level])).toEqual([`${walls} ${ceilings}`]);
    // Only the south wall of the living room is another, and it ends in a corner.
    expect(seen([...one, level], same)).toEqual([]);
  });

  test.each([
    [`8'-11 3/4"`, [`${walls} ${ceilings}`]],
    [`8'-11"`, [walls]],
    [`8'-0"`, [walls]],
  ])('end at a step of the ceiling: against 9 feet one at %s', (height, expected) => {
    expect(seen([...inLine, `ceiling: flat ${height}`])).toEqual(expected);
  });

  test('end at a fold: a slope that begins at the level of a flat ceiling', () => {
    expect(seen([...inLine, `ceiling: { form: shed, low: west, plate: 9'-0", pitch: 4/12 }`])).toEqual([walls]);
  });

  test('meet in one slope, which goes on at the height where the other ends', () => {
    // A shed that rises 4 in 12 from the west, 9' at the living room's west wall: 9' + 16' / 3 = 14'-4" at the side.
    const sloped = (plate: string) => `ceiling: { form: shed, low: west, plate: ${plate}, pitch: 4/12 }`;
    const rising = {
      'content/rooms/living.md': living([of('ceiling', 'trowel')], sloped(`9'-0"`)),
    };
    expect(seen([...inLine, sloped(`14'-4"`)], rising)).toEqual([ceilings]);
    expect(seen([...inLine, sloped(`14'-0"`)], rising)).toEqual([]);
  });
});

function living(selections: readonly string[], ceiling = level): string {
  return roomText('Living', '101', [`size: 16'-0" x 14'-0"`, 'open: { east: den }', ceiling], selections);
}

describe('a hard floor over a quiet room', () => {
  const floor = '{ at: floor, category: floor, standard: oak }';
  const facts: Edits = {
    'content/categories/floor.md': [
      [
        '  species: { label: Species, kind: text, required: true }\n',
        `  species: { label: Species, kind: text, required: true }
  kind: { label: Kind, kind: text }
  underlayment: { label: Underlayment, kind: text }
  iic: { label: IIC, kind: number }
  build-up: { label: Build-up, kind: length }
`,
      ],
    ],
  };
  const oak = (more: string): Edits => ({
    'content/options/floor/oak.md': [['{ species: Oak }', `{ species: Oak, build-up: 3/4"${more} }`]],
  });

  function steps(of: { readonly use?: string; readonly more?: string; readonly den?: RoomText; floors?: boolean }) {
    const { use = 'bedroom', more = '', den = {}, floors = true } = of;
    const house = { den, loft: { selections: [floor] }, floors };
    const record = threeRooms(house)['content/rooms/den.md'] as string;
    const quiet = { 'content/rooms/den.md': record.replace('use: hall', `use: ${use}`) };
    return threeRoomsBook(house, facts, oak(more), quiet)
      .cautions.filter(({ rule }) => rule === 'impact-sound')
      .map(({ id, seen }) => `${id}: ${seen}`);
  }

  test('is told with the rooms under it', () => {
    expect(steps({})).toEqual([
      'impact-sound/loft/floor: Loft: Oak strip, the standard while this is open, over Den. Nothing against the sound of steps is recorded between.',
    ]);
    expect(steps({ use: 'study' })).toHaveLength(1);
  });

  test('is not over a hall, nor where it is not known what is under it', () => {
    expect(steps({ use: 'hall' })).toEqual([]);
    expect(steps({ floors: false })).toEqual([]);
  });

  test.each([
    [', kind: carpet', 0],
    [', kind: solid', 1],
    [', underlayment: cork', 0],
    [', iic: 49', 1],
    [', iic: 50', 0],
    [', iic: 51', 0],
    // The tested figure decides, whatever lies under it.
    [', underlayment: cork, iic: 49', 1],
  ])('that records%s: %i', (more, count) => expect(steps({ more })).toHaveLength(count));

  test('is stilled by sound insulation above or below, and not by a deliberate none', () => {
    const batts = category(['stc'], { slug: 'batts' });
    const boards = selection(['floor'], category(['build-up']), option({}));
    const around = { outside: [], inside: [], over: [], walls: [], under: [{ room: 'bed', area: 60 as never }] };
    const with_ = (above: Parameters<typeof selection>[3] | null, below: Parameters<typeof selection>[3] | null) =>
      seenBy('impact-sound', [
        room({
          level: 'upper',
          selections: [boards, ...(above ? [selection(['floor'], batts, option({ stc: 50 }), above)] : [])],
          measure: { around },
        }),
        room({
          slug: 'bed',
          use: 'bedroom',
          selections: below ? [selection(['ceiling'], batts, option({ stc: 50 }), below)] : [],
          measure: { walls: [wall('north')] },
        }),
      ]);
    expect(with_(null, null)).toHaveLength(1);
    expect(with_({}, null)).toHaveLength(0);
    expect(with_(null, {})).toHaveLength(0);
    expect(with_(null, { state: 'none' })).toHaveLength(1);
  });
});
