import { makerText } from '../core/fact/index.js';
import type { LookUp } from '../core/book/index.js';
import type { Order } from '../core/price/index.js';
import type { SupplyOrder } from '../core/takeoff/index.js';
import { standingOf } from './facts.js';

/** One product that the house buys, without what it costs. */
export interface OrderLine extends Omit<Order, 'rate' | 'cost' | 'shares'> {
  readonly category: string;
  readonly name: string;
  readonly product: string;
  /** Absent: not told yet. */
  readonly leadDays?: number;
  /** No choice that uses it is made: it is counted as the standard. */
  readonly isStandard: boolean;
  /** Where its orders stand: what happened to them last. */
  readonly standing: string;
  /** Slugs of the rooms that it goes to, in the Book's order. */
  readonly rooms: readonly string[];
}

export type PricedLine = OrderLine & Pick<Order, 'cost'>;

/** What is used up with the finishes. In a room its packs are left out: they are opened for the house. */
export interface SupplyLine extends Omit<SupplyOrder, 'shares'> {
  readonly rooms: readonly string[];
}

/** What the whole house buys, in order of trade. */
export function orderLines(look: LookUp): readonly PricedLine[] {
  return byTrade(
    look,
    look.book.orders.flatMap(({ shares, rate: _, ...order }) => {
      const [category = '', slug] = order.option.split('/');
      const option = look.option(category, slug);
      if (!option) return [];
      const { name, leadDays } = option;
      const product = makerText(option);
      const isStandard = shares.every(({ selection }) => look.selection(selection)?.state === 'open');
      const standing = standingOf(shares.flatMap((share) => look.selection(share.selection) ?? []));
      return [
        {
          ...order,
          category,
          name,
          product,
          ...(leadDays !== undefined && { leadDays }),
          isStandard,
          standing,
          rooms: roomsOf(look, shares),
        },
      ];
    }),
  );
}

/** An order as a trade may read it: what it costs is left behind. */
export const withoutCost = ({ cost: _, ...line }: PricedLine): OrderLine => line;

export function supplyLines(look: LookUp): readonly SupplyLine[] {
  return byTrade(
    look,
    look.book.supplies.map(({ shares, ...supply }) => ({ ...supply, rooms: roomsOf(look, shares) })),
  );
}

function byTrade<Row extends { readonly trade: string }>({ book }: LookUp, rows: readonly Row[]): readonly Row[] {
  return book.trades.flatMap(({ slug }) => rows.filter(({ trade }) => trade === slug));
}

function roomsOf(look: LookUp, shares: readonly { readonly selection: string }[]): readonly string[] {
  const slugs = new Set(shares.flatMap(({ selection }) => look.selection(selection)?.room ?? []));
  return [...slugs].toSorted((a, b) => look.orderOf(a) - look.orderOf(b));
}
