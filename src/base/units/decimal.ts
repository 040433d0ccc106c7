import { isMetric } from './locale.js';
import type { Decimal } from './quantity.js';

/** Digits after the point that are kept at most: a rate to a millionth of a dollar. */
const finestScale = 6;

/** Digits as people set them off, for patterns: `1,486,000.50`, `1 486 000,50`, `1'486'000`. What they are worth is for `readDecimal`. */
export const figure = String.raw`-?\d[\d.,']*(?: \d{3}(?![\d])[\d.,']*)*`;

/** A decimal from plain digits such as `7.40`, or undefined when it is no number or finer than `finestScale`.
 *  Thousands may be set off by commas, in groups of three. In a metric house a comma may stand before the decimals, and spaces,
 *  points or apostrophes set off the thousands, where nothing else can be meant. */
export function readDecimal(text: string): Decimal | undefined {
  const plain = isMetric() ? withPoint(text) : text;
  if (plain === undefined || !/^-?(\d+|\d{1,3}(,\d{3})+)(\.\d+)?$/u.test(plain)) return undefined;
  const [whole = '', part = ''] = plain.replaceAll(',', '').split('.');
  if (part.length > finestScale) return undefined;
  const amount = Number(whole + part);
  return Number.isSafeInteger(amount) ? { amount: amount === 0 ? 0 : amount, scale: part.length } : undefined;
}

const oneComma = /^-?[1-9]\d{0,2},\d{3}$/u;

/** Digits with a point before the decimals; undefined for `1,250`, which is one and a quarter to some and a thousand to others. */
function withPoint(text: string): string | undefined {
  if (oneComma.test(text)) return undefined;
  const ungrouped = /^-?\d{1,3}([ '])\d{3}(\1\d{3})*(?=[.,]|$)/u.test(text) ? text.replace(/[ ']/gu, '') : text;
  const comma = /^(-?(?:\d+|\d{1,3}(?:\.\d{3})+)),(\d+)$/u.exec(ungrouped);
  return comma ? `${(comma[1] ?? '').replaceAll('.', '')}.${comma[2] ?? ''}` : ungrouped;
}

/** How to write a number with a comma that can be read in two ways, or what else to write. */
export function fixFor(digits: string, fix: string): string {
  if (!isMetric() || !oneComma.test(digits)) return fix;
  const [whole = '', part = ''] = digits.split(',');
  return `the comma can be read in two ways: write ${whole}${part} or ${whole}.${part}`;
}

/** The nearest float, for quantities that are floats anyway. */
export function decimalNumber({ amount, scale }: Decimal): number {
  return amount / 10 ** scale;
}

/** Plain digits without trailing zeros, keeping `least` of them after the point: `{ 740, 2 }` is `7.4`, or `7.40`. */
export function printDecimal({ amount, scale }: Decimal, least = 0): string {
  const digits = Math.abs(amount)
    .toString()
    .padStart(scale + 1, '0');
  const whole = digits.slice(0, digits.length - scale);
  const part = digits
    .slice(digits.length - scale)
    .replace(/0+$/u, '')
    .padEnd(least, '0');
  return `${amount < 0 ? '-' : ''}${whole}${part === '' ? '' : `.${part}`}`;
}
