import {
  selectionId,
  type Category,
  type Option,
  type Records,
  type Room,
  type RoomMeasure,
  type Selection,
} from '../model/index.js';
import { problemAt, type Outcome, type Problem } from '../../base/problem/index.js';
import { conventionOf, exceptProblems, laidWords, takeOff, type Place, type Takeoff } from '../takeoff/index.js';
import { once } from '../../base/units/index.js';
import { groupBy } from './group-by.js';
import { freshWork, type Work } from './kept-work.js';
import { countsByNeighbours, neighboursOf, type Neighbours } from './neighbours.js';
import { optionSlugs } from './option-slugs.js';
import type { Taken } from './take-selection.js';

/** A selection with its places found and every option taken off, before it is priced. */
export interface Draft extends Neighbours {
  readonly id: string;
  readonly room: Room;
  readonly selection: Selection;
  readonly category: Category;
  readonly measure: RoomMeasure;
  readonly places: readonly Place[];
  /** By option slug, in the order to show. */
  readonly options: ReadonlyMap<string, { readonly option: Option; readonly takeoffs: readonly Takeoff[] }>;
}

/** Id of an option across categories. */
export function optionId(category: string, slug: string): string {
  return `${category}/${slug}`;
}

/** Drafts of every selection in the house, in order of room number and then the category's working order. */
export function draftSelections(
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  work: Pick<Work, 'laidTwice' | 'neighbours' | 'take'> = freshWork,
): Required<Outcome<readonly Draft[]>> {
  const categories = new Map(records.categories.map((category) => [category.slug, category]));
  const options = new Map(records.options.map((option) => [optionId(option.category, option.slug), option]));
  const problems: Problem[] = [];
  const neighbours = neighboursOf(records.rooms, measures, records.categories);
  const drafts = records.rooms.flatMap((room) => {
    const measure = measures.get(room.slug);
    if (!measure) return [];
    problems.push(...work.laidTwice(room, measure));
    const drafted = room.selections.flatMap((selection): readonly Draft[] => {
      const category = categories.get(selection.category);
      if (!category) return [];
      const id = selectionId(room.slug, selection);
      const beside = neighbours(room.slug, category);
      const counted = countsByNeighbours(category) ? work.neighbours(id, beside) : undefined;
      const own = optionSlugs(selection).flatMap((slug) => options.get(optionId(category.slug, slug)) ?? []);
      const taken = work.take(selection, id, category, measure, own, counted);
      const draft = {
        ...{ id, room, selection, category, measure, places: taken.places, ...beside },
        options: new Map(own.map((option, at) => [option.slug, { option, takeoffs: taken.takeoffs[at] ?? [] }])),
      };
      problems.push(...placeProblems(draft, taken));
      return [draft];
    });
    return drafted.sort((a, b) => a.category.sequence - b.category.sequence);
  });
  return { value: drafts, problems };
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

/** A draft as it would be with an option chosen, or `none`, and nothing ordered. An option that was not at hand is taken off. */
export function withChoice(draft: Draft, chosen: string, options: readonly Option[]): Draft {
  const selection: Selection = { ...draft.selection, chosen, facts: [] };
  if (draft.options.has(chosen)) return { ...draft, selection };
  const option = options.find(({ category, slug }) => category === draft.category.slug && slug === chosen);
  if (!option) return { ...draft, selection };
  const { takeoffs } = takeOff({ ...draft, selection }, draft.places, option);
  return { ...draft, selection, options: new Map([...draft.options, [chosen, { option, takeoffs }]]) };
}

/** Drafts of a house in which places were chosen or left out: what counts by its neighbours is taken off anew. */
export function withNeighbours(
  drafts: readonly Draft[],
  { categories, rooms }: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
): readonly Draft[] {
  const byRoom = groupBy(drafts, ({ room }) => room.slug);
  const selecting = rooms.map((room) => ({
    ...room,
    selections: (byRoom.get(room.slug) ?? []).map(({ selection }) => selection),
  }));
  const neighbours = neighboursOf(selecting, measures, categories);
  return drafts.map((draft) => {
    if (!countsByNeighbours(draft.category)) return draft;
    const anew = { ...draft, ...neighbours(draft.room.slug, draft.category) };
    const options = [...draft.options].map(([slug, { option }]) => {
      const { takeoffs } = takeOff(anew, draft.places, option);
      return [slug, { option, takeoffs }] as const;
    });
    return { ...anew, options: new Map(options) };
  });
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
