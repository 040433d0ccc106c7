import { decimalNumber, readDecimal } from './decimal.js';
import { groupDigits, plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import { findUnit, unitChoices } from './unit.js';
import type { Area, Unit } from './quantity.js';

/** A counted or measured amount: `24 sq ft`, `8 lin ft`, `1 each`. */
interface Amount {
  readonly amount: number;
  readonly unit: Unit;
}

/** Square metres in a square foot, exactly. Source: 0.3048², NIST SP 811 B.8. */
const squareMetresPerSquareFoot = 0.09290304;

/** Reads `24 sq ft`, `8 lin ft`, `1 each`, `1 lump`. */
export function parseQuantity(text: string): Reading<Amount> {
  const [, digits = '', unitText = ''] = /^(-?[\d.,]+) ?(.*)$/u.exec(plainText(text)) ?? [];
  const amount = readDecimal(digits);
  if (!amount)
    return unread(`'${text}' is not a quantity`, 'write a number and a unit, such as 24 sq ft, 8 lin ft or 1 each');
  if (unitText === '')
    return unread(`'${text}' has no unit`, `write ${digits} sq ft, ${digits} lin ft or ${digits} each`);
  const unit = findUnit(unitText);
  if (!unit) return unread(`'${unitText}' is not a unit`, `write ${unitChoices}`);
  return read({ amount: decimalNumber(amount), unit });
}

/** Reads `32 sq ft` or `3 m2` into square feet. */
export function parseArea(text: string): Reading<Area> {
  const [, digits = '', unitText = ''] = /^(-?[\d.,]+) ?(.*)$/u.exec(plainText(text)) ?? [];
  const amount = readDecimal(digits);
  if (!amount) return unread(`'${text}' is not an area`, 'write an area such as 32 sq ft or 3 m2');
  if (unitText === '') return unread(`'${text}' has no unit`, `write ${digits} sq ft or ${digits} m2`);
  if (/^(m2|m²|sq m|sqm)$/iu.test(unitText)) return read((decimalNumber(amount) / squareMetresPerSquareFoot) as Area);
  if (findUnit(unitText) !== 'sq ft')
    return unread(`'${unitText}' is not a unit of area`, `write ${digits} sq ft or ${digits} m2`);
  return read(decimalNumber(amount) as Area);
}

/** `342.5 sq ft`, `1,240 lin ft`, `3 each`: one digit after the point at most, halves away from zero. */
export function printQuantity(amount: number, unit: Unit): string {
  return `${printAmount(amount, 1)} ${unit}`;
}

/** `342.5 sq ft`. */
export function printArea(area: Area): string {
  return printQuantity(area, 'sq ft');
}

/** `31.8 m²`. */
export function printAreaMetric(area: Area): string {
  return `${printAmount(area * squareMetresPerSquareFoot, 1)} m²`;
}

/** A number for people: thousands set off, `digits` after the point at most, halves away from zero, a true minus. */
export function printAmount(amount: number, digits: number): string {
  const step = 10 ** digits;
  // The 14th digit of a float is noise: 0.15 × 10 must round as 1.5 does.
  const steps = Math.floor(Number((Math.abs(amount) * step).toPrecision(14)) + 0.5);
  const whole = groupDigits(Math.floor(steps / step).toString());
  const part = digits === 0 ? '' : (steps % step).toString().padStart(digits, '0').replace(/0+$/u, '');
  return `${amount < 0 && steps > 0 ? '−' : ''}${whole}${part === '' ? '' : `.${part}`}`;
}
