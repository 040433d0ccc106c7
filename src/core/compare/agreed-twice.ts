import { byText } from '../../base/units/index.js';
import type { ChangeLine, ChangeOrder, Issue } from '../model/index.js';

/** A line of a change order that an approved one has already. */
export interface AgreedTwice {
  /** Its place among the order's lines. */
  readonly index: number;
  readonly line: ChangeLine;
  /** The approved change order that has it. */
  readonly by: ChangeOrder;
}

type Versioned = Pick<ChangeOrder, 'number' | 'from' | 'lines'>;

/** The lines of a change order that begin where an approved one began already, at the same place: to approve them would agree to that step, and its
 *  money, twice. What another approved order took back in between may be agreed anew. `approved` is in the order of decisions. */
export function agreedTwice(
  order: Versioned,
  approved: readonly ChangeOrder[],
  issues: readonly Issue[],
): readonly AgreedTwice[] {
  const last = new Map<string, { readonly start: string; readonly by: ChangeOrder }>();
  for (const by of approved) {
    for (const line of by.lines) last.set(placeOf(line), { start: startOf(line, by, issues), by });
  }
  return order.lines.flatMap((line, index) => {
    const before = last.get(placeOf(line));
    if (before?.start !== startOf(line, order, issues)) return [];
    return [{ index, line, by: before.by }];
  });
}

/** Approved change orders, in the order in which they were decided. */
export function inOrderOfDecision(changes: readonly ChangeOrder[]): readonly ChangeOrder[] {
  return changes
    .filter(({ state }) => state === 'approved')
    .sort((a, b) => byText(a.decidedOn ?? '', b.decidedOn ?? '') || a.number - b.number);
}

/** The commit of a version: an issue is the records of one. */
export function commitOf(version: string, issues: readonly Issue[]): string {
  return issues.find(({ number }) => version === `issue-${number}`)?.commit ?? version;
}

function placeOf({ room = '', selection, term, what }: ChangeLine): string {
  return [room, selection ?? term ?? what].join('\n');
}

/** What stood there before; where a line does not say, the version that its order goes from. */
function startOf({ from }: ChangeLine, order: Versioned, issues: readonly Issue[]): string {
  return from === undefined ? `version ${commitOf(order.from, issues)}` : `was ${from}`;
}
