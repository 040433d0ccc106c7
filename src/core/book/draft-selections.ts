import { selectionId, type Records, type RoomMeasure } from '../model/index.js';
import type { Outcome, Problem } from '../../base/problem/index.js';
import { optionId, type Draft } from './draft.js';
import { freshWork, type Work } from './kept-work.js';
import { countsByNeighbours, neighboursOf } from './neighbours.js';
import { optionSlugs } from './option-slugs.js';

/** Drafts of every selection in the house, in order of room number and then the category's working order. */
export function draftSelections(
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  work: Pick<Work, 'neighbours' | 'draftRoom' | 'take'> = freshWork,
): Required<Outcome<readonly Draft[]>> {
  const categories = new Map(records.categories.map((category) => [category.slug, category]));
  const options = new Map(records.options.map((option) => [optionId(option.category, option.slug), option]));
  const neighbours = neighboursOf(records.rooms, measures, records.categories);
  const problems: Problem[] = [];
  const drafts: Draft[] = [];
  for (const room of records.rooms) {
    const measure = measures.get(room.slug);
    if (!measure) continue;
    const own = room.selections.map(({ category }) => categories.get(category));
    const named = room.selections.flatMap((selection) =>
      optionSlugs(selection).flatMap((slug) => options.get(optionId(selection.category, slug)) ?? []),
    );
    const beside = room.selections.map((selection, index) => {
      const category = own[index];
      if (!category || !countsByNeighbours(category)) return undefined;
      return work.neighbours(selectionId(room.slug, selection), neighbours(room.slug, category));
    });
    const drafted = work.draftRoom(room, measure, own, named, beside, work.take);
    problems.push(...drafted.problems);
    drafts.push(...drafted.value);
  }
  return { value: drafts, problems };
}
