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
import {
  conventionOf,
  exceptProblems,
  laidWords,
  resolvePlaces,
  takeOff,
  type Place,
  type Takeoff,
} from '../takeoff/index.js';
import { laidTwiceProblems } from './laid-twice.js';
import { countsByNeighbours, neighboursOf, type Neighbours } from './neighbours.js';

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

/** A draft of a selection that is the same object as before, or one made now. */
export type KeepDraft = (selection: Selection, make: () => Drafted) => Drafted;

/** Drafts of every selection in the house, in order of room number and then the category's working order. */
export function draftSelections(
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  kept?: { readonly draft: KeepDraft },
): Required<Outcome<readonly Draft[]>> {
  const categories = new Map(records.categories.map((category) => [category.slug, category]));
  const options = new Map(records.options.map((option) => [optionId(option.category, option.slug), option]));
  const problems: Problem[] = [];
  const neighbours = neighboursOf(records.rooms, measures, records.categories);
  const drafts = records.rooms.flatMap((room) => {
    const measure = measures.get(room.slug);
    if (!measure) return [];
    problems.push(...laidTwiceProblems(room, measure));
    const drafted = room.selections.flatMap((selection) => {
      const category = categories.get(selection.category);
      if (!category) return [];
      const make = (): Drafted =>
        draft({ room, selection, category, measure, options, ...neighbours(room.slug, category) });
      // What others choose may move what counts by its neighbours.
      const drafted = kept && !countsByNeighbours(category) ? kept.draft(selection, make) : make();
      problems.push(...drafted.problems);
      return [drafted.draft.room === room ? drafted.draft : { ...drafted.draft, room }];
    });
    return drafted.sort((a, b) => a.category.sequence - b.category.sequence);
  });
  return { value: drafts, problems };
}

interface DraftInput extends Neighbours {
  readonly room: Room;
  readonly selection: Selection;
  readonly category: Category;
  readonly measure: RoomMeasure;
  readonly options: ReadonlyMap<string, Option>;
}

/** A draft with what was found while it was made. */
export interface Drafted {
  readonly draft: Draft;
  readonly problems: readonly Problem[];
}

function draft({ room, selection, category, measure, options, ...neighbours }: DraftInput): Drafted {
  const problems: Problem[] = [];
  const { places, unknown } = resolvePlaces(selection, measure);
  const at = [...selection.path, 'at'];
  const missing = recordedButNotMeasured(room, measure);
  for (const word of unknown.filter((one) => !missing(one))) {
    problems.push(
      problemAt(room.origin, at, 'place-unknown', `${room.name} has no place '${word}'`, {
        fix: `places here: ${placeWords(measure).join(', ')}`,
      }),
    );
  }
  const byRun = category.measure.by === 'run';
  for (const { index, message, fix } of exceptProblems(selection, measure, byRun)) {
    if (missing(selection.except?.[index]?.place ?? '')) continue;
    problems.push(problemAt(room.origin, [...selection.path, 'except', index], 'except-unsuited', message, { fix }));
  }
  const taken = new Map<string, { option: Option; takeoffs: readonly Takeoff[] }>();
  const rule = conventionOf(category);
  for (const slug of consideredOptions(selection)) {
    const option = options.get(optionId(category.slug, slug));
    if (!option) continue;
    const { takeoffs, unsuited } = takeOff({ selection, category, measure, ...neighbours }, places, option);
    if (taken.size === 0) {
      for (const place of unsuited) {
        const message = `${category.name.toLowerCase()} is measured on ${rule?.measures ?? 'nothing known'}, and '${place.id}' is not one`;
        const fix = `leave '${place.id}' out, or select a category that is measured there`;
        problems.push(problemAt(room.origin, at, 'place-unsuited', message, { fix }));
      }
    }
    taken.set(slug, { option, takeoffs });
  }
  const id = selectionId(room.slug, selection);
  return { draft: { id, room, selection, category, measure, places, ...neighbours, options: taken }, problems };
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
  const option = options.find(({ category, slug }) => category === draft.category.slug && slug === chosen);
  if (!option || draft.options.has(chosen)) return { ...draft, selection };
  const { takeoffs } = takeOff({ ...draft, selection }, draft.places, option);
  return { ...draft, selection, options: new Map([...draft.options, [chosen, { option, takeoffs }]]) };
}

/** Drafts of a house in which places were chosen or left out: what counts by its neighbours is taken off anew. */
export function withNeighbours(
  drafts: readonly Draft[],
  { categories, rooms }: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
): readonly Draft[] {
  const selecting = rooms.map((room) => ({
    ...room,
    selections: drafts.filter((draft) => draft.room.slug === room.slug).map(({ selection }) => selection),
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

/** Slugs of every option that could stand for a selection, each once: the standard first, then as considered, then a
 *  chosen one that was not on the list. */
function consideredOptions(selection: Selection): readonly string[] {
  const chosen = selection.chosen === 'none' ? undefined : selection.chosen;
  const all = [selection.standard, ...selection.considering, chosen];
  return [...new Set(all.filter((slug) => slug !== undefined))];
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
