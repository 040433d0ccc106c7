import type { ProblemCode } from '../../base/problem/index.js';
import { headings } from '../../base/geometry/index.js';
import type { Direction } from '../model/index.js';
import {
  compass,
  currency,
  isCurrency,
  isLanguage,
  isMetric,
  parseArea,
  parseCalendarDays,
  parseDay,
  parseDays,
  parseLength,
  parseMoney,
  parsePercent,
  parsePitch,
  parseQuantity,
  parseRate,
  parseSize,
  parseUsage,
  parseWeight,
  printMoney,
  read,
  unread,
  withSign,
  type Area,
  type Cents,
  type Length,
  type Rate,
  type Reading,
} from '../../base/units/index.js';

/** A notation that a schema names with `format`: how it is read, and what one looks like. */
export interface Notation {
  /** Of a text that cannot be read. */
  readonly code: ProblemCode;
  /** With its article: 'a length'. */
  readonly what: string;
  example(): string;
  read(text: string): Reading<unknown>;
  /** What a bare number was probably meant to be. */
  fromNumber?(number: number): string;
}

/** Zero or more. */
export function readLength(text: string): Reading<Length> {
  const reading = parseLength(text);
  return reading.ok && reading.value < 0 ? unread(`'${text}' is less than nothing`) : reading;
}

/** More than nothing. */
export function readDimension(text: string): Reading<Length> {
  const reading = readLength(text);
  return reading.ok && reading.value === 0 ? unread(`'${text}' is no size`, 'write more than 0') : reading;
}

/** Zero or more. */
export function readMoney(text: string): Reading<Cents> {
  const reading = parseMoney(text);
  return reading.ok && reading.value < 0
    ? unread(`'${text}' is less than nothing`, `write an amount of ${withSign('0')} or more`)
    : reading;
}

type Sum = { readonly by: 'lump'; readonly sum: Cents } | ({ readonly by: 'unit' } & Rate);

/** A lump sum, or a rate for each unit. */
export function readSum(text: string): Reading<Sum> {
  if (/\/|\bper\b/u.test(text)) {
    const rate = parseRate(text);
    return rate.ok ? read({ by: 'unit', ...rate.value }) : rate;
  }
  const sum = readMoney(text);
  return sum.ok ? read({ by: 'lump', sum: sum.value }) : sum;
}

/** The height in `flat 9'-0"`. */
export function readFlatCeiling(text: string): Reading<Length> {
  const [, height] = /^\s*flat\s+(.+)$/u.exec(text) ?? [];
  if (height !== undefined) return readDimension(height);
  const bare = readDimension(text);
  const fix = bare.ok
    ? `did you mean flat ${text.trim()}?`
    : `write flat and a height, such as flat ${isMetric() ? '2.4 m' : `9'-0"`}, or a form such as { form: shed, … }`;
  return unread(`'${text}' is not a ceiling`, fix);
}

type OpeningRule = { readonly rule: 'all' | 'none' } | { readonly rule: 'over'; readonly area: Area };

/** A direction in plan: `south-east`, `north-south`, or degrees clockwise from north such as `37°`. */
export function readHeading(text: string): Reading<Direction> {
  const written = text.trim().toLowerCase();
  if (written === 'east-west') return read(headings.east);
  // Its first side is the west one.
  if (written === 'north-south') return read(headings.south);
  const named = compass.find((name) => name === written);
  if (named) return read(headings[named]);
  const [, degrees] = /^(\d{1,3}(?:\.\d+)?) ?(?:°|deg|degrees)$/u.exec(written) ?? [];
  if (degrees === undefined || Number(degrees) >= 360)
    return unread(`'${text}' is no direction`, 'write such as east-west, south-east or 37°, in degrees from north');
  const turn = (Number(degrees) * Math.PI) / 180;
  return read({ x: Math.sin(turn), y: Math.cos(turn) });
}

/** `none`, `all`, or `over 32 sq ft`. */
export function readOpeningRule(text: string): Reading<OpeningRule> {
  if (text === 'none' || text === 'all') return read({ rule: text });
  const [, size] = /^over (.+)$/u.exec(text) ?? [];
  if (size === undefined)
    return unread(`'${text}' is no rule for openings`, `write none, all, or over ${isMetric() ? '3 m2' : '32 sq ft'}`);
  const area = parseArea(size);
  return area.ok ? read({ rule: 'over', area: area.value }) : area;
}

/** An example in the units of the house in force. */
function either(customary: string, metric: string): () => string {
  return () => (isMetric() ? metric : customary);
}

const areaUnit = (): string => (isMetric() ? 'm2' : 'sq ft');

function readCurrency(text: string): Reading<string> {
  if (isCurrency(text)) return read(text);
  return unread(`'${text}' is no currency`, 'write its code of three capital letters, such as USD, EUR or CHF');
}

function readLanguage(text: string): Reading<string> {
  if (isLanguage(text)) return read(text);
  return unread(`'${text}' is no tag of a language`, 'write such as en-US, en-GB or de-CH');
}

/** What a bare number was meant to be. */
const slope = (number: number): string => (isMetric() ? `${number}° or ${number} %` : `${number}/12`);

/** Every `format` of the schemas. */
export const notations: Readonly<Record<string, Notation>> = {
  length: { code: 'length-unreadable', what: 'a length', example: either(`14'-6"`, '4.42 m'), read: readLength },
  dimension: { code: 'length-unreadable', what: 'a length', example: either(`14'-6"`, '4.42 m'), read: readDimension },
  coordinate: { code: 'length-unreadable', what: 'a length', example: either(`14'-6"`, '4.42 m'), read: parseLength },
  size: {
    code: 'size-unreadable',
    what: 'a size',
    example: either(`24'-0" x 18'-6"`, '7.2 m x 5.6 m'),
    read: parseSize,
  },
  money: {
    code: 'money-unreadable',
    what: 'an amount of money',
    example: () => withSign('12,450'),
    read: readMoney,
    fromNumber: money,
  },
  'money-change': {
    code: 'money-unreadable',
    what: 'an amount of money',
    example: () => `${withSign('1,240')} or -${withSign('310')}`,
    read: parseMoney,
    fromNumber: money,
  },
  rate: {
    code: 'rate-unreadable',
    what: 'a rate',
    example: () => `${withSign('7.40')} / ${areaUnit()}`,
    read: parseRate,
  },
  'money-or-rate': {
    code: 'money-unreadable',
    what: 'an amount of money or a rate',
    example: () => `${withSign('9,800')} or ${withSign('6.50')} / ${areaUnit()}`,
    read: readSum,
    fromNumber: money,
  },
  currency: { code: 'currency-unknown', what: 'the code of a currency', example: () => 'USD', read: readCurrency },
  language: { code: 'language-unknown', what: 'the tag of a language', example: () => 'en-US', read: readLanguage },
  percent: {
    code: 'percent-unreadable',
    what: 'a percentage',
    example: () => '15 %',
    read: parsePercent,
    fromNumber: (number) => `${number} %`,
  },
  day: { code: 'day-unreadable', what: 'a day', example: () => '2026-05-04', read: parseDay },
  days: {
    code: 'days-unreadable',
    what: 'a time',
    example: () => '30 days or 6 weeks',
    read: parseDays,
    fromNumber: (number) => `${number} days`,
  },
  'calendar-days': {
    code: 'days-unreadable',
    what: 'a time',
    example: () => '180 days or 26 weeks',
    read: parseCalendarDays,
    fromNumber: (number) => `${number} days`,
  },
  pitch: {
    code: 'pitch-unreadable',
    what: 'a pitch',
    example: either('6/12', '25° or 45 %'),
    read: (text) => parsePitch(text),
    fromNumber: slope,
  },
  ramp: {
    code: 'pitch-unreadable',
    what: 'the pitch of a ramp',
    example: either('1/12', '5° or 8 %'),
    read: (text) => parsePitch(text, 'leave the ramp out: a part of the floor without one is level'),
    fromNumber: slope,
  },
  weight: {
    code: 'weight-unreadable',
    what: 'a weight',
    example: either('2.1 lb / sq ft', '10.5 kg / m2'),
    read: parseWeight,
  },
  usage: {
    code: 'usage-unreadable',
    what: 'an amount for a quantity',
    example: either('5 gal / 1,000 sq ft', '0.4 kg / m2'),
    read: parseUsage,
  },
  quantity: {
    code: 'quantity-unreadable',
    what: 'a quantity',
    example: either('24 sq ft', '2.2 m2'),
    read: parseQuantity,
  },
  heading: { code: 'heading-unreadable', what: 'a direction', example: () => 'east-west or 37°', read: readHeading },
  'flat-ceiling': {
    code: 'ceiling-unreadable',
    what: 'a ceiling',
    example: either(`flat 9'-0"`, 'flat 2.4 m'),
    read: readFlatCeiling,
  },
  'opening-rule': {
    code: 'opening-rule-unreadable',
    what: 'a rule for openings',
    example: either('over 32 sq ft', 'over 3 m2'),
    read: readOpeningRule,
  },
};

function money(number: number): string {
  return printMoney(Math.round(number * 10 ** currency().digits) as Cents);
}

export const slugPattern = '^[a-z0-9]+(-[a-z0-9]+)*$';

const fingerprintPattern = '^([0-9A-Fa-f]{2}:?){31}[0-9A-Fa-f]{2}$';

const sharedPattern = String.raw`^(?!.*/(?:options|categories|trades|price-lists)(?:/|$))(?:\.\./)+[A-Za-z0-9_][A-Za-z0-9._-]*(?:/[A-Za-z0-9_][A-Za-z0-9._-]*)*$`;
const sitePattern = '^(?=.{1,200}$)https://[a-z0-9](?:[a-z0-9.-]*[a-z0-9])?(?::[0-9]{1,5})?(?:/[A-Za-z0-9._~-]+)*/?$';

const phonePattern = String.raw`^\+?[0-9(][0-9 ()./-]*[0-9]$`;
const mailPattern = String.raw`^[^\s@<>,;:?&]+@[^\s@<>,;:?&]+$`;

/** Forms that a schema gives as `pattern`, in words. */
export const patternWords: Readonly<Record<string, { readonly what: string; readonly fix: string }>> = {
  [slugPattern]: {
    what: 'a slug',
    fix: 'use small letters, digits and single hyphens, such as great-room',
  },
  '^[0-9]{2} [0-9]{2} [0-9]{2}$': {
    what: 'a section number',
    fix: 'write three pairs of digits in quotes, such as "06 20 00"',
  },
  '^#[0-9a-fA-F]{6}$': { what: 'a color', fix: 'write it in quotes as "#rrggbb", such as "#b98a5a"' },
  '^[0-9a-f]{64}$': { what: 'a SHA-256 digest', fix: 'leave it as the program wrote it: 64 digits and letters a to f' },
  '^[0-9A-F]{4}(-[0-9A-F]{4}){2}$': {
    what: 'the short digest of a choice slip',
    fix: 'leave it as bookmatch choose wrote it, such as 4F2A-91C0-77BE',
  },
  '^[0-9a-f]{40}$': { what: 'a commit', fix: 'write the whole id that git rev-parse prints' },
  '^(issue-[1-9][0-9]*|[0-9a-f]{40})$': { what: 'a version', fix: 'write issue-2, or the whole id of a commit' },
  '^issued/[A-Za-z0-9._-]+$': { what: 'a signed file', fix: 'signed files lie in issued/' },
  '^[a-z0-9]+(-[a-z0-9]+)*\\.(jpg|png|webp)$': {
    what: 'a photograph’s file',
    fix: 'use small letters, digits and single hyphens, and .jpg, .png or .webp at the end, such as white-oak.jpg',
  },
  [sitePattern]: {
    what: 'an address that begins with https:// and has 200 signs at most',
    fix: 'write such as https://larch-hollow.example',
  },
  '^[a-z0-9]+(-[a-z0-9]+)*/[a-z0-9]+(-[a-z0-9]+)*$': {
    what: 'an option with its category',
    fix: 'write the category, a slash and the option, such as floor/white-oak-solid-5',
  },
  [phonePattern]: {
    what: 'a telephone number',
    fix: "write digits, parted as they are read, such as 555-0142; '+' before a country's code",
  },
  [mailPattern]: { what: 'a mail address', fix: 'write one address alone, such as site@example.com' },
  [sharedPattern]: {
    what: 'a shared folder',
    fix: 'write its way from the house folder, such as ../our-book: plain names, after one or more ../',
  },
  '^[1-9][0-9]?x[1-9][0-9]?$': { what: 'a division', fix: 'write lights across, an x, and lights up, such as 2x3' },
  '^[A-Z]{1,3}$': { what: 'a key', fix: 'use one to three capital letters, such as WD' },
  [fingerprintPattern]: {
    what: 'a fingerprint',
    fix: 'write the SHA-256 fingerprint that bookmatch sign prints: 64 digits from 0 to 9 and a to f',
  },
  '^[A-Za-z0-9]+([.-][A-Za-z0-9]+)*$': { what: 'a mark', fix: 'use letters and digits, such as D01' },
};

/** The value of a text that the schema has passed. */
export function passed<T>(reading: Reading<T>): T {
  if (reading.ok) return reading.value;
  throw new Error(`a text passed the schema that cannot be read: ${reading.why}`);
}
