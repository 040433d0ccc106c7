import type { Scheduled, Trim } from '../core/book/index.js';
import type { Cell, Finish, Names } from '../sheet/index.js';

/** What a selection puts at a place, as a cell. */
export function finishOf(
  scheduled: (Omit<Scheduled, 'selection'> & { readonly selection?: string; readonly key?: string }) | undefined,
  names: Names,
): Finish | undefined {
  if (!scheduled) return undefined;
  const { name = '', standing, supply, option, key, selection } = scheduled;
  const urgency = selection === undefined ? undefined : names.urgency(selection);
  return {
    name,
    standing,
    by: supply,
    ...(urgency && { urgency }),
    ...(key !== undefined && { key }),
    ...(option !== undefined && { place: { to: 'option', id: option } }),
    ...(selection !== undefined && { selection }),
  };
}

/** Trim of an opening on each side, by its key in the finish schedule; alike on both sides is said once. */
export function trimOf(trim: readonly Trim[], names: Names): readonly { readonly at?: string; readonly cell: Cell }[] {
  const cellOf = (one: Trim): Cell => {
    const finish = finishOf(one, names);
    return finish ? { is: 'finish', ...finish } : { is: 'nothing' };
  };
  const [first] = trim;
  if (!first) return [];
  const isAlike = trim.every(({ option, standing }) => option === first.option && standing === first.standing);
  return isAlike ? [{ cell: cellOf(first) }] : trim.map((one) => ({ at: names.number(one.room), cell: cellOf(one) }));
}
