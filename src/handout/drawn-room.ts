import { keepSame } from '../base/units/index.js';
import type { DrawnRoom } from '../core/book/index.js';
import type { Handout, HandoutRoom } from './handout.js';

const namesOf = keepSame(
  (rooms: Handout['roomNames']): ReadonlyMap<string, string> => new Map(rooms.map(({ slug, name }) => [slug, name])),
);

/** What the drawings of a handout's room show: its shape, and what this trade puts on it. */
export function handoutDrawnRoom({ shape, number, name, drawings }: HandoutRoom, { roomNames }: Handout): DrawnRoom {
  const { courses, finishes, guards, posts, beyond, sections, seen, viewFrom } = drawings;
  const labels = new Map(finishes.map(({ at, label }) => [at, label]));
  return {
    measure: shape,
    number,
    name,
    neighbours: namesOf(roomNames),
    ...courses,
    walls: new Map(
      shape.walls.flatMap(({ id, regions }) => {
        const label = labels.get(id);
        return label === undefined ? [] : [[id, regions.map((region) => ({ label, region }))] as const];
      }),
    ),
    features: labels,
    guards: new Map(guards.map(({ at, guard }) => [at, guard])),
    posts: new Map(posts.map(({ at, along }) => [at, along])),
    beyond: new Map(beyond.map(({ at, guards: behind }) => [at, behind])),
    seen,
    ...(viewFrom && { viewFrom }),
    ...(sections && { sections }),
  };
}
