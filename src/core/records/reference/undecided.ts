import type { Selection } from '../../model/index.js';
import { problemAt, type Problem } from '../../../base/problem/index.js';
import { counted } from '../../../base/units/index.js';
import type { Draft } from '../draft.js';
import type { RoomDraft } from '../read-room.js';

interface Found {
  readonly selection: Selection;
  readonly room: RoomDraft;
}

/** Selections of which nothing says what they may be, or what the contract holds for them. What a whole house lacks, as a house begins, is
 *  told once and not in every room. */
export function undecidedSelections(draft: Draft): readonly Problem[] {
  const all = draft.rooms.flatMap((room) => room.selections.map((selection) => ({ selection, room })));
  return [...bareProblems(all, draft), ...emptyProblems(all.filter(isEmpty), draft), ...addedProblems(all)];
}

/** A house that says of nothing what it must have or what it may cost. */
function bareProblems(all: readonly Found[], { house, rooms, slugs }: Draft): readonly Problem[] {
  // A room that cannot be read may be the one that has a standard.
  if (!house?.whole || house.whole.slots || house.whole.allowances.length > 0 || rooms.length < slugs.rooms.size)
    return [];
  if (all.length === 0 || all.some(({ selection: { standard } }) => standard !== undefined)) return [];
  const message =
    'the house has no slots, no allowance and no standard: nothing says what its rooms must have, or what the contract holds for it';
  const fix = 'bookmatch new slots lists what rooms must have, bookmatch new allowance sets money aside';
  return [problemAt(house.record.origin, ['name'], 'slots-missing', message, { fix, severity: 'notice' })];
}

function isEmpty({ selection: { standard, considering, chosen } }: Found): boolean {
  return standard === undefined && considering.length === 0 && chosen === undefined;
}

/** One for each category. Where a category has no option yet, that is what is told, at its record. */
function emptyProblems(empty: readonly Found[], { categories, slugs }: Draft): readonly Problem[] {
  const names = new Set(empty.map(({ selection }) => selection.category));
  return [...names].flatMap((category): readonly Problem[] => {
    const found = empty.filter(({ selection }) => selection.category === category);
    const record = categories.find(({ slug }) => slug === category)?.record;
    const rooms = new Set(found.map(({ room }) => room)).size;
    if (record && (slugs.options.get(category)?.size ?? 0) === 0) {
      const message = `${counted(rooms, 'room')} ${rooms === 1 ? 'has' : 'have'} ${category} to choose, and no option of it is written yet`;
      const fix = `bookmatch new option ${category} writes one; where there shall be none, write chosen: none in the rooms`;
      return [problemAt(record.origin, ['name'], 'option-missing', message, { fix, severity: 'warning' })];
    }
    const [first, ...more] = found;
    if (!first) return [];
    const places = more.length === 0 ? '' : `, here and in ${counted(more.length, 'more selection')}`;
    const message = `nothing is standard, considered or chosen for ${category}${places}`;
    const fix = 'write standard, considering or chosen; chosen: none for a deliberate none';
    const { room, selection } = first;
    return [problemAt(room.record.origin, selection.path, 'selection-empty', message, { fix, severity: 'warning' })];
  });
}

/** What the contract holds nothing for is an extra. */
function addedProblems(all: readonly Found[]): readonly Problem[] {
  const added = all.filter(
    ({ selection: { standard, allowance, chosen, considering } }) =>
      standard === undefined &&
      allowance === undefined &&
      chosen !== 'none' &&
      (chosen !== undefined || considering.length > 0),
  );
  const hasNone = all.every(
    ({ selection: { standard, allowance } }) => standard === undefined && allowance === undefined,
  );
  const [first] = added;
  if (hasNone && first && added.length > 1) {
    const message = `none of the house's selections has a standard or an allowance: the whole cost of all ${added.length} is added to the contract`;
    const fix =
      'bookmatch new allowance sets money aside; standard, in a selection, names the option that the contract includes';
    return [allAdded(first, message, fix)];
  }
  return added.map((found) => {
    const message = `${found.selection.category} has neither a standard nor an allowance: its whole cost is added to the contract`;
    const fix = 'write standard, the option that the contract includes, or allowance; leave it so if it is an extra';
    return allAdded(found, message, fix);
  });
}

function allAdded({ room, selection }: Found, message: string, fix: string): Problem {
  return problemAt(room.record.origin, selection.path, 'all-added', message, { fix, severity: 'warning' });
}
