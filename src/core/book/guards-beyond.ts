import { faceMarks } from '../feature/index.js';
import type { FeatureMeasure, OpeningMeasure, WallMeasure } from '../model/index.js';
import { fromFeet, type Length } from '../../base/units/index.js';
import type { BookRoom } from './book.js';
import type { DrawnGuard, DrawnPost } from './drawn-edge.js';
import type { LookUp } from './look-up.js';

/** A guard at the open side of another room, as it is seen through the opening that is that side. */
export interface GuardBeyond {
  /** Of the edge that it stands at: `Gallery edge`. */
  readonly name: string;
  readonly guard?: DrawnGuard;
  /** Its ends and its posts from the opening's left, as seen from this room. */
  readonly from: Length;
  readonly to: Length;
  readonly posts: readonly Length[];
}

/** What the other room has at its edges, by the edge's id. */
export interface AtEdges {
  readonly guards: ReadonlyMap<string, DrawnGuard>;
  readonly posts: ReadonlyMap<string, readonly DrawnPost[]>;
}

/** How far two rooms may say it otherwise: a tape's inch. */
const alike = fromFeet(1 / 12);

/** Guards that are seen from a room through its openings, by the opening's mark. An opening and an open side are the same when each names the other's room, they
 *  are as long, and the side falls by as much as the opening's sill is high. */
export function guardsBeyond(
  room: BookRoom,
  look: LookUp,
  atEdges: (other: BookRoom) => AtEdges,
): ReadonlyMap<string, readonly GuardBeyond[]> {
  return new Map(
    room.measure.openings.flatMap((opening) => {
      const other = opening.kind === 'open' || opening.kind === 'cased' ? look.room(opening.to) : undefined;
      if (!other) return [];
      const sides = other.measure.walls.filter((wall) => isSame(wall, opening, room.slug));
      const seen = sides.flatMap((wall) =>
        other.measure.features
          .filter((feature) => fallsBy(feature, opening))
          .flatMap((feature) => onSide(feature, wall, atEdges(other))),
      );
      return seen.length === 0 ? [] : [[opening.mark, seen] as const];
    }),
  );
}

const isSame = ({ openTo, run }: WallMeasure, { width }: OpeningMeasure, room: string): boolean =>
  openTo === room && Math.abs(run - width) <= alike;

const fallsBy = ({ drop }: FeatureMeasure, { sill }: OpeningMeasure): boolean =>
  drop !== undefined && Math.abs(drop - sill) <= alike;

/** Left and right change places from the other side. */
function onSide(feature: FeatureMeasure, wall: WallMeasure, { guards, posts }: AtEdges): readonly GuardBeyond[] {
  const guard = guards.get(feature.id);
  const across = (along: number): Length => (wall.run - along) as Length;
  return faceMarks(feature, wall.id).flatMap((mark) => {
    if (mark.role !== 'guard') return [];
    return {
      name: feature.name,
      ...(guard && { guard }),
      from: across(mark.to),
      to: across(mark.from),
      posts: (posts.get(feature.id) ?? []).map(({ at }) => across(mark.from + at)),
    };
  });
}
