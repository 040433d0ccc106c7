import type { Cents, IsoDate } from '../../base/units/index.js';
import { costOf, noCost, type LedgerEntry } from './cost.js';
import { allowanceEffect } from './effect.js';
import type { HousePrice } from './house-price.js';
import { invoicesByOrder, isInvoiced, type OrderInvoices } from './invoiced.js';
import type { Item, SizedAllowance } from './item.js';
import { coversText, invoicedText, ledgerFigures, openReason, partsText } from './reason.js';
import { computedCost } from './world.js';

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
  const orders = invoicesByOrder(allowance);
  const paidBy = (item: Item): OrderInvoices | undefined =>
    orders.find((order) => order.complete && isInvoiced(item, order.option, allowance.id));
  const lines = items.map((item) => makeLine(house, item, allowance, paidBy(item)));
  const committed = sum(lines.filter((line) => !line.open).map((line) => line.covered));
  const open = lines.filter((line) => line.open);
  const { low: openLow, high: openHigh, priced } = house.choices.drawn(allowance.id);
  const settled = items.length > 0 && open.length === 0;
  const { difference, markup, retained, change } = allowanceEffect(amount, committed, settled, house.book.contract);
  const invoiced = orders.map((order) => ({
    ...order,
    ...computedFor(order.option, allowance, items, house),
  }));
  const truedUpOn = settled && items.every((item) => isNone(item) || paidBy(item)) ? lastDay(invoiced) : undefined;
  const entry = {
    id: allowance.id,
    name: allowance.name,
    covers: allowance.covers,
    coversText: coversText(allowance.covers, house.book.contract.tax),
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
    invoiced,
    ...(truedUpOn !== undefined && { truedUpOn }),
    overage: Math.max(0, difference) as Cents,
    markup,
    retained,
    credit: Math.max(0, -change) as Cents,
    change,
    ...(allowance.note !== undefined && { note: allowance.note }),
  };
  return { ...entry, figures: ledgerFigures(entry, house.book.contract) };
}

/** `paid`: the invoices that say what the place draws, once their last is in. */
function makeLine(
  house: HousePrice,
  item: Item,
  { id, covers }: SizedAllowance['allowance'],
  paid: OrderInvoices | undefined,
): LedgerEntry['lines'][number] {
  const { selection } = item;
  if (item.decided) {
    const cost = house.today.costs.get(selection) ?? noCost;
    const covered = costOf(cost, covers);
    const option = item.chosen === undefined ? {} : { option: item.chosen };
    const line = { selection, ...option, covered, low: covered, high: covered, open: false };
    if (item.chosen === undefined) return { ...line, why: 'nothing is wanted here' };
    if (!paid) return { ...line, why: partsText(cost, covers) };
    const computed = costOf(computedCost(house.today, item) ?? cost, covers);
    return { ...line, computed, why: invoicedText(covered, computed, paid) };
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

/** What was ordered of an option on an allowance, by its quantities. */
function computedFor(
  option: string,
  { id, covers }: SizedAllowance['allowance'],
  items: readonly Item[],
  { today }: HousePrice,
): { readonly computed?: Cents } {
  const ordered = items.filter((item) => isInvoiced(item, option, id));
  if (ordered.length === 0) return {};
  return { computed: sum(ordered.map((item) => costOf(computedCost(today, item) ?? noCost, covers))) };
}

/** A deliberate none asks for no invoice. */
function isNone({ decided, chosen }: Item): boolean {
  return decided && chosen === undefined;
}

function lastDay(orders: readonly OrderInvoices[]): IsoDate | undefined {
  return orders
    .flatMap(({ invoices }) => invoices.map(({ on }) => on))
    .sort()
    .at(-1);
}

function sum(amounts: readonly Cents[]): Cents {
  return amounts.reduce((total, amount) => total + amount, 0) as Cents;
}
