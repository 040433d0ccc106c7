import {
  measureParts,
  partsInTheFirst,
  type AttributeRule,
  type Category,
  type Source,
} from '../../core/model/index.js';
import {
  parseLength,
  parseRate,
  partsOfRate,
  read,
  unitName,
  unread,
  withSign,
  type Reading,
  type Unit,
} from '../../base/units/index.js';
import { recordText } from './text.js';

/** What a person says of an option: each price as written, by part. */
export interface OptionAnswers {
  readonly slug: string;
  readonly name: string;
  /** By part; `main` alone for what is bought as one thing. */
  readonly prices: Readonly<Record<string, { readonly material: string; readonly labor?: string }>>;
  readonly lead?: string;
  readonly attributes: Readonly<Record<string, unknown>>;
  /** Other keys, by their names. */
  readonly keys?: Readonly<Record<string, unknown>>;
}

/** Parts that an option of a category is priced in, each with its unit. */
export function pricedParts({ measure }: Pick<Category, 'measure'>): readonly (readonly [part: string, unit: Unit])[] {
  const all: Readonly<Record<string, Readonly<Record<string, Unit>>>> = measureParts;
  const parts = all[measure.by] ?? {};
  return Object.entries(parts).filter(([part]) => !partsInTheFirst.includes(part));
}

/** Reads a price for a unit: `$6.50 / sq ft`, `6.50 sf`, or `6.50` alone for the unit that the category is measured in. */
export function readPrice(text: string, unit: Unit): Reading<string> {
  const { money, unit: per } = partsOfRate(text);
  const example = `${withSign('6.50')} / ${unitName(unit)}`;
  if (money === '') return unread(text.trim() === '' ? 'it is empty' : `'${text}' is not a price`, `write ${example}`);
  const amount = money.trim();
  const signed = /^[\d.,' ]+$/u.test(amount) ? withSign(amount) : amount;
  const written = `${signed} / ${per === '' ? unitName(unit) : per}`;
  const rate = parseRate(written);
  if (!rate.ok) return rate;
  if (rate.value.unit === unit) return read(written);
  return unread(
    `it is priced for ${unitName(unit)}, not for ${unitName(rate.value.unit)}`,
    `write ${signed} / ${unitName(unit)}`,
  );
}

/** Reads what a category asks of its options, as it stands in a record. */
export function readAttribute(text: string, { kind, choices }: AttributeRule): Reading<unknown> {
  const written = text.trim();
  if (written === '') return unread('it is empty', 'write what it is');
  switch (kind) {
    case 'text':
      return !choices || choices.includes(written)
        ? read(written)
        : unread(`'${written}' is not one of ${choices.join(', ')}`);
    case 'number':
      return /^-?\d+(?:\.\d+)?$/u.test(written)
        ? read(Number(written))
        : unread(`'${written}' is no number`, 'write digits');
    case 'length':
      return lengthOf(written);
    case 'lengths': {
      const lengths = written.split(/[,;]\s*/u).map(lengthOf);
      return lengths.find(({ ok }) => !ok) ?? read(lengths.flatMap((one) => (one.ok ? [one.value] : [])));
    }
    case 'yes-no':
      if (/^(?:y|yes|true)$/iu.test(written)) return read(true);
      return /^(?:n|no|false)$/iu.test(written) ? read(false) : unread(`'${written}' is neither`, 'write yes or no');
  }
}

function lengthOf(text: string): Reading<string> {
  const length = parseLength(text);
  if (!length.ok) return length;
  return length.value >= 0 ? read(text) : unread(`'${text}' is less than nothing`, 'write a length');
}

/** The record of an option: what was said. What is missing beside, its outputs ask for when they need it. */
export function draftOption(category: string, { slug, name, prices, lead, attributes, keys }: OptionAnswers): Source {
  const { main, ...parts } = prices;
  const values = {
    name,
    ...keys,
    ...(main ? { price: main } : { parts }),
    ...(lead !== undefined && { lead }),
    ...(Object.keys(attributes).length > 0 && { attributes }),
  };
  return { path: `content/options/${category}/${slug}.md`, text: recordText(values) };
}
