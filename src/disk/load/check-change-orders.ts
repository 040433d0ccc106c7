import { draftLines } from '../../core/compare/index.js';
import type { ChangeLine, ChangeOrder } from '../../core/model/index.js';
import { problemAt } from '../../base/problem/index.js';
import type { Path, Problem } from '../../base/problem/index.js';
import { printMoneyChange } from '../../base/units/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { loadComparison } from './load-comparison.js';
import type { OpenHouse } from './open-house.js';

/** Computes each change order again from its two versions, line by line. One that no longer agrees is an error; one whose versions are not
 *  here is a warning that says so. Void ones say nothing of the house any more. */
export async function checkChangeOrders(open: OpenHouse, on: IsoDate): Promise<readonly Problem[]> {
  const { house } = await open.current();
  const problems: Problem[] = [];
  for (const order of house?.records.changes ?? []) {
    if (order.state !== 'void') problems.push(...(await checkOne(open, order, on)));
  }
  return problems;
}

async function checkOne(open: OpenHouse, order: ChangeOrder, on: IsoDate): Promise<readonly Problem[]> {
  const { number, from, to, amount, origin } = order;
  const loaded = await loadComparison(open, from, to, on);
  if (!loaded.ok) {
    const message = `change order ${number} cannot be computed again: ${loaded.why}`;
    const fix = 'its frozen lines stand; fetch the whole history to check them';
    return [problemAt(origin, ['from'], 'change-unchecked', message, { fix, severity: 'warning' })];
  }
  const draft = draftLines(loaded.comparison);
  const versions = `from ${short(from)} to ${short(to)}`;
  const fix = `draft it anew with bookmatch compare ${short(from)} ${short(to)} --draft, and void this one`;
  const disagrees = (path: Path, message: string): readonly Problem[] => [
    problemAt(origin, path, 'change-disagrees', message, { fix }),
  ];
  if (draft.money !== amount) {
    const [says, is] = [printMoneyChange(amount, 'always'), printMoneyChange(draft.money, 'always')];
    return disagrees(['amount'], `change order ${number} says ${says}, but ${versions} it is ${is}`);
  }
  const fresh = new Map(draft.lines.map((line) => [keyOf(line), line.money]));
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

type Line = Pick<ChangeLine, 'room' | 'selection' | 'term' | 'what' | 'from' | 'to'>;

/** Of a term both sides count: what it becomes is what was agreed. */
function keyOf({ room = '', selection = '', term, what, from = '', to = '' }: Line): string {
  return [room, selection, what, ...(term === undefined ? [] : [term, from, to])].join('\n');
}

/** A commit as people write it. */
function short(version: string): string {
  return version.startsWith('issue-') ? version : version.slice(0, 10);
}
