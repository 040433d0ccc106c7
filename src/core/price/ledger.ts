import type { Cents } from '../../base/units/index.js';
import { costOf, noCost, type Cost, type LedgerEntry } from './cost.js';
import { allowanceEffect } from './effect.js';
import type { HousePrice } from './house-price.js';
import type { Item, SizedAllowance } from './item.js';
import { coversText, ledgerFigures, openReason, partsText } from './reason.js';
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
  const lines = items.map((item) => makeLine(house, item, onSame, allowance));
  const committed = sum(lines.filter((line) => !line.open).map((line) => line.covered));
  const open = lines.filter((line) => line.open);
  const settled = items.length > 0 && open.length === 0;
  const { difference, markup, retained, change } = allowanceEffect(amount, committed, settled, house.book.contract);
  const entry = {
    id: allowance.id,
    name: allowance.name,
    covers: allowance.covers,
    coversText: coversText(allowance.covers),
    basis,
    amount,
    lines,
    committed,
    openLow: sum(open.map((line) => line.low)),
    openHigh: sum(open.map((line) => line.high)),
    balance: (amount - committed) as Cents,
    settled,
    overage: Math.max(0, difference) as Cents,
    markup,
    retained,
    credit: Math.max(0, -change) as Cents,
    change,
    ...(allowance.note !== undefined && { note: allowance.note }),
  };
  return { ...entry, figures: ledgerFigures(entry, house.book.contract) };
}

function makeLine(
  house: HousePrice,
  item: Item,
  onSame: ReadonlySet<string>,
  { covers }: SizedAllowance['allowance'],
): LedgerEntry['lines'][number] {
  const { selection } = item;
  if (item.decided) {
    const cost = house.today.costs.get(selection) ?? noCost;
    const covered = costOf(cost, covers);
    const option = item.chosen === undefined ? {} : { option: item.chosen };
    const why = item.chosen === undefined ? 'nothing is wanted here' : partsText(cost, covers);
    return { selection, ...option, covered, low: covered, high: covered, open: false, why };
  }
  const draws = [...item.takeoffs.keys()]
    .map((option) => ({ option, drawn: drawnBy(house, item, option, onSame, (cost) => costOf(cost, covers)) }))
    .sort((a, b) => a.drawn - b.drawn);
  const [low, high] = [draws[0], draws.at(-1)];
  const name = (draw: typeof low) => (draw ? (house.book.options.get(draw.option)?.name ?? draw.option) : '');
  return {
    selection,
    covered: 0 as Cents,
    low: (low?.drawn ?? 0) as Cents,
    high: (high?.drawn ?? 0) as Cents,
    open: true,
    why: openReason(name(low), name(high), draws.length),
  };
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
