import type { Allowance, CostPart, Invoice } from '../model/index.js';
import type { Cents } from '../../base/units/index.js';
import { makeCost, type Cost } from './cost.js';
import type { InvoicedOrder, Item, SizedAllowance } from './item.js';
import { shareOut } from './rounding.js';

/** Invoices of one order on an allowance, in the order they came. */
export interface OrderInvoices {
  readonly option: string;
  readonly invoices: readonly Invoice[];
  readonly sum: Cents;
  /** Is the last one in? */
  readonly complete: boolean;
}

/** Invoices of an allowance by what was ordered. */
export function invoicesByOrder({ invoices = [] }: Allowance): OrderInvoices[] {
  return [...new Set(invoices.map(({ option }) => option))].map((option) => {
    const own = invoices.filter((invoice) => invoice.option === option);
    const sum = own.reduce((total, { amount }) => total + amount, 0) as Cents;
    return { option, invoices: own, sum, complete: own.some(({ last }) => last) };
  });
}

/** Orders whose last invoice is in, by option. */
export function invoicedOrders(allowances: readonly SizedAllowance[]): ReadonlyMap<string, readonly InvoicedOrder[]> {
  const byOption = new Map<string, InvoicedOrder[]>();
  for (const { allowance } of allowances) {
    for (const { option, sum, complete } of invoicesByOrder(allowance)) {
      if (!complete) continue;
      const order = { allowance: allowance.id, covers: allowance.covers, invoiced: sum };
      byOption.set(option, [...(byOption.get(option) ?? []), order]);
    }
  }
  return byOption;
}

/** Does an invoice on an allowance pay for a place? It was ordered there, by the contractor, of this option. */
export function isInvoiced(item: Item, option: string, allowance: string): boolean {
  const { ordered, chosen, supply, allowance: drawnOn } = item;
  return ordered === true && chosen === option && supply === 'contractor' && drawnOn === allowance;
}

interface Shared {
  readonly cost: Cost;
  readonly shares: readonly Cost[];
}

/** The parts of a product as invoiced: what was computed for the ordered places in what the allowance covers gives way to the
 *  invoiced sum, which is shared out by it to the cent (largest remainder). All else stays as computed. */
export function asInvoiced<P extends Shared>(
  parts: readonly P[],
  option: string,
  items: readonly Item[],
  orders: readonly InvoicedOrder[],
): P[] {
  return orders.reduce((priced, order) => applyInvoice(priced, option, items, order), [...parts]);
}

interface Cell {
  readonly part: number;
  readonly place: number;
  readonly of: CostPart;
}

function applyInvoice<P extends Shared>(
  parts: readonly P[],
  option: string,
  items: readonly Item[],
  { allowance, covers, invoiced }: InvoicedOrder,
): P[] {
  const places = items.flatMap((item, place) => (isInvoiced(item, option, allowance) ? [place] : []));
  const cells = parts.flatMap((_, part) =>
    places.flatMap((place): Cell[] => covers.map((of) => ({ part, place, of }))),
  );
  if (cells.length === 0) return [...parts];
  const computed = cells.map(({ part, place, of }) => parts[part]?.shares[place]?.[of] ?? 0);
  const paid = shareOut(invoiced, computed);
  const moved = cells.map((cell, index) => ({ ...cell, by: (paid[index] ?? 0) - (computed[index] ?? 0) }));
  return parts.map((priced, part) => {
    const own = moved.filter((cell) => cell.part === part);
    const ofPlace = (at: number) => own.filter(({ place }) => place === at);
    return {
      ...priced,
      cost: addTo(priced.cost, own),
      shares: priced.shares.map((share, place) => addTo(share, ofPlace(place))),
    };
  });
}

function addTo(cost: Cost, moved: readonly { readonly of: CostPart; readonly by: number }[]): Cost {
  const sum: Record<CostPart, number> = { ...cost };
  for (const { of, by } of moved) sum[of] += by;
  return makeCost(sum);
}
