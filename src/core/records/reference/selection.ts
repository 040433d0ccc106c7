import type { Selection } from '../../model/index.js';
import { nearest, problemAt, type Problem } from '../../../base/problem/index.js';
import { looseItems } from '../checked-record.js';
import type { Draft } from '../draft.js';
import type { RoomDraft } from '../read-room.js';
import { personUnknown, some, unknown, unknownCategory, unknownOption } from './unknown.js';

/** Selections name known categories, options and allowances. */
export function selectionReferences(draft: Draft): readonly Problem[] {
  return draft.rooms.flatMap((room) =>
    room.selections.flatMap((selection) => [
      ...optionProblems(selection, room, draft),
      ...allowanceProblems(selection, room, draft),
      ...installProblems(selection, room, draft),
      ...chooserProblems(selection, room, draft),
      ...outsideProblems(selection, room, draft),
    ]),
  );
}

function optionProblems(selection: Selection, { record: { origin } }: RoomDraft, draft: Draft): readonly Problem[] {
  const { slugs } = draft;
  const { category, standard, considering, chosen, facts, insteadOf, path } = selection;
  if (!slugs.categories.has(category)) {
    return [unknownCategory(origin, [...path, 'category'], category, slugs.categories)];
  }
  const among = slugs.options.get(category) ?? new Set<string>();
  const named = [
    ...(standard === undefined ? [] : [{ name: standard, at: [...path, 'standard'] }]),
    ...considering.map((name, index) => ({ name, at: [...path, 'considering', index] })),
    ...(chosen === undefined || chosen === 'none' ? [] : [{ name: chosen, at: [...path, 'chosen'] }]),
    ...facts.flatMap(({ step, option }) =>
      option === undefined ? [] : [{ name: option, at: [...path, step, 'option'] }],
    ),
    ...(insteadOf ? [{ name: insteadOf.option, at: [...path, 'instead-of', 'option'] }] : []),
  ];
  return named
    .filter(({ name }) => !among.has(name))
    .map(({ name, at }) => unknownOption(origin, at, name, { category, draft }));
}

function allowanceProblems(
  { allowance, category, path }: Selection,
  { record: { origin } }: RoomDraft,
  { house, slugs }: Draft,
): readonly Problem[] {
  if (allowance === undefined || !house?.allowanceIds) return [];
  const at = [...path, 'allowance'];
  if (!house.allowanceIds.has(allowance)) {
    const among = house.allowanceIds;
    const message = `the house has no allowance '${allowance}'`;
    return [
      unknown(origin, at, {
        code: 'allowance-unknown',
        message,
        name: allowance,
        among,
        lives: `Allowances are ${some(among)}`,
      }),
    ];
  }
  const found = house.allowances.find(({ value }) => value.id === allowance)?.value;
  if (!found || found.categories.includes(category) || !slugs.categories.has(category)) return [];
  const message = `allowance '${allowance}' does not cover the category '${category}'`;
  const fix = `it covers ${some(found.categories)}; add the category to the allowance in content/house.md, or leave it out here`;
  return [problemAt(origin, at, 'allowance-category', message, { fix })];
}

/** An installer is a known trade, or the owner, and is named for what the owner furnishes. */
function installProblems(
  { install, supply, path }: Selection,
  { record: { origin } }: RoomDraft,
  { slugs }: Draft,
): readonly Problem[] {
  if (install === undefined) return [];
  const at = [...path, 'install'];
  if (install !== 'owner' && !slugs.trades.has(install)) {
    const among = [...slugs.trades, 'owner'];
    const lives = 'Trades live in content/trades/; write owner when the owner does it';
    const message = `there is no trade '${install}'`;
    return [unknown(origin, at, { code: 'trade-unknown', message, name: install, among, lives })];
  }
  if (supply === 'owner-furnished') return [];
  const message = `an installer is named, but the contractor supplies it and the category's trade installs it`;
  return [
    problemAt(origin, at, 'install-unsuited', message, { fix: 'leave install out, or write supply: owner-furnished' }),
  ];
}

/** Who chose is one of the house's people, by name or by role. */
function chooserProblems(
  { chosenBy, path }: Selection,
  { record: { origin } }: RoomDraft,
  draft: Draft,
): readonly Problem[] {
  return personUnknown(draft, chosenBy, { origin, path: [...path, 'chosen-by'], did: 'chosen by' });
}

/** What is chosen was considered, where it is written what was. */
function outsideProblems(
  { category, chosen, standard, considering, path }: Selection,
  { record: { origin } }: RoomDraft,
  { slugs }: Draft,
): readonly Problem[] {
  if (chosen === undefined || chosen === standard || considering.length === 0) return [];
  if (considering.includes(chosen) || !slugs.options.get(category)?.has(chosen)) return [];
  const message = `'${chosen}' is chosen, and was not among what was considered`;
  const fix = `add it to considering: others are compared with it there. Considered are ${some(considering)}`;
  return [problemAt(origin, [...path, 'chosen'], 'chosen-not-considered', message, { fix, severity: 'warning' })];
}

/** A choice without a day, in a house whose other choices have theirs: nobody can tell what it held against. */
export function chosenDays({ rooms }: Draft): readonly Problem[] {
  const chosen = rooms.flatMap(({ selections, record: { origin } }) =>
    selections
      .filter((selection) => selection.chosen !== undefined)
      .map((selection) => ({
        origin,
        chosenOn: selection.chosenOn,
        path: selection.path,
        slug: selection.chosen ?? '',
      })),
  );
  if (chosen.every(({ chosenOn }) => chosenOn === undefined)) return [];
  return chosen
    .filter(({ chosenOn }) => chosenOn === undefined)
    .map(({ origin, path, slug }) =>
      problemAt(origin, [...path, 'chosen'], 'chosen-without-day', `'${slug}' is chosen without a day`, {
        fix: 'write chosen-on, as other choices of this house do',
        severity: 'warning',
      }),
    );
}

/** An allowance that nothing draws on is money nobody will see again. */
export function allowanceUse({ house, rooms, slugs, hasStrays }: Draft): readonly Problem[] {
  // A room that cannot be read may be the one that draws on it.
  if (!house || hasStrays || rooms.length < slugs.rooms.size) return [];
  const { allowanceIds } = house;
  if (!allowanceIds || rooms.some(({ record }) => record.meant('selections'))) return [];
  const used = new Set(
    rooms.flatMap(({ record }) =>
      looseItems(record, 'selections').map((item) => (item as { allowance?: unknown } | null)?.allowance),
    ),
  );
  // A name that is nearly right has been reported where it stands.
  const misspelt = new Set(
    [...used].flatMap((name) =>
      typeof name === 'string' && !allowanceIds.has(name) ? (nearest(name, allowanceIds) ?? []) : [],
    ),
  );
  return house.allowances.flatMap(({ value, index }) => {
    if (used.has(value.id) || misspelt.has(value.id)) return [];
    const message = `nothing draws on the allowance '${value.id}'`;
    const fix = `write allowance: ${value.id} in the selections it pays for`;
    return [
      problemAt(house.record.origin, ['allowances', index, 'id'], 'allowance-unused', message, {
        fix,
        severity: 'warning',
      }),
    ];
  });
}
