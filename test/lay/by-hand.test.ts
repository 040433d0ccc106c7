import { describe, expect, test } from 'vitest';
import { feet } from '../../src/base/units/index.js';
import { measureFiles, type LoadedHouse } from '../../src/disk/load/index.js';
import { wallThickness } from '../../src/core/model/index.js';
import { smallFiles } from '../book/small-house.js';
import { len } from '../measure/room-record.js';

/** A house of three rooms, worked by hand. Walls between rooms are 4 1/2", outside walls 6" to the outside of their framing.
 *
 *           16'                10'
 *      +-----------------+-+----------+      Living 16' x 14', Bed 10' x 14' beside it to the east,
 *      |                 | |          |      Bath 10' x 8' south of the bed, its east wall in line with the bed's.
 *  14' |     Living      | |   Bed    |
 *      |                 |D1          |      D1 is 3' wide, 5' from the living room's north-east corner.
 *      |                 | |          |      D2 is 2'-6" wide, 3' from the bed's south-east corner.
 *      +-----------------+-+----D2----+
 *                          |   Bath   | 8'
 *                          +----------+
 */
const head = (name: string, number: string, use: string, size: string): string =>
  `---\nname: ${name}\nnumber: "${number}"\nlevel: main\nuse: ${use}\nsize: ${size}\n`;

interface Tapes {
  readonly bath?: string;
  readonly seen?: string;
  readonly ceiling?: string;
  /** More rooms by slug. */
  readonly more?: Readonly<Record<string, string>>;
}

/** Its other records are the small house's, of which an allowance is not used here. */
const laying = (problems: LoadedHouse['problems']) => problems.filter(({ code }) => code !== 'allowance-unused');

function house({
  bath = `10'-0" x 8'-0"`,
  seen = `4'-6"`,
  ceiling = `flat 8'-0"`,
  more = {},
}: Tapes = {}): LoadedHouse {
  return measureFiles(
    smallFiles({})
      .filter(({ path }) => !path.startsWith('content/rooms/'))
      .concat([
        {
          path: 'content/rooms/living.md',
          text: `${head('Living', '101', 'living', `16'-0" x 14'-0"`)}ceiling: flat 9'-0"
openings:
  - { mark: D1, kind: door, wall: east, at: 5'-0", width: 3'-0", height: 7'-0", to: bed, swing: bed, hinge: left }
  - { mark: W1, kind: window, wall: south, at: 6'-0", width: 4'-0", height: 5'-0", sill: 2'-0", to: outside }
---\n`,
        },
        {
          path: 'content/rooms/bed.md',
          text: `${head('Bed', '102', 'bedroom', `10'-0" x 14'-0"`)}ceiling: flat 9'-0"
openings:
  - { mark: D1, recorded-in: living, wall: west, at: 6'-0" }
  - { mark: D2, kind: door, wall: south, at: 3'-0", width: 2'-6", height: 7'-0", to: bath, swing: bed, hinge: left }
---\n`,
        },
        {
          path: 'content/rooms/bath.md',
          text: `${head('Bath', '103', 'bath', bath)}ceiling: ${ceiling}
openings:
  - { mark: D2, recorded-in: bed, wall: north, at: ${seen} }
---\n`,
        },
        ...Object.entries(more).map(([slug, text]) => ({ path: `content/rooms/${slug}.md`, text })),
      ]),
  );
}

const inches = (length: number): number => Math.round(feet(length as never) * 12 * 1000) / 1000;

describe('three rooms', () => {
  const loaded = house();
  const laid = loaded.house?.laid;
  const around = (slug: string) => loaded.house?.measures.get(slug)?.around;

  test('stand where their doors say', () => {
    expect(laying(loaded.problems)).toEqual([]);
    const [level] = laid?.groups[0]?.levels ?? [];
    expect(level?.rooms.map(({ room, at }) => [room, inches(at.x), inches(at.y)])).toEqual([
      ['living', 0, 0],
      // East of 16' and a wall of 4 1/2".
      ['bed', 196.5, 0],
      // South by 8' and a wall.
      ['bath', 196.5, -100.5],
    ]);
  });

  test('have these areas', () => {
    const [level] = laid?.groups[0]?.levels ?? [];
    // 16 × 14 + 10 × 14 + 10 × 8 = 444.
    expect(level?.net).toBeCloseTo(444, 6);
    // Outside of the framing: (16 + 10 + 0.375 + 1) × (14 + 1) over the living room and the bed, and under the bed, from 0.5' below it,
    // (10 + 1) × (0.375 + 8) more.
    expect(level?.gross).toBeCloseTo(27.375 * 15 + 11 * 8.375, 3);
    // Around: the south-west corner is cut out, so as long as around the whole.
    expect(feet(level?.perimeter ?? (0 as never))).toBeCloseTo(2 * (27.375 + 15 + 8.375), 4);
  });

  test('have these outside faces', () => {
    const [level] = laid?.groups[0]?.levels ?? [];
    const faces = level?.faces.map(({ looks, run, gross, openings, net }) => [
      looks,
      inches(run) / 12,
      gross,
      openings,
      net,
    ]);
    expect(faces).toEqual([
      // Living and bed, 9' high.
      ['north', 26, 26 * 9, 0, 26 * 9],
      // Bed 9' high, bath 8'.
      ['east', 22, 14 * 9 + 8 * 8, 0, 14 * 9 + 8 * 8],
      // Living 16' × 9' less a window of 20 sq ft, bath 10' × 8', and of the bed's wall 10' × 1' above the bath's ceiling.
      ['south', 26, 16 * 9 + 10 * 8 + 10, 20, 16 * 9 + 10 * 8 + 10 - 20],
      ['west', 22, 14 * 9 + 8 * 8, 0, 14 * 9 + 8 * 8],
    ]);
  });

  test('have these edges of the roof', () => {
    // A gable over the bath, 10' wide and 8' long: its slopes rise 2'-6" over 5', and its level edges are the walls' own.
    const [level] =
      house({ ceiling: `{ form: gable, ridge: north-south, plate: 8'-0", pitch: 6/12 }` }).house?.laid.groups[0]
        ?.levels ?? [];
    const roof = level?.faces.map((face) => [
      face.looks,
      ...[face.roof.eaves, face.roof.rakes, face.roof.unknown].map((length) => Math.round(feet(length) * 100) / 100),
    ]);
    expect(roof).toEqual([
      ['north', 0, 0, 26],
      ['east', 8, 0, 14],
      ['south', 0, 2 * 5.59, 16],
      ['west', 8, 0, 14],
    ]);
  });

  test('have this behind their walls', () => {
    const behind = (slug: string) =>
      around(slug)?.walls.map(({ wall, stretches }) => [
        wall,
        ...stretches.map((one) => `${inches(one.from)}-${inches(one.to)} ${one.behind?.room ?? 'outside'}`),
      ]);
    expect(behind('living')).toEqual([
      ['north', '0-192 outside'],
      ['east', '0-168 bed'],
      ['south', '0-192 outside'],
      ['west', '0-168 outside'],
    ]);
    expect(behind('bath')).toEqual([
      ['north', '0-120 bed'],
      ['east', '0-96 outside'],
      ['south', '0-120 outside'],
      ['west', '0-96 outside'],
    ]);
    expect(around('bed')?.outside.map(({ id, gross }) => [id, gross])).toEqual([
      ['north', 90],
      ['east', 126],
      // The strip above the bath.
      ['south', 10],
    ]);
    expect(around('living')?.underRoof?.net).toBe(224);
  });

  test('have walls so thick: as laid out to the room behind, else by the type outside', () => {
    const thick = (slug: string, wall: string) => {
      const measure = loaded.house?.measures.get(slug);
      const thickness = measure && wallThickness(measure, wall);
      return thickness && inches(thickness);
    };
    expect([thick('living', 'north'), thick('living', 'east'), thick('bath', 'north')]).toEqual([6, 4.5, 4.5]);
    expect(thick('living', 'attic')).toBeUndefined();
  });

  test('a wall that is outside and inside goes by most of it', () => {
    const behind = { room: 'bed', wall: 'west', thickness: len(`4 1/2"`) };
    const wall = (to: string) => ({
      wall: 'east',
      outsideThickness: len(`6"`),
      stretches: [
        { from: len(`0"`), to: len(to), behind },
        { from: len(to), to: len(`10'`) },
      ],
    });
    const room = (to: string) => ({ around: { walls: [wall(to)], outside: [], inside: [], over: [], under: [] } });
    expect(wallThickness(room(`6'`), 'east')).toBe(len(`4 1/2"`));
    expect(wallThickness(room(`4'`), 'east')).toBe(len(`6"`));
    expect(wallThickness({}, 'east')).toBeUndefined();
  });
});

describe('rooms that nothing joins to them', () => {
  // A shed and a store east of it, joined by D3: drawn apart, with the shed's corner at 0 as the living room's is. As drawn the store's west
  // wall would stand 7 1/2" before the bed's and the bath's east walls, at 27' against 26'-4 1/2", and the shed's north wall 5" outside the
  // line of the living room's. Neither says anything.
  const more = {
    shed: `${head('Shed', '901', 'garage', `26'-7 1/2" x 14'-5"`)}ceiling: flat 9'-0"
openings:
  - { mark: D3, kind: door, wall: east, at: 5'-0", width: 3'-0", height: 7'-0", to: store, swing: store, hinge: left }
---\n`,
    store: `${head('Store', '902', 'garage', `6'-0" x 14'-5"`)}ceiling: flat 9'-0"
openings:
  - { mark: D3, recorded-in: shed, wall: west, at: 6'-5" }
---\n`,
  };
  const { problems, house: apart } = house({ more });

  test('are told to be apart, and their walls are held against none of the others', () => {
    expect(apart?.laid.groups.map(({ levels }) => levels[0]?.rooms.map(({ room }) => room))).toEqual([
      ['living', 'bed', 'bath'],
      ['shed', 'store'],
    ]);
    expect(laying(problems).map(({ code }) => code)).toEqual(['room-apart']);
  });
});

describe('a tape that is wrong', () => {
  test('of the place of a door puts two walls out of line, and names itself with what would do as well', () => {
    // The bath's door 5' instead of 4'-6" from its corner: the bath stands 6" too far west.
    const { problems } = house({ seen: `5'-0"` });
    expect(problems.map(({ code }) => code)).toContain('walls-out-of-line');
    const suspects = problems.filter(({ code }) => code === 'tape-suspect').map(({ message }) => message);
    expect(suspects).toContain('D2 in Bath may lie at 4\'-6": with that, the house fits');
    expect(suspects).toContain('D2 in Bed may lie at 2\'-6": with that, the house fits');
  });

  test('of a room is told with what would have to be added to it', () => {
    // The bath 9'-6" wide, its door still right: the east wall stands 6" inside the line of the bed's.
    const { problems } = house({ bath: `9'-6" x 8'-0"` });
    const suspects = problems.filter(({ code }) => code === 'tape-suspect').map(({ message }) => message);
    expect(suspects).toContain('the east wall of Bath may stand 6" farther out: with that, the house fits');
  });

  test('is not told where the record says that it is meant', () => {
    const { problems } = house({ bath: `9'-6" x 8'-0"\njogs: [east]` });
    expect(laying(problems)).toEqual([]);
  });
});
