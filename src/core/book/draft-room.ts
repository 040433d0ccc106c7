import { selectionId, type Category, type Option, type Room, type RoomMeasure } from '../model/index.js';
import { problemAt, type Outcome, type Problem } from '../../base/problem/index.js';
import { conventionOf, exceptProblems, laidWords } from '../takeoff/index.js';
import { once } from '../../base/units/index.js';
import { optionId, type Draft } from './draft.js';
import { laidTwiceProblems } from './laid-twice.js';
import { notByNeighbours, type Neighbours } from './neighbours.js';
import { optionSlugs } from './option-slugs.js';
import type { Taken, TakeSelection } from './take-selection.js';

/** Drafts of a room's selections in the category's working order. `categories` and `neighbours` are in the order of its selections, the latter absent
 *  where a category does not count by them; `options` are all that its selections name. */
export function draftRoom(
  room: Room,
  measure: RoomMeasure,
  categories: readonly (Category | undefined)[],
  options: readonly Option[],
  neighbours: readonly (Neighbours | undefined)[],
  take: TakeSelection,
): Required<Outcome<readonly Draft[]>> {
  const byId = new Map(options.map((option) => [optionId(option.category, option.slug), option]));
  const problems: Problem[] = [...laidTwiceProblems(room, measure)];
  const drafts = room.selections.flatMap((selection, index): readonly Draft[] => {
    const category = categories[index];
    if (!category) return [];
    const id = selectionId(room.slug, selection);
    const beside = neighbours[index];
    const own = optionSlugs(selection).flatMap((slug) => byId.get(optionId(category.slug, slug)) ?? []);
    const taken = take(selection, id, category, measure, own, beside);
    const draft = {
      ...{ id, room, selection, category, measure, places: taken.places, ...(beside ?? notByNeighbours) },
      options: new Map(own.map((option, at) => [option.slug, { option, takeoffs: taken.takeoffs[at] ?? [] }])),
    };
    problems.push(...placeProblems(draft, taken));
    return [draft];
  });
  return { value: drafts.sort((a, b) => a.category.sequence - b.category.sequence), problems };
}

/** What a selection's record says of its places that is wrong. */
function placeProblems(
  { room, selection, category, measure }: Draft,
  { unknown, unsuited }: Taken,
): readonly Problem[] {
  const at = [...selection.path, 'at'];
  const missing = once(() => recordedButNotMeasured(room, measure));
  const byRun = category.measure.by === 'run';
  const rule = conventionOf(category);
  return [
    ...unknown
      .filter((word) => !missing()(word))
      .map((word) => {
        const fix = `places here: ${placeWords(measure).join(', ')}`;
        return problemAt(room.origin, at, 'place-unknown', `${room.name} has no place '${word}'`, { fix });
      }),
    ...exceptProblems(selection, measure, byRun)
      .filter(({ index }) => !missing()(selection.except?.[index]?.place ?? ''))
      .map(({ index, message, fix }) => {
        const path = [...selection.path, 'except', index];
        return problemAt(room.origin, path, 'except-unsuited', message, { fix });
      }),
    ...unsuited.map((place) => {
      const message = `${category.name.toLowerCase()} is measured on ${rule?.measures ?? 'nothing known'}, and '${place.id}' is not one`;
      const fix = `leave '${place.id}' out, or select a category that is measured there`;
      return problemAt(room.origin, at, 'place-unsuited', message, { fix });
    }),
  ];
}

/** Does a word name, or lie on, a feature or an opening that is recorded but could not be measured? Why not has been said. */
function recordedButNotMeasured(room: Room, measure: RoomMeasure): (word: string) => boolean {
  const measured = new Set([...measure.features.map(({ id }) => id), ...measure.openings.map(({ mark }) => mark)]);
  const recorded = [...room.features.map(({ id }) => id), ...room.openings.map(({ mark }) => mark)];
  const lost = new Set(recorded.filter((id) => !measured.has(id)));
  return (word) => lost.has(word.split('/')[0] ?? word);
}

function placeWords(measure: RoomMeasure): string[] {
  return [
    'ceiling',
    ...(measure.steps ? ['ceiling-steps', ...measure.steps.map((step) => step.id)] : []),
    'floor',
    ...(measure.risers ? ['risers', ...measure.risers.map((riser) => riser.id)] : []),
    'walls',
    ...laidWords,
    'base',
    'openings',
    ...measure.walls.map((wall) => wall.id),
    ...measure.openings.map((opening) => opening.mark),
    ...measure.features.map((feature) => feature.id),
  ];
}
