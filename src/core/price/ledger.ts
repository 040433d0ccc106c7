import type { Cents } from '../../base/units/index.js';
import { costOf, noCost } from './cost.js';
import type { LedgerEntry } from './cost.js';
import { allowanceEffect } from './effect.js';
import type { HousePrice } from './house-price.js';
import type { Item, SizedAllowance } from './item.js';
import { coversText, ledgerFigures, openReason, partsText } from './reason.js';

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
  const lines = items.map((item) => makeLine(house, item, allowance));
  const committed = sum(lines.filter((line) => !line.open).map((line) => line.covered));
  const open = lines.filter((line) => line.open);
  const { low: openLow, high: openHigh, priced } = house.choices.drawn(allowance.id);
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
    openLow,
    openHigh,
    sharedLow: (openLow - sum(open.map((line) => line.low))) as Cents,
    sharedHigh: (openHigh - sum(open.map((line) => line.high))) as Cents,
    openPriced: priced,
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
  { id, covers }: SizedAllowance['allowance'],
): LedgerEntry['lines'][number] {
  const { selection } = item;
  if (item.decided) {
    const cost = house.today.costs.get(selection) ?? noCost;
    const covered = costOf(cost, covers);
    const option = item.chosen === undefined ? {} : { option: item.chosen };
    const why = item.chosen === undefined ? 'nothing is wanted here' : partsText(cost, covers);
    return { selection, ...option, covered, low: covered, high: covered, open: false, why };
  }
  const draws = item.considered
    .map((option) => ({ option, drawn: house.choices.drawnAlone(item, option, id) }))
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

function sum(amounts: readonly Cents[]): Cents {
  return amounts.reduce((total, amount) => total + amount, 0) as Cents;
}
