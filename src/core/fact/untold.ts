import type { AttributeRule, Category, Option } from '../model/index.js';
import { joinWords, lower, notToldYet } from '../../base/units/index.js';
import type { Product } from './product.js';
import { products } from './products/index.js';

/** Something that an option does not tell yet. */
export interface Untold {
  /** Where it is written in the option's record: `lead`, `specification.general`, `attributes.face`. */
  readonly key: string;
  /** What it is, in words: 'lead time'. */
  readonly what: string;
  /** Outputs that need it, in words: 'the calendar'. */
  readonly for: string;
}

type Asked = Pick<
  Option,
  'maker' | 'model' | 'summary' | 'parts' | 'leadDays' | 'swatch' | 'specification' | 'care' | 'weight'
>;

/** A category as it is asked here, of the records or of a draft of one. */
export interface AskingCategory {
  readonly by: Category['measure']['by'];
  readonly rules: readonly AttributeRule[];
}

/** Everything that an option does not tell and some output needs, in the order of its record; empty for one that is told in full. */
export function untoldOf(
  option: Asked & { readonly attributes: Readonly<Record<string, unknown>> },
  { by, rules }: AskingCategory,
): readonly Untold[] {
  const { maker, model, summary, parts, leadDays, swatch, specification, care, weight } = option;
  const lacks = (value: unknown, key: string, what: string, needs: string): readonly Untold[] =>
    value === undefined ? [{ key, what, for: needs }] : [];
  const part = (name: 'general' | 'products' | 'execution'): readonly Untold[] =>
    lacks(specification[name], `specification.${name}`, `specification, ${name}`, 'the specification and the handout');
  const told = Object.values(specification).length > 0;
  return [
    ...lacks(maker, 'maker', 'maker', 'the order list'),
    ...lacks(model, 'model', 'model', 'the order list'),
    ...lacks(summary, 'summary', 'summary', 'its card'),
    ...parts.flatMap(({ part: name, labor }) =>
      lacks(labor, laborKey(name), name === 'main' ? 'labor' : `labor of ${name}`, 'its price in place'),
    ),
    ...lacks(leadDays, 'lead', 'lead time', 'the calendar'),
    // Which stone may stick to its wall is a question of weight.
    ...(by === 'stone' ? lacks(weight, 'weight', 'weight', 'the cautions about what it weighs') : []),
    ...rules
      .filter(({ required, name }) => required && !Object.hasOwn(option.attributes, name))
      .map(({ name, label }) => ({
        key: `attributes.${name}`,
        what: lower(label),
        for: readersOf(name, { by, rules }),
      })),
    ...lacks(swatch, 'swatch', 'swatch', 'the drawn sample'),
    ...(told
      ? [...part('general'), ...part('products'), ...part('execution')]
      : [{ key: 'specification', what: 'specification', for: 'the specification and the handout' }]),
    ...lacks(care, 'care', 'care', 'the hand-over'),
  ];
}

function laborKey(part: string): string {
  return part === 'main' ? 'price.labor' : `parts.${part}.labor`;
}

/** Whether a price in place is without what installing it costs, as nobody has priced that yet. */
export function withoutLabor({ parts }: Pick<Option, 'parts'>): boolean {
  return parts.some(({ labor }) => labor === undefined);
}

/** `lead time (for the calendar), care (for the hand-over)`. Neighbours for one output stand together. */
export function untoldWords(untold: readonly Untold[]): string {
  const groups: { readonly for: string; readonly what: string[] }[] = [];
  for (const { what, for: needs } of untold) {
    const last = groups.at(-1);
    if (last?.for === needs) last.what.push(what);
    else groups.push({ for: needs, what: [what] });
  }
  return groups.map(({ what, for: needs }) => `${joinWords(what)} (for ${needs})`).join(', ');
}

/** Maker and model as far as they are told. */
export function makerText({ maker, model }: Pick<Option, 'maker' | 'model'>, parted = ' '): string {
  if (maker === undefined && model === undefined) return `maker ${notToldYet}`;
  return [maker, model].filter((each) => each !== undefined).join(parted);
}

/** Who reads an attribute of a category's options: `the door schedule and cautions`. Each product has its own readers of a name. */
function readersOf(name: string, { by, rules }: AskingCategory): string {
  const facts = Object.entries<Product>(products).flatMap(([product, { measuredBy, knownBy, facts: own }]) => {
    const fact = own[name];
    const isOf = measuredBy === by || rules.some((rule) => (known[product] ?? knownBy).includes(rule.name));
    return fact && isOf ? [fact] : [];
  });
  const readers = facts
    .flatMap(({ readers: own = [] }) => own)
    .map((reader) => `the ${reader.replace(/ (of|in) .*/u, '')}`);
  const cautions = facts.some(({ cautions: own = [] }) => own.length > 0);
  const all = [...new Set(readers), ...(cautions ? ['cautions'] : [])];
  return all.length === 0 ? 'its product data' : joinWords(all);
}

/** What has no facts of its own is known here by those that it is figured with. */
const known: Readonly<Record<string, readonly string[]>> = { coated: ['coating'], pieces: ['face', 'stock'] };
