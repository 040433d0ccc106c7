import {
  between,
  direction,
  headings,
  minus,
  pointInFeet,
  pointOf,
  stretchLess,
  type Xy,
} from '../../../base/geometry/index.js';
import { edgeOf, edgeStretch, type Stair } from '../../feature/index.js';
import type { FeatureMeasure, Point, RoomMeasure } from '../../model/index.js';
import { fromInches } from '../../../base/units/index.js';

/** A room whose floor a stair may come up to. */
export interface Landing {
  readonly room: string;
  readonly level: string;
  readonly measure: RoomMeasure;
}

/** A stretch of an open side without an edge, where one may come up. */
interface Gap {
  readonly room: string;
  readonly left: Point;
  readonly right: Point;
}

/** A stair is this much wider or narrower than the gap that it comes up in, at most. */
const slack = fromInches(3);

/** Where the rails of a stair end in the room above, in that room's coordinates: at the ends of the one gap between its recorded edges
 *  that is as wide as the stair and faces it. Rooms have no coordinates in common, so that nothing is said where several fit. */
export function arrivalOf(
  stair: Stair,
  below: Landing,
  landings: readonly Landing[],
): { readonly room: string; readonly left: Point; readonly right: Point } | undefined {
  const above = landings.filter(({ room, level }) =>
    stair.to === undefined ? level !== below.level : room === stair.to,
  );
  const gaps = above.flatMap((landing) => gapsTowards(stair, below.room, landing));
  const [gap] = gaps;
  return gaps.length === 1 ? gap : undefined;
}

/** Which side of a stair a rail stands on, seen going up. */
export function sideOfRail({ go }: Stair, { footprint }: FeatureMeasure, rail: Point): 'left' | 'right' | undefined {
  const [a, , c] = footprint ?? [];
  if (!a || !c) return undefined;
  const ahead = headings[go];
  const off = minus(pointInFeet(rail), between(pointInFeet(a), pointInFeet(c), 1 / 2));
  return ahead.x * off.y - ahead.y * off.x > 0 ? 'left' : 'right';
}

function gapsTowards({ go, width, to }: Stair, from: string, { room, measure }: Landing): readonly Gap[] {
  const edges = measure.features.flatMap((feature) => edgeOf(feature) ?? []);
  const walls = measure.walls
    .filter(({ openTo }) => openTo === from)
    .map((wall) => ({ ...wall, edges: edges.filter((edge) => edge.wall === wall.id) }));
  // Which room is below a hole is not recorded: it counts where the stair names the room.
  const holes = (to === undefined ? [] : measure.voids).flatMap(({ name, sides }) =>
    sides.map((side) => ({
      ...side,
      edges: edges.filter((edge) => edge.void === name && edge.side === side.name),
    })),
  );
  return [...walls, ...holes].flatMap((side) => {
    const start = pointInFeet(side.from);
    const ahead = direction(start, pointInFeet(side.to));
    if (!isFacing(ahead, headings[go])) return [];
    const taken = side.edges.map((edge) => edgeStretch(edge, side.run));
    return stretchLess({ from: 0, to: side.run }, taken)
      .filter((free) => Math.abs(free.to - free.from - width) <= slack)
      .map((free): Gap => {
        const at = (along: number): Point => {
          const share = along / side.run;
          return pointOf(between(start, pointInFeet(side.to), share));
        };
        // Floor lies to the right of the side, so that its far end is at the left of who comes up.
        return { room, left: at(free.to), right: at(free.from) };
      });
  });
}

/** The floor is ahead of who comes up: it lies to the right of the side. */
function isFacing(side: Xy, heading: Xy): boolean {
  return side.y * heading.x - side.x * heading.y > 0.99;
}
