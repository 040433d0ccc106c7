import { later, withLater, type Cents, type IsoDate } from '../../base/units/index.js';
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
  const lines = later(() =>
    items.map((item) =>
      item.decided ? decidedLine(house, item, allowance, paidBy(item)) : openLine(house, item, allowance),
    ),
  );
  const openLines = (): readonly Line[] => lines().filter((line) => line.open);
  const drawn = later(() => house.choices.drawn(allowance.id));
  const committed = sum(items.filter(({ decided }) => decided).map((item) => coveredOf(house, item, allowance)));
  const settled = items.length > 0 && items.every(({ decided }) => decided);
  const { difference, markup, retained, change } = allowanceEffect(amount, committed, settled, house.book.contract);
  const invoiced = orders.map((order) => ({
    ...order,
    ...computedFor(order.option, allowance, items, house),
  }));
  const truedUpOn = settled && items.every((item) => isNone(item) || paidBy(item)) ? lastDay(invoiced) : undefined;
  const known: Omit<LedgerEntry, keyof LaterParts> = {
    id: allowance.id,
    name: allowance.name,
    covers: allowance.covers,
    coversText: coversText(allowance.covers, house.book.contract.tax),
    basis,
    amount,
    committed,
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
  // Most of what is made of a Book asks for no more than that.
  const entry: LedgerEntry = withLater<typeof known, LaterParts>(known, {
    lines,
    openLow: () => drawn().low,
    openHigh: () => drawn().high,
    sharedLow: () => (drawn().low - sum(openLines().map((line) => line.low))) as Cents,
    sharedHigh: () => (drawn().high - sum(openLines().map((line) => line.high))) as Cents,
    openPriced: () => drawn().priced,
    figures: () => ledgerFigures(entry, house.book.contract),
  });
  return entry;
}

/** What asks for the prices of all that is open on it. */
type LaterParts = Pick<
  LedgerEntry,
  'lines' | 'openLow' | 'openHigh' | 'sharedLow' | 'sharedHigh' | 'openPriced' | 'figures'
>;

type Line = LedgerEntry['lines'][number];

function coveredOf(house: HousePrice, { selection }: Item, { covers }: SizedAllowance['allowance']): Cents {
  return costOf(house.today.costs.get(selection) ?? noCost, covers);
}

/** `paid`: the invoices that say what the place draws, once their last is in. */
function decidedLine(
  house: HousePrice,
  item: Item,
  allowance: SizedAllowance['allowance'],
  paid: OrderInvoices | undefined,
): Line {
  const { selection, chosen } = item;
  const { covers } = allowance;
  const covered = coveredOf(house, item, allowance);
  const option = chosen === undefined ? {} : { option: chosen };
  const line = { selection, ...option, covered, low: covered, high: covered, open: false };
  if (chosen === undefined) return { ...line, why: 'nothing is wanted here' };
  const cost = house.today.costs.get(selection) ?? noCost;
  if (!paid) return { ...line, why: partsText(cost, covers) };
  const computed = costOf(computedCost(house.today, item) ?? cost, covers);
  return { ...line, computed, why: invoicedText(covered, computed, paid) };
}

function openLine(house: HousePrice, item: Item, { id }: SizedAllowance['allowance']): Line {
  const draws = item.considered
    .map((option) => ({ option, drawn: house.choices.drawnAlone(item, option, id) }))
    .sort((a, b) => a.drawn - b.drawn);
  const [low, high] = [draws[0], draws.at(-1)];
  const name = (draw: typeof low) => (draw ? (house.book.options.get(draw.option)?.name ?? draw.option) : '');
  return {
    selection: item.selection,
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
