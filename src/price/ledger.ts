import type { Cents } from '../units/index.js';
import { costOf, noCost } from './cost.js';
import type { Cost, LedgerEntry } from './cost.js';
import { allowanceEffect } from './effect.js';
import type { HousePrice, SizedAllowance } from './house-price.js';
import type { Item } from './item.js';
import { costsWith } from './world.js';

/** The ledger of every allowance, in the house record's order. */
export function makeLedger(house: HousePrice): LedgerEntry[] {
  const byAllowance = new Map<string, Item[]>();
  for (const item of house.items) {
    if (item.allowance === undefined) continue;
    const list = byAllowance.get(item.allowance);
    if (list) list.push(item);
    else byAllowance.set(item.allowance, [item]);
  }
  return house.allowances.map((sized) => makeEntry(house, sized, byAllowance.get(sized.allowance.id) ?? []));
}

function makeEntry(
  house: HousePrice,
  { allowance, amount, basis }: SizedAllowance,
  items: readonly Item[],
): LedgerEntry {
  const onSame = new Set(items.map((item) => item.selection));
  const lines = items.map((item) => makeLine(house, item, onSame, (cost) => costOf(cost, allowance.covers)));
  const committed = sum(lines.filter((line) => !line.open).map((line) => line.covered));
  const open = lines.filter((line) => line.open);
  const settled = items.length > 0 && open.length === 0;
  return {
    id: allowance.id,
    name: allowance.name,
    covers: allowance.covers,
    basis,
    amount,
    lines,
    committed,
    openLow: sum(open.map((line) => line.low)),
    openHigh: sum(open.map((line) => line.high)),
    balance: (amount - committed) as Cents,
    settled,
    ...allowanceEffect(amount, committed, settled, house.book.contract),
    ...(allowance.note !== undefined && { note: allowance.note }),
  };
}

function makeLine(
  house: HousePrice,
  item: Item,
  onSame: ReadonlySet<string>,
  covered: (cost: Cost) => Cents,
): LedgerEntry['lines'][number] {
  const { selection } = item;
  if (item.decided) {
    const cost = covered(house.today.costs.get(selection) ?? noCost);
    const option = item.chosen === undefined ? {} : { option: item.chosen };
    return { selection, ...option, covered: cost, low: cost, high: cost, open: false };
  }
  const draws = [...item.takeoffs.keys()].map((option) => drawnBy(house, item, option, onSame, covered));
  const low = draws.length === 0 ? 0 : Math.min(...draws);
  const high = draws.length === 0 ? 0 : Math.max(...draws);
  return { selection, covered: 0 as Cents, low: low as Cents, high: high as Cents, open: true };
}

/** What the allowance would be drawn on if the item took an option. Other places on the same allowance may share the
 *  order, and their shares move with it: the draw is the difference of them all. */
function drawnBy(
  house: HousePrice,
  item: Item,
  option: string,
  onSame: ReadonlySet<string>,
  covered: (cost: Cost) => Cents,
): number {
  let drawn = 0;
  for (const [selection, cost] of costsWith(house.today, item, option, house.book)) {
    if (onSame.has(selection)) drawn += covered(cost) - covered(house.today.costs.get(selection) ?? noCost);
  }
  return drawn;
}

function sum(amounts: readonly Cents[]): Cents {
  return amounts.reduce((total, amount) => total + amount, 0) as Cents;
}
