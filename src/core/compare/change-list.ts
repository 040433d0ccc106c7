import type { Cents } from '../../base/units/index.js';
import type { Comparison } from './comparison.js';
import { draftLines } from './draft-lines.js';
import { daysWords, quantitySides } from './words.js';

/** One change in the flat list of all of them: what somebody who signed the older side must know. */
export interface ListedChange {
  /** Slug and title of its room; absent for what belongs to no room. */
  readonly room?: string;
  readonly roomTitle?: string;
  readonly what: string;
  /** In words; empty where there is nothing to set beside each other. */
  readonly from: string;
  readonly to: string;
  readonly money: Cents;
  /** How its last day moves, in words; empty when it does not. */
  readonly days: string;
  /** The trade to tell; empty for what no trade works by. */
  readonly trade: string;
  /** The page that is to be initialled or signed again. */
  readonly page: string;
}

/** All that changed in one list, in the order of a change order's lines; the money adds up to the difference of the totals. A share of an order that
 *  the whole house makes is no change in a room: all of these are one entry. */
export function changeList(comparison: Comparison): readonly ListedChange[] {
  const selections = new Map(
    comparison.rooms.flatMap((room) => room.selections.map((change) => [change.selection, change] as const)),
  );
  return draftLines(comparison, { standards: true }).lines.map(
    ({ room, roomTitle, selection, what, from, to, money }) => {
      const change = selection === undefined ? undefined : selections.get(selection);
      return {
        ...(room !== undefined && { room }),
        ...(roomTitle !== undefined && { roomTitle }),
        what,
        // One finish on both sides says nothing beside how much of it there is.
        ...((from === to && change && quantitySides(change)) || { from, to }),
        money,
        days: change ? daysWords(change) : '',
        trade: change?.tradeName ?? '',
        page: roomTitle ?? 'Sign-off',
      };
    },
  );
}
