import { isGone } from '../../fact/index.js';
import { isOnSite, type Selection } from '../../model/index.js';
import { problemAt, type Problem } from '../../../base/problem/index.js';
import { printDay } from '../../../base/units/index.js';
import type { Draft } from '../draft.js';
import type { OptionDraft } from '../read-option.js';
import type { RoomDraft } from '../read-room.js';
import { some, unknown } from './unknown.js';

/** What bears on the day of a choice: milestones that it no longer fixes, needs that are done, options that are withdrawn. */
export function bearingReferences(draft: Draft): readonly Problem[] {
  const options = new Map(draft.options.map((option) => [`${option.category}/${option.slug}`, option]));
  return draft.rooms.flatMap((room) =>
    room.selections.flatMap((selection) => {
      const standing = [...new Set([selection.standard, ...selection.considering, selection.chosen])].flatMap(
        (slug) => options.get(`${selection.category}/${slug ?? ''}`) ?? [],
      );
      return [
        ...keptOpenProblems(selection, room, draft),
        ...needProblems(selection, room, standing),
        ...withdrawnProblems(selection, room, standing),
      ];
    }),
  );
}

function keptOpenProblems(
  { category: slug, keptOpen = [], path }: Selection,
  { record: { origin } }: RoomDraft,
  { categories }: Draft,
): readonly Problem[] {
  const category = categories.find((each) => each.slug === slug)?.whole;
  if (!category) return [];
  const among = category.fixesEarly.map(({ milestone }) => milestone);
  return keptOpen.flatMap(({ milestone: name }) => {
    if (among.includes(name)) return [];
    const message = `${slug} does not fix '${name}', which is said to be kept open`;
    const lives = `It fixes ${some(among)}: see fixes-early in content/categories/${slug}.md`;
    const at = [...path, 'kept-open-by', name];
    return [unknown(origin, at, { code: 'fixing-unknown', message, name, among, lives })];
  });
}

function needProblems(
  { needsDone = [], path }: Selection,
  { record: { origin } }: RoomDraft,
  options: readonly OptionDraft[],
): readonly Problem[] {
  if (options.some(({ whole }) => !whole)) return [];
  const among = options.flatMap(({ whole }) => whole?.needs.flatMap(({ id }) => id ?? []) ?? []);
  return needsDone.flatMap(({ need: name }, index) => {
    if (among.includes(name)) return [];
    const message = `none of these options needs '${name}'`;
    const lives = `They need ${some(new Set(among))}: the ids under needs in their records`;
    const at = [...path, 'needs-done', index, 'need'];
    return [unknown(origin, at, { code: 'need-unknown', message, name, among, lives })];
  });
}

/** What is withdrawn is told where it could still be chosen, or was chosen and is not there yet; it cannot be chosen after
 *  its day. */
function withdrawnProblems(
  { category, standard, considering, chosen, chosenOn, facts, path }: Selection,
  { record: { origin } }: RoomDraft,
  options: readonly OptionDraft[],
): readonly Problem[] {
  return options.flatMap(({ slug, whole }) => {
    const withdrawn = whole?.withdrawn;
    if (!withdrawn || (chosen !== undefined && chosen !== slug)) return [];
    const isChosen = chosen === slug;
    if (isOnSite(facts)) return [];
    const { on, why, instead } = withdrawn;
    const after = isChosen && chosenOn !== undefined && isGone(withdrawn, chosenOn);
    const place = considering.indexOf(slug);
    const key = isChosen ? ['chosen'] : place < 0 && standard === slug ? ['standard'] : ['considering', place];
    const end = `withdrawn on ${printDay(on)}: ${why}`;
    const message = after
      ? `'${slug}' was chosen on ${printDay(chosenOn)} and had been ${end}`
      : `'${slug}' is ${isChosen ? 'chosen' : key[0] === 'standard' ? 'the standard' : 'considered'} and was ${end}`;
    const fix =
      instead === undefined
        ? `take it out, or choose another option of ${category}`
        : `'${instead}' is offered instead: see content/options/${category}/${instead}.md`;
    const code = after ? 'chosen-withdrawn' : 'option-withdrawn';
    return [problemAt(origin, [...path, ...key], code, message, { fix, severity: after ? 'error' : 'warning' })];
  });
}
