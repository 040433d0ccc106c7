import { roomNumbers, roomWords } from '../../export/index.js';
import type { Order } from '../../price/index.js';
import { countsWords } from '../../takeoff/index.js';
import type { SupplyOrder } from '../../takeoff/index.js';
import { plural, printAmount, printLength } from '../../units/index.js';
import { amountFigure } from './figure.js';
import type { Figure } from './figure.js';
import type { LookUp } from '../../book/index.js';
import { leadText, productText, unitText } from './selection-row.js';

/** What one trade orders. Holds no money, so that its page may be handed on. */
export interface TradeOrders {
  readonly trade: string;
  readonly lines: readonly OrderLine[];
  readonly supplies: readonly SupplyLine[];
}

/** Something used up with the trade's finishes. */
export interface SupplyLine {
  readonly what: string;
  readonly rooms: string;
  readonly unit: string;
  readonly net: Figure;
  readonly required: Figure;
  readonly order: string;
  readonly source: string;
}

export interface OrderLine {
  readonly name: string;
  readonly product: string;
  readonly rooms: string;
  readonly unit: string;
  readonly net: Figure;
  readonly required: Figure;
  /** `18 bundles of 24 sq ft`. */
  readonly order: string;
  readonly stock: string;
  /** As the trade counts it: gallons, lineal feet, sheets. */
  readonly counted: string;
  readonly lead: string;
  readonly supply: string;
}

export function makeOrders(look: LookUp): readonly TradeOrders[] {
  return look.book.trades.flatMap(({ slug, name }) => {
    const lines = look.book.orders.filter(({ trade }) => trade === slug).map((order) => orderLine(order, look));
    const supplies = look.book.supplies.filter(({ trade }) => trade === slug).map((supply) => supplyLine(supply, look));
    return lines.length + supplies.length === 0 ? [] : [{ trade: name, lines, supplies }];
  });
}

function supplyLine(
  { what, unit, net, required, pack, packs, shares, sources }: SupplyOrder,
  look: LookUp,
): SupplyLine {
  return {
    what,
    rooms: roomWords(roomNumbers(look.book, shares)),
    unit,
    net: amountFigure(net),
    required: amountFigure(required),
    order: pack && packs !== undefined ? packText(packs, pack, unit) : '',
    source: sources.join('; '),
  };
}

function orderLine(order: Order, look: LookUp): OrderLine {
  const [category = '', slug = ''] = order.option.split('/');
  const option = look.option(category, slug);
  return {
    name: option?.name ?? order.option,
    product: option ? productText(option) : '',
    rooms: roomNumbers(look.book, order.shares),
    unit: unitText(order),
    net: amountFigure(order.net),
    required: amountFigure(order.required),
    order: orderText(order),
    stock: order.stock.map(({ length, count }) => `${count} at ${printLength(length)}`).join(', '),
    counted: countsWords(order.counts ?? []),
    lead: option ? leadText(option.leadDays) : '',
    supply: order.supply === 'owner-furnished' ? 'owner furnishes' : '',
  };
}

function orderText({ pack, packs, ordered, unit }: Order): string {
  return pack ? packText(packs, pack, unit) : `${printAmount(ordered, 1)} ${unit}`;
}

function packText(packs: number, { name, holds }: { name: string; holds: number }, unit: string): string {
  return `${printAmount(packs, 0)} ${packs === 1 ? name : plural(name)} of ${printAmount(holds, 2)} ${unit}`;
}
