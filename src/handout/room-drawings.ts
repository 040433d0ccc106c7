import {
  beyondIn,
  drawnRoom,
  postsIn,
  type BookRoom,
  type BookSelection,
  type DrawnCourses,
} from '../core/book/index.js';
import { breastOf, stairOf, timberOf } from '../core/feature/index.js';
import { uprightFaces, type FeatureMeasure, type RoomMeasure, type WallMeasure } from '../core/model/index.js';
import { isOn } from '../core/takeoff/index.js';
import { cleared } from './cleared.js';
import type { HandoutDrawings } from './handout.js';
import { sieve, sieveName } from './sieve.js';
import { productOf, type Work } from './work.js';

/** What a trade needs to see of a room: `places` are the ids that its selections are at. */
export function drawingsOf(
  room: BookRoom,
  selections: readonly BookSelection[],
  places: ReadonlySet<string>,
  work: Work,
): HandoutDrawings {
  const { look } = work;
  const { measure } = room;
  const drawn = drawnRoom(room, { ...look, selectionsOf: () => selections });
  const walls = wallsConcerned(measure, places);
  const ceiling = places.has('ceiling') && (hasShape(measure) || drawn.ceiling !== undefined);
  const isStanding = measure.features.some(
    (feature) => isCutFor(feature) && [...places].some((place) => isOn(feature.id, place)),
  );
  const isShown = isStanding || (places.has('ceiling') && isSloped(measure));
  const sections = isShown ? room.sections && { sections: cleared(room.sections) } : { sections: [] };
  return {
    ceiling,
    steps: uprightFaces(measure)
      .filter(({ id }) => places.has(id))
      .map(({ id }) => sieve(id)),
    walls: walls.map(sieve),
    features: measure.features
      .filter(({ id }) => [...places].some((place) => isOn(id, place)))
      .map(({ id }) => sieve(id)),
    ...sections,
    printed: {
      sections: isStanding,
      ceiling: ceiling && (hasShape(measure) || isBoarded(drawn.ceiling)),
      walls: walls.filter((id) => places.has(id) && !isListed(id, measure)).map(sieve),
    },
    courses: {
      ...(drawn.ceiling && { ceiling: cleared(drawn.ceiling) }),
      ...(drawn.floor && { floor: cleared(drawn.floor) }),
    },
    finishes: [
      ...measure.walls.flatMap(({ id }) => lastOn(id, selections, work)),
      ...[...drawn.features].map(([at, label]) => ({ at: sieve(at), label: sieveName(label) })),
    ],
    guards: [...drawn.guards].map(([at, guard]) => ({ at: sieve(at), guard: cleared(guard) })),
    posts: [...postsIn(room, look)].map(([at, along]) => ({ at: sieve(at), along })),
    beyond: [...beyondIn(room, look)].map(([at, guards]) => ({ at: sieve(at), guards: cleared(guards) })),
    seen: drawn.seen.map((finish) => ({ ...cleared(finish), name: sieveName(finish.name) })),
    ...(room.viewFrom && { viewFrom: room.viewFrom }),
  };
}

/** Is it one of those that a section is chosen for? */
function isCutFor(feature: FeatureMeasure): boolean {
  return (stairOf(feature) ?? timberOf(feature) ?? breastOf(feature)) !== undefined;
}

function isSloped({ ceiling }: RoomMeasure): boolean {
  return ceiling.facets.some(({ slope }) => slope > 0);
}

/** What the trade puts on a wall last. */
function lastOn(wall: string, selections: readonly BookSelection[], work: Work): HandoutDrawings['finishes'] {
  const last = selections.findLast(({ places }) => places.some(({ id }) => id === wall));
  const product = last && productOf(work, last);
  return product ? [{ at: sieve(wall), label: sieveName(product.name) }] : [];
}

function isBoarded(courses: DrawnCourses | undefined): boolean {
  return courses?.lay === 'boards';
}

/** Walls that carry the trade's work, or an opening that does, and that words cannot say: a wall without openings under a
 *  level ceiling is its run by its height. */
function wallsConcerned(measure: RoomMeasure, places: ReadonlySet<string>): readonly string[] {
  return measure.walls
    .filter((wall) => wall.openTo === undefined)
    .filter(
      (wall) =>
        (places.has(wall.id) && !isPlain(wall, measure)) ||
        measure.openings.some((opening) => opening.wall === wall.id && places.has(opening.mark)),
    )
    .map(({ id }) => id);
}

/** A ceiling that its heights and the walls do not say: in parts, or with something through it. */
function hasShape({ ceiling, voids }: RoomMeasure): boolean {
  return ceiling.facets.length > 1 || ceiling.deductions.length > 0 || voids.some(({ isOpenAbove }) => isOpenAbove);
}

function isPlain(wall: WallMeasure, measure: RoomMeasure): boolean {
  return isListed(wall.id, measure) && measure.openings.every((opening) => opening.wall !== wall.id);
}

/** Is the wall level, with nothing on it? Then its openings in a list say all of it. */
function isListed(id: string, { walls, features }: RoomMeasure): boolean {
  const top = walls.find((wall) => wall.id === id)?.top ?? [];
  const level = top.every(({ height }) => height === top[0]?.height);
  return level && !features.some(({ covers }) => covers.some((cover) => cover.wall === id));
}
