import { problemAt, type Problem } from '../../base/problem/index.js';
import type { Option, Records, Selection } from '../model/index.js';
import { optionId } from './draft.js';
import { roleOf, shownFacts, type SeenRole } from './seen.js';

/** A notice for each two options that are considered for one place, which is open, and that pictures show alike, at the swatch of the later one by its slug. Of a category
 *  that no picture shows, and of options without a swatch, nothing is said. */
export function alikeProblems({ rooms, categories, options }: Records): readonly Problem[] {
  const bySlug = new Map(categories.map((category) => [category.slug, category]));
  const shown = new Map(
    options.flatMap((option) => (option.swatch ? [[optionId(option.category, option.slug), option] as const] : [])),
  );
  const found = new Map<string, Problem>();
  for (const { name, selections } of rooms)
    for (const selection of selections) {
      const category = bySlug.get(selection.category);
      const role =
        category &&
        roleOf(
          category,
          selection.at.map((id) => ({ id })),
        );
      if (!role || role === 'unit' || selection.chosen !== undefined) continue;
      for (const [one, other] of pairsOf(consideredOf(selection, shown))) {
        const key = `${category.slug} ${one.slug} ${other.slug}`;
        if (found.has(key) || lookOf(one, role) !== lookOf(other, role)) continue;
        found.set(key, alikeProblem(one, other, `${category.name}, ${name}`));
      }
    }
  return [...found.values()];
}

function consideredOf({ category, considering }: Selection, options: ReadonlyMap<string, Option>): readonly Option[] {
  return [...new Set(considering)]
    .flatMap((slug) => options.get(optionId(category, slug)) ?? [])
    .toSorted((one, other) => (one.slug < other.slug ? -1 : 1));
}

function pairsOf(list: readonly Option[]): readonly (readonly [Option, Option])[] {
  return list.flatMap((one, i) => list.slice(i + 1).map((other) => [one, other] as const));
}

/** Stones and grains by chance are no difference. */
function lookOf(option: Option, role: SeenRole): string {
  return JSON.stringify([option.swatch, shownFacts(role, option)]);
}

function alikeProblem(one: Option, other: Option, where: string): Problem {
  const message = `${other.name} and ${one.name} have one swatch, and nothing else that pictures show: both are considered (${where})`;
  const fix = 'give each its own colors or pattern; where they do look alike, it is samples that decide';
  return problemAt(other.origin, ['swatch'], 'options-alike', message, { fix, severity: 'notice' });
}
