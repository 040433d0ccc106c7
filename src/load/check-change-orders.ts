import type { ChangeOrder } from '../model/index.js';
import { problemAt } from '../problem/index.js';
import type { Problem } from '../problem/index.js';
import { printMoneyChange } from '../units/index.js';
import type { IsoDate } from '../units/index.js';
import { loadComparison } from './load-comparison.js';
import { loadHouse } from './load-house.js';

/** Computes each change order again from its two versions. One that no longer agrees is an error; one whose versions are not
 *  here is a warning that says so. Void ones say nothing of the house any more. */
export async function checkChangeOrders(houseDir: string, on: IsoDate): Promise<readonly Problem[]> {
  const { house } = await loadHouse(houseDir);
  const problems: Problem[] = [];
  for (const order of house?.records.changes ?? []) {
    if (order.state !== 'void') problems.push(...(await checkOne(houseDir, order, on)));
  }
  return problems;
}

async function checkOne(houseDir: string, order: ChangeOrder, on: IsoDate): Promise<readonly Problem[]> {
  const { number, from, to, amount, origin } = order;
  const loaded = await loadComparison(houseDir, from, to, on);
  if (!loaded.ok) {
    const message = `change order ${number} cannot be computed again: ${loaded.why}`;
    const fix = 'its frozen lines stand; fetch the whole history to check them';
    return [problemAt(origin, ['from'], 'change-unchecked', message, { fix, severity: 'warning' })];
  }
  const { difference } = loaded.comparison.money;
  if (difference === amount) return [];
  const message = `change order ${number} says ${printMoneyChange(amount, 'always')}, but from ${short(from)} to ${short(to)} is ${printMoneyChange(difference, 'always')}`;
  const fix = `draft it anew with bookmatch compare ${short(from)} ${short(to)} --draft, and void this one`;
  return [problemAt(origin, ['amount'], 'change-disagrees', message, { fix })];
}

/** A commit as people write it. */
function short(version: string): string {
  return version.startsWith('issue-') ? version : version.slice(0, 10);
}
