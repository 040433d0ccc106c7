import type { CourseRun, Selection } from '../../model/index.js';
import { problemAt, type Problem } from '../../../base/problem/index.js';
import type { Draft } from '../draft.js';
import type { RoomDraft } from '../read-room.js';
import { isUnknownPlace } from './place.js';

const onPlan: readonly CourseRun[] = ['east-west', 'north-south'];
const onWalls: readonly CourseRun[] = ['horizontal', 'vertical'];

/** A direction of the courses fits what is laid out, and the surface: compass on floors and ceilings, else upright or
 *  level. */
export function courseReferences({ rooms, categories }: Draft): readonly Problem[] {
  return rooms.flatMap((room) =>
    room.selections.flatMap((selection) => {
      const category = categories.find(({ slug }) => slug === selection.category);
      return notLaid(selection, room, category) ?? wrongWay(selection, room);
    }),
  );
}

function notLaid(
  { courses, path, category: slug }: Selection,
  { record: { origin } }: RoomDraft,
  category: Draft['categories'][number] | undefined,
): readonly Problem[] | undefined {
  // What is wrong with the category itself is told there.
  if (courses === undefined || !category?.whole) return [];
  if (category.whole.measure.lay !== undefined) return undefined;
  const message = `${slug} is not laid out, so that it has no courses`;
  const fix = `leave courses out, or write lay: boards or lay: sheets in the measure of content/categories/${slug}.md`;
  return [problemAt(origin, [...path, 'courses'], 'courses-not-laid', message, { fix, onKey: true })];
}

function wrongWay({ at, courses, path }: Selection, room: RoomDraft): readonly Problem[] {
  const { origin } = room.record;
  // What is no place has been told.
  if (courses === undefined || at.some((place) => isUnknownPlace(place, path, room))) return [];
  const isFlat = (place: string): boolean => place === 'ceiling' || place === 'floor';
  const fits = (place: string): boolean => (isFlat(place) ? onPlan : onWalls).includes(courses);
  const place = at.find((one) => !fits(one));
  if (place === undefined) return [];
  const message = `courses on '${place}' run ${(isFlat(place) ? onPlan : onWalls).join(' or ')}, not ${courses}`;
  const fix = at.some(fits)
    ? `give '${place}' a selection of its own`
    : `write courses: ${(isFlat(place) ? onPlan : onWalls).join(' or ')}`;
  return [problemAt(origin, [...path, 'courses'], 'courses-direction', message, { fix })];
}
