import type { Category, ChangeOrder, House, Issue, Option, Trade } from '../model/index.js';
import type { BookCategory, BookChangeOrder, BookHouse, BookIssue, BookOption, BookTrade } from './book.js';
import { optionId } from './draft.js';

export function describeHouse({
  name,
  number,
  place,
  people,
  metric,
  currency,
  climateZone,
  body,
  origin,
}: House): BookHouse {
  return { name, number, place, people, metric, currency, climateZone, body, source: origin.file };
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

export function describeChangeOrder({ origin, ...changeOrder }: ChangeOrder): BookChangeOrder {
  return { ...changeOrder, source: origin.file };
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
