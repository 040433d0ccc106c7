import { isDeepStrictEqual } from 'node:util';
import type { ChangeOrder } from '../../core/model/index.js';
import { problemAt, type Path, type Problem } from '../../base/problem/index.js';
import { printMoneyChange } from '../../base/units/index.js';
import { versionWords } from '../../signoff/index.js';
import { keptDrafts, keyOf, type Redrafted } from './kept-drafts.js';
import type { OpenHouse } from './open-house.js';

/** Computes each change order again from its two versions, line by line. One that no longer agrees is an error; one whose versions are not
 *  here is a warning that says so. Void ones say nothing of the house any more. */
export async function checkChangeOrders(open: OpenHouse): Promise<readonly Problem[]> {
  const { house } = await open.current();
  const orders = (house?.records.changes ?? []).filter(({ state }) => state !== 'void');
  const sharesRecords = (house?.records.house.shared ?? []).length > 0;
  const draftAnew = await keptDrafts(open, orders);
  const problems: Problem[] = [];
  for (const order of orders) problems.push(...checkOne(order, await draftAnew(order), sharesRecords));
  return problems;
}

function checkOne(order: ChangeOrder, draft: Redrafted, sharesRecords: boolean): readonly Problem[] {
  const { number, state, from, to, amount, origin } = order;
  if (!draft.ok) {
    const message = `change order ${number} cannot be computed again: ${draft.why}`;
    const fix = 'its frozen lines stand; fetch the whole history to check them';
    return [problemAt(origin, ['from'], 'change-unchecked', message, { fix, severity: 'warning' })];
  }
  const versions = `from ${versionWords(from)} to ${versionWords(to)}`;
  const fix =
    state === 'approved'
      ? 'it is agreed as it was frozen: bring its record back from git'
      : `draft it anew with bookmatch compare ${versionWords(from)} ${versionWords(to)} --draft, and void this one`;
  const disagrees = (path: Path, message: string): readonly Problem[] =>
    sharesRecords && !isProven(order)
      ? notProven(order)
      : [problemAt(origin, path, 'change-disagrees', message, { fix })];
  if (draft.money !== amount) {
    const [says, is] = [printMoneyChange(amount, 'always'), printMoneyChange(draft.money, 'always')];
    return disagrees(['amount'], `change order ${number} says ${says}, but ${versions} it is ${is}`);
  }
  if (!isDeepStrictEqual(draft.netted, order.netted)) {
    return disagrees(['netted'], `change order ${number}: what mark-up is on is not so ${versions}`);
  }
  const fresh = new Map(draft.lines);
  const index = order.lines.findIndex((line) => fresh.get(keyOf(line)) !== line.amount);
  if (index >= 0) {
    const { what } = order.lines[index] ?? { what: '' };
    return disagrees(['lines', index], `change order ${number}: '${what}' is not so ${versions}`);
  }
  if (fresh.size === order.lines.length) return [];
  return disagrees(
    ['lines'],
    `change order ${number} has ${order.lines.length} lines, but ${versions} there are ${fresh.size}`,
  );
}

/** Only issues hold the shared folders as they were. */
function isProven({ from, to }: ChangeOrder): boolean {
  return [from, to].every((version) => version.startsWith('issue-'));
}

function notProven({ number, origin }: ChangeOrder): readonly Problem[] {
  const message = `change order ${number} cannot be computed again: no commit holds the shared folders as they were`;
  const fix = 'its frozen lines stand; draft the next one between two issues, which hold them';
  return [problemAt(origin, ['from'], 'change-unchecked', message, { fix, severity: 'warning' })];
}
