import type { Decimal } from './quantity.js';

/** Digits after the point that are kept at most: a rate to a millionth of a dollar. */
const finestScale = 6;

/** A decimal from plain digits such as `7.40`, or undefined when it is no number or finer than `finestScale`.
 *  Thousands may be set off by commas, in groups of three. */
export function readDecimal(text: string): Decimal | undefined {
  if (!/^-?(\d+|\d{1,3}(,\d{3})+)(\.\d+)?$/u.test(text)) return undefined;
  const [whole = '', part = ''] = text.replaceAll(',', '').split('.');
  if (part.length > finestScale) return undefined;
  const amount = Number(whole + part);
  return Number.isSafeInteger(amount) ? { amount: amount === 0 ? 0 : amount, scale: part.length } : undefined;
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
