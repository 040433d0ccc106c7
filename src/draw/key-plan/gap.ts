import { grown, patchFrom, without, type Patch, type Ring, type Xy } from '../../base/geometry/index.js';
import type { Spot } from '../convex.js';
import { lineThrough, type StraightLine, type WallLine } from '../plan/wall-line.js';

/** What a door, a window or an open side cuts out of the walls, in points. */
export interface Gap {
  readonly outline: readonly Spot[];
  /** From the room's own face to the face behind it, in the middle; 0 where no wall stands. */
  readonly depth: number;
}

/** Where along a wall something is cut, in points from its left end. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What a stretch of a wall cuts out of all that is wall on its level: through to where the wall ends, be that the next room, a well
 *  or the outside. `inch` is an inch of the house in points. */
export function gapIn(line: WallLine, { from, to }: Stretch, walls: readonly Patch[], inch: number): Gap {
  const chord = lineThrough(line.at(from, 0), line.at(to, 0));
  const slack = inch + bulge(line, chord, (from + to) / 2);
  const inset = Math.min(inch / 2, chord.length / 4);
  const [left, middle, right] = [inset, chord.length / 2, chord.length - inset].map((u) =>
    throughWall(chord, u, walls, slack),
  ) as [number, number, number];
  const near = line.wall.arc ? -slack : 0;
  // Along an arc the middle of the wall lies off the straight way between the jambs, to either side.
  const far = (depth: number): number => (line.wall.arc ? Math.max(left, middle, right) + slack : depth);
  const outline = [
    chord.at(0, near),
    chord.at(chord.length, near),
    chord.at(chord.length, far(right)),
    chord.at(0, far(left)),
  ];
  return { outline, depth: middle };
}

/** What is cut reaches past the faces of its wall by so much, in points: at odd angles faces and cuts are rounded apart, and a film of wall would stay. */
const film = 1e-4;

/** The walls without what is cut out of them. */
export function cutWalls(walls: readonly Patch[], gaps: readonly Gap[]): readonly Patch[] {
  const cuts = gaps.filter(({ depth }) => depth > 0).map(({ outline }) => patchFrom(ringOf(outline)));
  return without(walls, grown(cuts, film));
}

export function ringOf(spots: readonly Spot[]): Ring {
  return spots.map(([x, y]): Xy => ({ x, y }));
}

/** How far an arc stands off the straight way from jamb to jamb. */
function bulge(line: WallLine, chord: StraightLine, u: number): number {
  if (!line.wall.arc) return 0;
  const [a, b] = [line.at(u, 0), chord.at(chord.length / 2, 0)];
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** From the face at `u` outward to where the wall ends that begins within `slack` of it; 0 where none does. */
function throughWall(chord: StraightLine, u: number, walls: readonly Patch[], slack: number): number {
  const start = chord.at(u, -slack);
  const [x, y] = chord.outward;
  const crossings = walls
    .flatMap(({ outline, holes }) => [outline, ...holes])
    .flatMap((ring) => crossingsOf(start, [x, y], ring))
    .toSorted((a, b) => a - b);
  const [entry, exit] = crossings;
  if (entry === undefined || exit === undefined || entry > 2 * slack) return 0;
  return exit - slack;
}

/** Distances along a ray at which it crosses the edges of a ring. */
function crossingsOf(start: Spot, way: Spot, ring: Ring): readonly number[] {
  const off = ({ x, y }: Xy): number => (x - start[0]) * way[1] - (y - start[1]) * way[0];
  const along = ({ x, y }: Xy): number => (x - start[0]) * way[0] + (y - start[1]) * way[1];
  return ring.flatMap((from, index) => {
    const to = ring[(index + 1) % ring.length] as Xy;
    const [a, b] = [off(from), off(to)];
    if (a > 0 === b > 0) return [];
    const distance = along(from) + ((along(to) - along(from)) * a) / (a - b);
    return distance > 0 ? [distance] : [];
  });
}
