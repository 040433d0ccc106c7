import { measureParts, partsInTheFirst } from '../model/index.js';
import { problemAt, type Problem } from '../../base/problem/index.js';
import { unitName, type Unit } from '../../base/units/index.js';
import type { Checked } from './checked-record.js';
import type { RawCategory } from './raw/category.js';
import type { RawOption } from './raw/option.js';

/** How the options of a category are priced. */
export interface Pricing {
  readonly category: string;
  /** Its way of measuring. */
  readonly by: string;
  /** The unit of each part: of `main` alone where it has one price. */
  readonly asked: Readonly<Record<string, Unit>>;
  readonly hasOnePrice: boolean;
}

/** Undefined where the category's way of measuring is not known. */
export function pricingOf(category: string, record: Checked<RawCategory> | undefined): Pricing | undefined {
  if (!record?.sound(['measure'])) return undefined;
  const { by } = record.raw.measure;
  const asked: Readonly<Record<string, Unit>> = by in measureParts ? measureParts[by as keyof typeof measureParts] : {};
  const names = Object.keys(asked);
  return { category, by, asked, hasOnePrice: names.length === 1 && names[0] === 'main' };
}

interface PriceForm {
  readonly problems: readonly Problem[];
  /** What is to be written otherwise as a whole, so that nothing else need be said of it. */
  readonly instead?: 'price' | 'parts';
}

/** An option has a price, or the parts that replace it, as its category is measured; only where that is not known, either. */
export function priceForm({ raw, origin, meant }: Checked<RawOption>, pricing: Pricing | undefined): PriceForm {
  const [hasPrice, hasParts] = [raw.price !== undefined, raw.parts !== undefined];
  if (!hasPrice && !hasParts) {
    if (meant('price') || meant('parts')) return { problems: [] };
    const fix = pricing
      ? `write ${wantedWords(pricing)}`
      : 'write price: { material: …, labor: … }, or parts when it is bought in parts';
    return { problems: [problemAt(origin, [], 'price-missing', 'the option has no price', { fix, onKey: true })] };
  }
  if (!pricing) {
    if (!hasPrice || !hasParts) return { problems: hasParts ? besideParts(raw, origin) : [] };
    const fix = 'keep one: price for a finish bought as one thing, parts for one bought in parts';
    return { problems: [twice(origin, 'parts', fix)], instead: 'parts' };
  }
  const wrong = pricing.hasOnePrice ? 'parts' : 'price';
  const measured = `${pricing.category} is measured by ${pricing.by} and ${pricing.hasOnePrice ? 'has one price' : 'priced in parts'}`;
  if (hasPrice && hasParts)
    return { problems: [twice(origin, wrong, `leave ${wrong} out: ${measured}`)], instead: wrong };
  if (raw[wrong] === undefined) return { problems: hasParts ? besideParts(raw, origin) : [] };
  const fix = `replace ${wrong}: with ${wantedWords(pricing)}`;
  return { problems: [problemAt(origin, [wrong], 'parts-unsuited', measured, { fix, onKey: true })], instead: wrong };
}

function twice(origin: Checked<RawOption>['origin'], key: 'price' | 'parts', fix: string): Problem {
  return problemAt(origin, [key], 'price-twice', 'the option has a price and parts', { fix, onKey: true });
}

function besideParts(raw: RawOption, origin: Checked<RawOption>['origin']): readonly Problem[] {
  return (['pack', 'waste'] as const)
    .filter((key) => raw[key] !== undefined)
    .map((key) => {
      const fix = `write a ${key} in each part`;
      return problemAt(origin, [key], 'price-twice', `'${key}' stands beside parts`, { fix, onKey: true });
    });
}

/** `price: { material: … / sq ft, labor: … / sq ft }`, or the parts with theirs. */
function wantedWords({ asked, hasOnePrice }: Pricing): string {
  const priced = (unit: Unit): string => `{ material: … / ${unitName(unit)}, labor: … / ${unitName(unit)} }`;
  const { main } = asked;
  if (hasOnePrice && main) return `price: ${priced(main)}`;
  const parts = Object.entries(asked).filter(([name]) => !partsInTheFirst.includes(name));
  return `parts: { ${parts.map(([name, unit]) => `${name}: ${priced(unit)}`).join(', ')} }`;
}
