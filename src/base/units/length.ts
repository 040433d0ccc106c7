import { isMetric } from './locale.js';
import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import type { Length } from './quantity.js';

const inch = 25_400_000n;
const foot = 12n * inch;
const metric: Readonly<Record<string, bigint>> = { mm: 1_000_000n, cm: 10_000_000n, m: 1_000_000_000n };

/** No house is longer than ten kilometres, and whole nanometres up to there are exact in a float. */
const longest = 10_000n * 1_000_000_000n;

const number = String.raw`\d+(?:\.\d+)?|\.\d+`;
const fraction = String.raw`\d+ ?\/ ?\d+`;
const feetInches = new RegExp(
  `^(?:(?<feet>${number}) ?')?(?:[ -]*(?:(?:(?<inches>${number})(?:[ -]+(?<part>${fraction}))?|(?<lone>${fraction})) ?"))?$`,
  'u',
);
const metricLength = new RegExp(`^(?<amount>${number}) ?(?<unit>mm|cm|m)$`, 'u');
/** A comma before the decimals, where no thousands can be meant. */
const decimalComma = /^(?:\d+,(?:\d{1,2}|\d{4,})|0,\d+) ?(?:mm|cm|m)$/u;

/** Reads a length in any usual notation: `14'-6 1/2"`, `14' 6"`, `9'`, `4.5'`, `30"`, `6-3/4"`, `5/8"`, `14 ft 6 in`, `4.42 m`,
 *  `900 mm`, `90 cm`, with typographic primes, quotes and fractions too. A leading minus is read; whether a length may be
 *  negative is for the asker. Refused: no unit, an unknown unit, what whole nanometres cannot hold exactly. */
export function parseLength(text: string): Reading<Length> {
  const written = plainText(text);
  const negative = /^- ?/u.test(written);
  const unsigned = marks(negative ? written.replace(/^- ?/u, '') : written);
  const size = isMetric() && decimalComma.test(unsigned) ? unsigned.replace(',', '.') : unsigned;
  const found = metricLength.exec(size)?.groups;
  const reading = found
    ? scaled(found['amount'] ?? '', metric[found['unit'] ?? ''] ?? 0n, text)
    : parseFeet(size, text);
  if (!reading.ok) return reading;
  if (reading.value > longest)
    return unread(`'${text}' is longer than any house`, 'see whether a digit went astray, or feet stand for inches');
  const value = Number(reading.value);
  return read((negative && value !== 0 ? -value : value) as Length);
}

/** Words for feet and inches become their marks. */
function marks(text: string): string {
  return text
    .replace(/ ?\b(?:feet|foot|ft)\b\.?/giu, "'")
    .replace(/ ?\b(?:inches|inch|in)\b\.?/giu, '"')
    .replace(/(\d)(?:feet|foot|ft)\b\.?/giu, "$1'")
    .replace(/(\d)(?:inches|inch|in)\b\.?/giu, '$1"');
}

function parseFeet(size: string, text: string): Reading<bigint> {
  const groups = feetInches.exec(size)?.groups;
  if (!groups || !/\d/u.test(size)) return refuse(size, text);
  const { feet: feetText, inches: inchesText, part, lone } = groups;
  const hasInches = inchesText !== undefined || lone !== undefined;
  if (feetText?.includes('.') && hasInches)
    return unread(`'${text}' has a decimal foot and inches`, 'write whole feet before inches');
  if (part !== undefined && inchesText?.includes('.'))
    return unread(`'${text}' has a decimal inch and a fraction`, 'write one of them');
  const whole = feetText === undefined ? read(0n) : scaled(feetText, foot, text);
  const rest = inchesText === undefined ? read(0n) : scaled(inchesText, inch, text);
  const over = part ?? lone;
  const bit = over === undefined ? read(0n) : fractionOf(over, part !== undefined || feetText !== undefined, text);
  if (!whole.ok) return whole;
  if (!rest.ok) return rest;
  if (!bit.ok) return bit;
  if (feetText !== undefined && rest.value >= foot) {
    const sum = Number(whole.value + rest.value + bit.value) as Length;
    return unread(`'${text}' has a foot or more of inches after the feet`, `did you mean ${printLength(sum)}?`);
  }
  return read(whole.value + rest.value + bit.value);
}

function fractionOf(text: string, proper: boolean, written: string): Reading<bigint> {
  const [top = '', bottom = ''] = text.replaceAll(' ', '').split('/');
  const [over, under] = [BigInt(top), BigInt(bottom)];
  if (under === 0n) return unread(`'${written}' divides by zero`);
  if (proper && over >= under)
    return unread(`'${written}' has a fraction of a whole inch or more`, 'write the whole inches before the fraction');
  if ((over * inch) % under !== 0n) {
    return unread(
      `'${written}' is no exact length: an inch goes by halves down to 64ths`,
      'write 16ths or 64ths, or millimetres',
    );
  }
  return read((over * inch) / under);
}

/** A decimal number of a unit, exactly. */
function scaled(digits: string, unit: bigint, text: string): Reading<bigint> {
  const [whole = '', part = ''] = digits.split('.');
  const over = BigInt(whole + part) * unit;
  const under = 10n ** BigInt(part.length);
  return over % under === 0n ? read(over / under) : unread(`'${text}' is finer than a nanometre`, 'write fewer digits');
}

function refuse(size: string, text: string): Reading<bigint> {
  const usual = isMetric() ? '4.42 m or 900 mm' : `14'-6 1/2", 30" or 4.42 m`;
  if (text.trim() === '')
    return unread('the length is empty', `write a length such as ${isMetric() ? '4.42 m' : `14'-6"`}`);
  const isBelow = /^\s*[-−]/u.test(text);
  const bare = new RegExp(`^(?:${number}|${fraction})$`, 'u').exec(size);
  if (bare) {
    const feet = size.includes('/') ? `${size}"` : `${size}' for feet, ${size}" for inches or ${size} mm`;
    const meant = isMetric() && !size.includes('/') ? `${size} m or ${size} mm` : feet;
    return unread(`'${text}' has no unit`, `write ${isBelow ? meant.replaceAll(size, `-${size}`) : meant}`);
  }
  const unmarked = new RegExp(`^(\\d+)' ?-? ?(\\d+(?:[ -]\\d+\\/\\d+)?)$`, 'u').exec(size);
  if (unmarked) return unread(`'${text}' lacks the inch mark`, `did you mean ${unmarked[1]}'-${unmarked[2]}"?`);
  const dashed = /^(\d+)-(\d+)$/u.exec(size);
  if (dashed) return unread(`'${text}' has no unit`, `did you mean ${dashed[1]}'-${dashed[2]}"?`);
  const comma = /^(\d+),(\d+) ?(mm|cm|m)$/u.exec(size);
  if (comma && isMetric()) {
    const [, whole, part, unit] = comma;
    const fix = `write ${whole}${part} ${unit} or ${whole}.${part} ${unit}`;
    return unread(`the comma of '${text}' can be read in two ways`, fix);
  }
  if (comma) return unread(`'${text}' has a decimal comma`, `did you mean ${comma[1]}.${comma[2]} ${comma[3]}?`);
  return unread(`'${text}' is not a length`, `write a length such as ${usual}`);
}

/** A length as the house in force writes it: `14'-6 1/2"`, or `4.432 m`. */
export function printLength(length: Length): string {
  return isMetric() ? printMetres(length) : printFeet(length);
}

/** What `printLength` writes of a length, as one: rounded to 1/16 inch, or to the millimetre. */
export function printedLength(length: Length): Length {
  const grain = isMetric() ? 1_000_000 : 1_587_500;
  return (Math.sign(length) * Math.floor(Math.abs(length) / grain + 0.5) * grain) as Length;
}

/** The same in the other system, to stand beside it. */
export function printLengthBeside(length: Length): string {
  return isMetric() ? printFeet(length) : printMetres(length);
}

/** Feet and inches to the nearest 1/16 (half a sixteenth goes up): `14'-6 1/2"`, `17'-0 9/16"`, `6 3/4"` under a foot, `0"`; a true
 *  minus. */
function printFeet(length: Length): string {
  const sixteenths = Math.floor(Math.abs(length) / 1_587_500 + 0.5);
  const [feet, rest] = [Math.floor(sixteenths / 192), sixteenths % 192];
  const sign = length < 0 && sixteenths > 0 ? '−' : '';
  return feet === 0 ? `${sign}${printInches(rest, false)}` : `${sign}${feet}'-${printInches(rest, true)}`;
}

/** After feet a zero stands before the fraction: `17'-9/16"` would be misread. */
function printInches(sixteenths: number, afterFeet: boolean): string {
  const [whole, over] = [Math.floor(sixteenths / 16), sixteenths % 16];
  if (over === 0) return `${whole}"`;
  const shared = over % 8 === 0 ? 8 : over % 4 === 0 ? 4 : over % 2 === 0 ? 2 : 1;
  const part = `${over / shared}/${16 / shared}"`;
  return whole === 0 && !afterFeet ? part : `${whole} ${part}`;
}

/** Millimetres under a metre, else metres to the millimetre with two digits at least: `165 mm`, `4.42 m`, `4.432 m`. */
function printMetres(length: Length): string {
  const millimetres = Math.floor(Math.abs(length) / 1_000_000 + 0.5);
  const sign = length < 0 && millimetres > 0 ? '−' : '';
  if (millimetres < 1000) return `${sign}${millimetres} mm`;
  return `${sign}${(millimetres / 1000).toFixed(3).replace(/0$/u, '')} m`;
}
