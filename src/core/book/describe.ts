import { attributeFor, carries } from '../fact/index.js';
import type { Attribute, Category, ChangeOrder, House, Issue, Option, SharedFact, Trade } from '../model/index.js';
import type { BookCategory, BookChangeOrder, BookHouse, BookIssue, BookOption, BookTrade } from './book.js';
import type { Cents } from '../../base/units/index.js';
import { optionId } from './draft.js';

export function describeHouse({
  name,
  number,
  place,
  site,
  people,
  units,
  beside,
  currency,
  language,
  moneyWords,
  namesToTrades,
  climateZone,
  code,
  studs,
  north,
  picture,
  body,
  origin,
}: House): BookHouse {
  return {
    name,
    number,
    place,
    ...(site !== undefined && { site }),
    people,
    units,
    beside,
    currency,
    ...(language !== undefined && { language }),
    ...(moneyWords && { moneyWords }),
    ...(namesToTrades === true && { namesToTrades }),
    ...(climateZone !== undefined && { climateZone }),
    ...(code && { code }),
    ...(studs && { studs }),
    ...(north !== undefined && { north }),
    ...(picture !== undefined && { picture }),
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

/** Change orders with the contract sum and time before and after each: with what was approved before it was, whatever their numbers. */
export function describeChangeOrders(contractSum: Cents, orders: readonly ChangeOrder[]): BookChangeOrder[] {
  const approved = orders.filter(({ state }) => state === 'approved');
  return orders.map(({ origin, ...order }) => {
    const earlier = approved.filter((one) => isBefore(one, order));
    const [sum, days] = [total(earlier, ({ amount }) => amount), total(earlier, (one) => one.days)];
    return {
      ...order,
      source: origin.file,
      contractFirst: contractSum,
      contractBefore: (contractSum + sum) as Cents,
      contractAfter: (contractSum + sum + order.amount) as Cents,
      daysBefore: days,
    };
  });
}

/** One that is not decided comes after all that are. */
function isBefore(one: ChangeOrder, { decidedOn, number }: Pick<ChangeOrder, 'decidedOn' | 'number'>): boolean {
  if (one.number === number) return false;
  if (decidedOn === undefined) return true;
  const day = one.decidedOn ?? '';
  return day < decidedOn || (day === decidedOn && one.number < number);
}

function total(orders: readonly ChangeOrder[], of: (order: ChangeOrder) => number): number {
  return orders.reduce((sum, order) => sum + of(order), 0);
}

/** An option with its attributes in the order and with the labels that its category gives. */
export function describeOption(option: Option, categories: readonly Category[], paints: PaintNames): BookOption {
  const { origin, attributes, shared, ...rest } = option;
  const rules = categories.find((category) => category.slug === option.category)?.attributes ?? [];
  const labelled = rules.flatMap(({ name, label }) => {
    const attribute = attributes[name];
    return attribute ? [{ name, label, attribute: named(name, attribute, paints) }] : [];
  });
  return {
    ...rest,
    id: optionId(option.category, option.slug),
    attributes: labelled,
    source: origin.file,
    ...(shared && { shared: shared.map(describeShared) }),
  };
}

/** Names of the options that something can be coated with, by their slugs. */
export type PaintNames = ReadonlyMap<string, string>;

export function paintNames(options: readonly Option[], categories: readonly Category[]): PaintNames {
  const paints = new Set(categories.filter((one) => carries(one, 'paint', 'sheen')).map(({ slug }) => slug));
  return new Map(options.filter(({ category }) => paints.has(category)).map(({ slug, name }) => [slug, name]));
}

/** What names a paint by its slug is read by its name. */
function named(name: string, attribute: Attribute, paints: PaintNames): Attribute {
  const isCoating = coatings.has(name) && attribute.value.kind === 'text';
  return isCoating ? { ...attribute, text: paints.get(attribute.text) ?? attribute.text } : attribute;
}

const coatings: ReadonlySet<string> = new Set([
  attributeFor('coated', 'coating').name,
  attributeFor('coated', 'riser-coating').name,
]);

function describeShared({ key, family, path, origin }: SharedFact): NonNullable<BookOption['shared']>[number] {
  return { key, ...(family !== undefined && { family }), source: origin.file, line: origin.key(path).line };
}
