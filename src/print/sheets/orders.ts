import type { Order } from '../../price/index.js';
import { plural, printAmount, printLength } from '../../units/index.js';
import { amountFigure } from './figure.js';
import type { Figure } from './figure.js';
import type { LookUp } from '../../book/index.js';
import { leadText, productText, unitText } from './selection-row.js';

/** What one trade orders. Holds no money, so that its page may be handed on. */
export interface TradeOrders {
  readonly trade: string;
  readonly lines: readonly OrderLine[];
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
  readonly lead: string;
  readonly supply: string;
}

export function makeOrders(look: LookUp): readonly TradeOrders[] {
  return look.book.trades.flatMap(({ slug, name }) => {
    const lines = look.book.orders.filter(({ trade }) => trade === slug).map((order) => orderLine(order, look));
    return lines.length === 0 ? [] : [{ trade: name, lines }];
  });
}

function orderLine(order: Order, look: LookUp): OrderLine {
  const [category = '', slug = ''] = order.option.split('/');
  const option = look.option(category, slug);
  return {
    name: option?.name ?? order.option,
    product: option ? productText(option) : '',
    rooms: roomNumbers(order, look),
    unit: unitText(order),
    net: amountFigure(order.net),
    required: amountFigure(order.required),
    order: orderText(order),
    stock: order.stock.map(({ length, count }) => `${count} at ${printLength(length)}`).join(', '),
    lead: option ? leadText(option.leadDays) : '',
    supply: order.supply === 'owner-furnished' ? 'owner furnishes' : '',
  };
}

function orderText({ pack, packs, ordered, unit }: Order): string {
  const amount = printAmount(ordered, 1);
  if (!pack) return `${amount} ${unit}`;
  return `${packs} ${packs === 1 ? pack.name : plural(pack.name)} of ${printAmount(pack.holds, 2)} ${unit}`;
}

function roomNumbers(order: Order, look: LookUp): string {
  const rooms = new Set(order.shares.flatMap(({ selection }) => look.selection(selection)?.room ?? []));
  return look.book.rooms
    .filter(({ slug }) => rooms.has(slug))
    .map(({ number }) => number)
    .join(', ');
}
