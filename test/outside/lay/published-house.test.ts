import { describe, expect, test } from 'vitest';
import { measureFiles, type LoadedHouse } from '../../../src/disk/load/index.js';
import { smallFiles } from '../../book/small-house.js';
import { published } from '../published.js';

/** The ground floor of a model that its makers published to test programs with. A space there has coordinates of its own, in metres, in which the
 *  model states its walls, doors and open sides: those are the tapes here. Where the spaces stand is stated a second time, by the gallery over all
 *  of them, of which each has a part of the floor; no record here says it. Names are ours.
 *
 *      y 9.4   ┌──────────────────────┬───────────┐
 *              │        living        ┊  kitchen  │      Living and kitchen are open to each other and to the hall. Doors of 0.885 lead from
 *      y 5.69  │                      ┊           │      the hall to `west` (D1), `middle` (D2) and `east` (D3).
 *      y 5.45  ├────────┬ ┈┈┈┈┈┈┈┈┈┈┈┈┈ ┬─────────┤
 *              │        D1    hall                │      Walls between rooms measure 0.24, outside walls 0.30.
 *      y 3.95  │  west  ├────D2────┬───────D3─────┤
 *      y 3.71  │        │  middle  │     east     │
 *      y 0     └────────┴──────────┴──────────────┘
 *              x 0    4.05 4.29  7.66 7.9       11.4
 */
const model =
  'FZK-Haus, Forschungszentrum Karlsruhe, IFC4 export AC20-FZK-Haus.ifc of 2016-12-21: its space boundaries, wall widths and outline';

interface Tapes {
  /** Of the door D3, from the west end of the wall in its own room. */
  readonly d3?: string;
}

const door = (mark: string, wall: string, at: string, to: string): string =>
  `  - { mark: ${mark}, kind: door, wall: ${wall}, at: ${at} m, width: 885 mm, height: 2.01 m, to: ${to}, hinge: left, swing: ${to} }`;
const seen = (mark: string, wall: string, at: string): string =>
  `  - { mark: ${mark}, recorded-in: hall, wall: ${wall}, at: ${at} m }`;
const corner = (x: number, y: number, wall: string, to?: string): string =>
  `  - { x: ${x} m, y: ${y} m, wall: ${wall}${to === undefined ? '' : `, open-to: ${to}`} }`;

function house({ d3 = '1.3075' }: Tapes = {}): LoadedHouse {
  const rooms: Readonly<Record<string, readonly string[]>> = {
    west: ['size: 4.05 m x 5.45 m', 'openings:', seen('D1', 'east', '0.3075')],
    middle: ['size: 3.37 m x 3.71 m', 'openings:', seen('D2', 'north', '1.3075')],
    east: ['size: 3.50 m x 3.71 m', 'openings:', seen('D3', 'north', d3)],
    hall: [
      'outline:',
      corner(0, 1.74, 'to-living', 'living'),
      corner(2.715, 1.74, 'to-kitchen', 'kitchen'),
      corner(3.61, 1.74, 'end'),
      corner(3.61, 1.5, 'north'),
      corner(7.11, 1.5, 'east'),
      corner(7.11, 0, 'south'),
      corner(0, 0, 'west'),
      'openings:',
      door('D1', 'west', '0.3075', 'west'),
      door('D2', 'south', '4.9175', 'middle'),
      door('D3', 'south', '1.3075', 'east'),
      '  - { mark: D4, kind: door, wall: east, at: 0.245 m, width: 1.01 m, height: 2.01 m, to: outside, hinge: left, swing: hall }',
    ],
    living: [
      'outline:',
      corner(0, 3.71, 'north'),
      corner(7.005, 3.71, 'to-kitchen', 'kitchen'),
      corner(7.005, 0, 'to-hall', 'hall'),
      corner(4.29, 0, 'south'),
      corner(0, 0, 'west'),
    ],
    kitchen: [
      'outline:',
      corner(0, 3.71, 'north'),
      corner(4.395, 3.71, 'east'),
      corner(4.395, 0, 'south'),
      corner(0.895, 0, 'to-hall', 'hall'),
      corner(0, 0, 'to-living', 'living'),
    ],
  };
  const types = `wall-types:
  - { id: inside, name: Inside wall, thickness: 240 mm, for: inside }
  - { id: outside, name: Outside wall, thickness: 300 mm, for: outside }
`;
  const files = smallFiles({
    'content/house.md': [['levels:\n', `${types}levels:\n`]],
    'content/rooms/study.md': null,
  });
  const records = Object.entries(rooms).map(([slug, lines], index) => ({
    path: `content/rooms/${slug}.md`,
    text: `---\nname: ${slug}\nnumber: "${index + 1}"\nlevel: main\nuse: living\nceiling: flat 2.50 m\n${lines.join('\n')}\n---\n`,
  }));
  return measureFiles([...files, ...records]);
}

/** Its other records are the small house's, of which an allowance is not used here. */
const laying = ({ problems }: LoadedHouse) => problems.filter(({ code }) => code !== 'allowance-unused');

const metres = (length: number): number => length / 1e9;
const squareMetres = (area: number): number => area * 0.09290304;

describe('a published house', () => {
  const loaded = house();
  const groups = loaded.house?.laid.groups ?? [];
  const level = groups[0]?.levels[0];
  const stands = new Map(level?.rooms.map(({ room, at }) => [room, at]));

  published(
    { what: 'closes: nothing of it disagrees, and all six rooms hang together', source: model, mark: 'S' },
    () => {
      expect(laying(loaded)).toEqual([]);
      expect(groups).toHaveLength(1);
      expect(stands.size).toBe(6);
    },
  );

  published({ what: 'has its rooms where the floor of the gallery over them says', source: model, mark: 'S' }, () => {
    const stated = {
      west: [0, 0],
      middle: [4.29, 0],
      east: [7.9, 0],
      hall: [4.29, 3.95],
      living: [0, 5.69],
      kitchen: [7.005, 5.69],
    } as const;
    const west = stands.get('west');
    for (const [room, [x, y]] of Object.entries(stated)) {
      const at = stands.get(room);
      expect(metres((at?.x ?? NaN) - (west?.x ?? 0)), room).toBeCloseTo(x, 6);
      expect(metres((at?.y ?? NaN) - (west?.y ?? 0)), room).toBeCloseTo(y, 6);
    }
  });

  published({ what: 'is 12 m by 10 m to the outside of its walls, 120 m² gross', source: model, mark: 'S' }, () => {
    const corners = level?.outline.flatMap(({ outline }) => outline) ?? [];
    const extent = (values: readonly number[]) => metres(Math.max(...values) - Math.min(...values));
    expect(corners).toHaveLength(4);
    expect(extent(corners.map(({ x }) => x))).toBeCloseTo(12, 5);
    expect(extent(corners.map(({ y }) => y))).toBeCloseTo(10, 5);
    expect(squareMetres(level?.gross ?? NaN)).toBeCloseTo(120, 3);
    expect(metres(level?.perimeter ?? NaN)).toBeCloseTo(44, 5);
  });

  published(
    {
      what: 'has outside faces as long as the gallery, 11.4 m by 9.4 m, less the ends of inside walls',
      source: model,
      mark: 'S',
    },
    () => {
      const run = new Map(level?.faces.map((face) => [face.looks, metres(face.run)]));
      expect(run.get('north')).toBeCloseTo(11.4, 6);
      expect(run.get('south')).toBeCloseTo(11.4 - 2 * 0.24, 6);
      expect(run.get('west')).toBeCloseTo(9.4 - 0.24, 6);
      expect(run.get('east')).toBeCloseTo(9.4 - 2 * 0.24, 6);
    },
  );

  test('with a door read 10 cm off, is told to be wrong at that door', () => {
    const suspects = laying(house({ d3: '1.4075' })).filter(({ code }) => code === 'tape-suspect');
    expect(suspects.map(({ message }) => message)).toEqual(
      expect.arrayContaining([expect.stringMatching(/^D3 in east may lie at /u)]),
    );
  });
});
