import type { AttributeRule, Category, Option, PriceList } from '../../core/model/index.js';
import {
  decimalNumber,
  parseDays,
  parseLength,
  parseQuantity,
  parseRate,
  printDays,
  printQuantity,
  printRate,
  unitName,
  type IsoDate,
  type Rate,
} from '../../base/units/index.js';
import { headOf } from './heads.js';
import type { ListProblem } from './list-problem.js';
import type { Product, Products } from './product.js';

/** What differs between an option's record and the list. */
export interface Difference {
  /** `price`, `pack`, `lead time`, or the label of an attribute. */
  readonly what: string;
  readonly from: string;
  readonly to: string;
}

export interface ChangedOption {
  readonly option: Option;
  readonly product: Product;
  readonly price?: { readonly from: Rate; readonly to: Rate };
  readonly pack: boolean;
  readonly lead: boolean;
  /** Names of attributes. */
  readonly attributes: readonly string[];
  /** All of it, to be read. */
  readonly differences: readonly Difference[];
}

/** A list held against the options of its category. */
export interface ListDifference {
  readonly added: readonly Product[];
  readonly changed: readonly ChangedOption[];
  /** Options that the list has as their records have them: what the day of the price is may be new. */
  readonly confirmed: readonly ChangedOption[];
  /** Options that an earlier list of the supplier quoted and this one has no more. */
  readonly gone: readonly Option[];
  /** Options with parts, which no list of one price a product tells. */
  readonly inParts: readonly Option[];
  /** Options that somebody ordered: their records keep the price of the order. */
  readonly ordered: readonly ChangedOption[];
  /** Withdrawn, and in the list. */
  readonly back: readonly Option[];
  readonly problems: readonly ListProblem[];
}

interface Against {
  readonly list: PriceList;
  readonly category: Category;
  /** `content`, or the shared folder that the list prices. */
  readonly root: string;
  /** Those of the category. */
  readonly options: readonly Option[];
  /** Slugs of options whose records stand for an order. */
  readonly ordered: ReadonlySet<string>;
  /** Day of the list. */
  readonly on: IsoDate;
}

export function differ({ products, leftOut }: Products, against: Against): ListDifference {
  const { options, ordered, list, root } = against;
  const found = products.map((product) => ({ product, ...optionOf(product, against) }));
  const matched = found.flatMap(({ product, option }) => (option ? [{ product, option }] : []));
  const seen = new Set(matched.map(({ option }) => option.slug));
  const isLeftOut = ({ model, name }: Option): boolean =>
    (model !== undefined && leftOut.has(headOf(model))) || leftOut.has(headOf(name));
  const whole = matched.filter(({ option }) => isWhole(option));
  const compared = whole.map(({ product, option }) => compareOption(option, product, against));
  const isChanged = ({ differences }: ChangedOption): boolean => differences.length > 0;
  const isOrdered = ({ option, price }: ChangedOption): boolean => price !== undefined && ordered.has(option.slug);
  return {
    added: found.flatMap(({ product, option, problem }) => (option || problem ? [] : [product])),
    changed: compared.filter((one) => isChanged(one) && !isOrdered(one)),
    confirmed: compared.filter((one) => !isChanged(one)),
    ordered: compared.filter(isOrdered),
    gone: options.filter(
      (option) =>
        isOf(option, root) &&
        option.quoted?.by === list.name &&
        !option.withdrawn &&
        !seen.has(option.slug) &&
        !isLeftOut(option),
    ),
    inParts: matched.filter(({ option }) => !isWhole(option)).map(({ option }) => option),
    back: matched.filter(({ option }) => option.withdrawn).map(({ option }) => option),
    problems: [
      ...found.flatMap(({ problem }) => problem ?? []),
      ...whole.flatMap(({ product, option }) => againstProblems(product, option, against)),
    ],
  };
}

function isOf({ origin }: Option, root: string): boolean {
  return origin.file.startsWith(`${root}/`);
}

function isWhole({ parts }: Option): boolean {
  return parts.length === 1 && parts[0]?.part === 'main';
}

/** The option that a product is: by its number, which is the option's model, else by the file name that it would have. */
function optionOf(
  { row, number, slug, name }: Product,
  { options }: Against,
): { readonly option?: Option; readonly problem?: ListProblem } {
  const byNumber =
    number === undefined ? [] : options.filter(({ model }) => model !== undefined && headOf(model) === headOf(number));
  const refuse = (what: string, fix: string): { readonly problem: ListProblem } => ({
    problem: { row, what, fix, severity: 'error' },
  });
  if (byNumber.length > 1)
    return refuse(
      `${byNumber.map(({ origin }) => origin.file).join(' and ')} both have the model ${number ?? ''}`,
      'give one of them its own, or name the row under leave-out',
    );
  const [own] = byNumber;
  if (own) return { option: own };
  const named = options.find((option) => option.slug === slug);
  if (!named) {
    const alike = number === undefined ? options.find((option) => headOf(option.name) === headOf(name)) : undefined;
    return alike ? { option: alike } : {};
  }
  if (number === undefined || named.model === undefined || headOf(named.model) === headOf(named.name))
    return { option: named };
  return refuse(
    `${named.origin.file} is the model ${named.model}, and the list has ${number} by that name`,
    `if it is the same product, write model: ${number} there; else rename one of the two`,
  );
}

function compareOption(option: Option, product: Product, { category }: Against): ChangedOption {
  const [part] = option.parts;
  const to = rateOf(product.material);
  const from: Rate | undefined = part && { rate: part.material, unit: part.unit };
  const price = from && !sameRate(from, to) ? { from, to } : undefined;
  const holds = product.pack && parseQuantity(product.pack.holds);
  const pack = holds?.ok === true && part !== undefined && !nearly(part.pack?.holds, holds.value.amount);
  const days = product.lead === undefined ? undefined : parseDays(product.lead);
  const lead = days?.ok === true && days.value !== option.leadDays;
  const attributes = category.attributes.filter((rule) => differs(option, product.attributes[rule.name], rule));
  return {
    option,
    product,
    ...(price && { price }),
    pack,
    lead,
    attributes: attributes.map(({ name }) => name),
    differences: [
      ...(price ? [{ what: 'price', from: printRate(price.from), to: `${printRate(price.to)}${percent(price)}` }] : []),
      ...(pack && holds?.ok
        ? [{ what: 'pack', from: packText(part.pack?.holds, part.unit), to: packText(holds.value.amount, part.unit) }]
        : []),
      ...(lead && days?.ok
        ? [
            {
              what: 'lead time',
              from: option.leadDays === undefined ? 'not recorded' : printDays(option.leadDays),
              to: printDays(days.value),
            },
          ]
        : []),
      ...attributes.map(({ name, label }) => ({
        what: label,
        from: option.attributes[name]?.text ?? 'not recorded',
        to: attributeText(product.attributes[name]),
      })),
    ],
  };
}

function attributeText(value: string | number | boolean | undefined): string {
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value ?? '');
}

function packText(holds: number | undefined, unit: Rate['unit']): string {
  return holds === undefined ? 'none' : printQuantity(holds, unit, 2);
}

/** `, +12.0 %`. */
function percent({ from, to }: { readonly from: Rate; readonly to: Rate }): string {
  const [was, is] = [decimalNumber(from.rate), decimalNumber(to.rate)];
  if (was === 0) return '';
  const change = Math.round((is / was - 1) * 1000) / 10;
  return `, ${change < 0 ? '−' : '+'}${Math.abs(change).toFixed(1)} %`;
}

/** A rate that this program wrote. */
function rateOf(text: string): Rate {
  const rate = parseRate(text);
  if (!rate.ok) throw new Error(`a price that was drafted cannot be read: ${rate.why}`);
  return rate.value;
}

function sameRate(a: Rate, b: Rate): boolean {
  const scale = Math.max(a.rate.scale, b.rate.scale);
  const at = ({ rate }: Rate): bigint => BigInt(rate.amount) * 10n ** BigInt(scale - rate.scale);
  return a.unit === b.unit && at(a) === at(b);
}

/** Quantities of the metric system are floats here. */
function nearly(a: number | undefined, b: number): boolean {
  return a !== undefined && Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b));
}

function differs(
  { attributes }: Option,
  value: string | number | boolean | undefined,
  { name, kind }: AttributeRule,
): boolean {
  if (value === undefined) return false;
  const text = attributes[name]?.text;
  if (text === undefined) return true;
  if (kind === 'number') return Number(text) !== value;
  if (kind !== 'length') return text !== attributeText(value);
  const [was, is] = [parseLength(text), parseLength(String(value))];
  return !was.ok || !is.ok || was.value !== is.value;
}

/** What cannot be written into a record as it is: another kind of unit, an older day. */
function againstProblems({ row, material }: Product, option: Option, { on, root }: Against): readonly ListProblem[] {
  const { parts, quoted, origin } = option;
  if (!isOf(option, root)) {
    const what = `it is ${origin.file}, which is not in ${root}/`;
    const fix =
      root === 'content'
        ? 'price the shared folder itself, with --into; or name the row under leave-out'
        : 'the house has a record of its own: take the list in without --into, or name the row under leave-out';
    return [{ row, what, fix, severity: 'error' }];
  }
  const unit = parts[0]?.unit;
  const { unit: own } = rateOf(material);
  const problems: ListProblem[] = [];
  if (unit !== undefined && unit !== own) {
    const what = `its price is for ${unitName(own)}, that of ${origin.file} for ${unitName(unit)}`;
    const fix = 'convert the price in the list, or write price, labor and pack of the option for that unit first';
    problems.push({ row, what, fix, severity: 'error' });
  }
  if (quoted && quoted.on > on) {
    const what = `${origin.file} has a price of ${quoted.on}, which is later than the list's day ${on}`;
    problems.push({ row, what, fix: 'name the list’s day with --dated, or take the newer list', severity: 'error' });
  }
  return problems;
}
