import {
  specificationParts,
  type Attribute,
  type AttributeRule,
  type InsulationLayer,
  type Option,
  type Specification,
  type Swatch,
} from '../model/index.js';
import { hasErrors, type Problem } from '../../base/problem/index.js';
import { fromHouse, parseDays, parseLength, parsePercent, parseWeight, type Cents } from '../../base/units/index.js';
import type { Checked } from './checked-record.js';
import { unitOfFact } from '../fact/index.js';
import { passed, readDimension, readMoney } from './formats.js';
import type { RawCategory } from './raw/category.js';
import { quoteProblems } from './quote-problems.js';
import { placeShared, withShared } from './share-facts.js';
import { priceForm, pricingOf } from './price-form.js';
import { readParts, unitsProblems, type LocatedPart } from './read-parts.js';
import type { RawInsulationLayer, RawOption } from './raw/option.js';

/** An option's record, as far as it can be read. */
export interface OptionDraft {
  readonly slug: string;
  readonly category: string;
  readonly record: Checked<RawOption>;
  /** Parts whose prices can be read. */
  readonly parts: readonly LocatedPart[];
  readonly whole?: Option;
  readonly problems: readonly Problem[];
}

/** Reads an option; its category's rules are those by which its attributes were checked, absent when they are not known. */
export function readOption(
  record: Checked<RawOption>,
  category: string,
  from: { readonly rules?: readonly AttributeRule[]; readonly record?: Checked<RawCategory> } = {},
): OptionDraft {
  const { rules } = from;
  const pricing = pricingOf(category, from.record);
  const form = priceForm(record, pricing);
  const parts = readParts(record).filter(({ path }) => path[0] !== form.instead);
  const { quoted } = record.raw;
  const quotes = record.sound(['quoted']) ? quoteProblems(quoted, ['quoted'], record.origin) : [];
  const own = form.instead === undefined ? record.problems : record.without([form.instead]);
  const problems = [...own, ...form.problems, ...unitsProblems(record, parts, pricing), ...quotes];
  return {
    slug: record.slug,
    category,
    record,
    parts,
    problems,
    ...(rules && !hasErrors(problems) && { whole: wholeOption(record, category, parts, rules, from.record) }),
  };
}

function wholeOption(
  { slug, raw: own, body, origin }: Checked<RawOption>,
  category: string,
  parts: readonly LocatedPart[],
  rules: readonly AttributeRule[],
  from: Checked<RawCategory> | undefined,
): Option {
  const { raw, shared } = withShared(own, from);
  const { maker, model, name, summary, care, swatch, quoted, weight, thickness } = raw;
  return {
    slug,
    category,
    name,
    ...(raw.section !== undefined && { section: raw.section }),
    ...(maker !== undefined && { maker }),
    ...(model !== undefined && { model }),
    ...(summary !== undefined && { summary }),
    parts: parts.map(({ part }) => part),
    freight: raw.freight === undefined ? (0 as Cents) : passed(readMoney(raw.freight)),
    ...(quoted && quoted !== 'none' && { quoted }),
    ...(raw.lead !== undefined && { leadDays: passed(parseDays(raw.lead)) }),
    ...readTerms(raw),
    ...(weight !== undefined && { weight: passed(parseWeight(weight)) }),
    ...(thickness !== undefined && { thickness: passed(readDimension(thickness)) }),
    attributes: readAttributes(raw.attributes ?? {}, rules),
    ...(raw.layers && { layers: raw.layers.map(readLayer) }),
    needs: (raw.needs ?? []).map(({ id, what, by, before }) => ({ ...(id !== undefined && { id }), what, by, before })),
    ...(swatch && { swatch: readSwatch(swatch) }),
    ...(raw.photo && { photo: raw.photo }),
    specification: readSpecification(raw.specification ?? {}),
    ...(care !== undefined && { care }),
    ...(shared.length > 0 && { shared }),
    body,
    origin: shared.length > 0 ? { ...origin, elsewhere: placeShared(shared) } : origin,
  };
}

function readSwatch({ pattern, colors, repeat }: NonNullable<RawOption['swatch']>): Swatch {
  return {
    pattern,
    ...(Array.isArray(colors) ? { colors } : { colors: Object.values(colors), roles: colors }),
    ...(repeat !== undefined && { repeat: passed(readDimension(repeat)) }),
  };
}

function readSpecification(told: NonNullable<RawOption['specification']>): Specification {
  return Object.fromEntries(
    specificationParts.flatMap((part) => (told[part] === undefined ? [] : [[part, told[part]]])),
  );
}

function readLayer(raw: RawInsulationLayer): InsulationLayer {
  const { what, in: where } = raw;
  if ('r-per-inch' in raw)
    return {
      what,
      where,
      rPerInch: fromHouse(raw['r-per-inch'], 'sq ft h °F / Btu in'),
      thickness: passed(readDimension(raw.thickness)),
    };
  const { r, thickness } = raw;
  return {
    what,
    where,
    r: fromHouse(r, 'sq ft h °F / Btu'),
    ...(thickness !== undefined && { thickness: passed(readDimension(thickness)) }),
  };
}

/** When it must be there, and what is known of taking it back and of its end. */
function readTerms({
  transit,
  'needed-at': neededAt,
  'measured-after': measuredAfter,
  returns,
  withdrawn,
}: RawOption): Pick<Option, 'transitDays' | 'neededAt' | 'measuredAfter' | 'returns' | 'withdrawn'> {
  return {
    ...(transit !== undefined && { transitDays: passed(parseDays(transit)) }),
    ...(neededAt !== undefined && { neededAt }),
    ...(measuredAfter !== undefined && { measuredAfter }),
    ...(returns && {
      returns: { untilDays: returns['until-days'], restocking: passed(parsePercent(returns.restocking)) },
    }),
    ...(withdrawn && { withdrawn }),
  };
}

function readAttributes(
  raw: Readonly<Record<string, unknown>>,
  rules: readonly AttributeRule[],
): Readonly<Record<string, Attribute>> {
  const written = rules.filter(({ name }) => Object.hasOwn(raw, name));
  return Object.fromEntries(written.map((rule) => [rule.name, readAttribute(raw[rule.name], rule)]));
}

function readAttribute(raw: unknown, { kind, name }: AttributeRule): Attribute {
  switch (kind) {
    case 'text':
      return { text: String(raw), value: { kind, text: String(raw) } };
    case 'number':
      return { text: String(raw), value: { kind, number: fromHouse(Number(raw), unitOfFact(name)) } };
    case 'length':
      return { text: String(raw), value: { kind, length: passed(parseLength(String(raw))) } };
    case 'lengths': {
      const texts = (raw as readonly unknown[]).map(String);
      return { text: texts.join(', '), value: { kind, lengths: texts.map((text) => passed(parseLength(text))) } };
    }
    case 'yes-no':
      return { text: raw === true ? 'yes' : 'no', value: { kind, yes: raw === true } };
  }
}
