import type { Category, ChangeOrder, House, Issue, Option, Trade } from '../model/index.js';
import type { BookCategory, BookChangeOrder, BookHouse, BookIssue, BookOption, BookTrade } from './book.js';
import type { Cents } from '../../base/units/index.js';
import { optionId } from './draft.js';

export function describeHouse({
  name,
  number,
  place,
  site,
  people,
  metric,
  currency,
  climateZone,
  studs,
  body,
  origin,
}: House): BookHouse {
  return {
    name,
    number,
    place,
    ...(site !== undefined && { site }),
    people,
    metric,
    currency,
    climateZone,
    ...(studs && { studs }),
    body,
    source: origin.file,
  };
}

export function describeTrade({ origin, ...trade }: Trade): BookTrade {
  return { ...trade, source: origin.file };
}

export function describeCategory({ origin, ...category }: Category): BookCategory {
  return { ...category, source: origin.file };
}

export function describeIssue({ origin, ...issue }: Issue): BookIssue {
  return { ...issue, source: origin.file };
}

/** Change orders with the contract sum before and after each. */
export function describeChangeOrders(contractSum: Cents, orders: readonly ChangeOrder[]): BookChangeOrder[] {
  let running: number = contractSum;
  return orders.map(({ origin, ...order }) => {
    const [before, after] = [running, running + order.amount] as [Cents, Cents];
    if (order.state === 'approved') running = after;
    return { ...order, source: origin.file, contractBefore: before, contractAfter: after };
  });
}

/** An option with its attributes in the order and with the labels that its category gives. */
export function describeOption(option: Option, categories: readonly Category[]): BookOption {
  const { origin, attributes, ...rest } = option;
  const rules = categories.find((category) => category.slug === option.category)?.attributes ?? [];
  const labelled = rules.flatMap(({ name, label }) => {
    const attribute = attributes[name];
    return attribute ? [{ name, label, attribute }] : [];
  });
  return { ...rest, id: optionId(option.category, option.slug), attributes: labelled, source: origin.file };
}
