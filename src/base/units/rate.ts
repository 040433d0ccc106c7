import { namesCurrency, oneCurrency } from './currency.js';
import { printDecimal, readDecimal } from './decimal.js';
import { groupDigits, plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import { findUnit, unitChoices } from './unit.js';
import type { Decimal, Unit } from './quantity.js';

/** Dollars for one unit, exactly. */
export interface Rate {
  readonly rate: Decimal;
  readonly unit: Unit;
}

/** Reads `$7.40 / sq ft`, `$385 / each`, `$1,200 / lump`; parts of a cent are fine in a rate. Never negative. */
export function parseRate(text: string): Reading<Rate> {
  const written = plainText(text);
  const [, sign = '', digits = '', unitText = ''] = /^(\$?) ?(-?[\d.,]+) ?(?:\/|per\b)? ?(.*)$/u.exec(written) ?? [];
  if (namesCurrency(written)) return unread(`'${text}' names a currency of its own`, oneCurrency);
  const rate = readDecimal(digits);
  if (!rate || rate.amount < 0)
    return unread(`'${text}' is not a rate`, 'write dollars for a unit, such as $7.40 / sq ft or $385 / each');
  if (sign === '') return unread(`'${text}' has no currency sign`, `write $${digits} / ${unitText || 'sq ft'}`);
  if (unitText === '')
    return unread(
      `'${text}' does not say for what`,
      `write $${digits} / sq ft, $${digits} / lin ft, $${digits} / each or $${digits} / lump`,
    );
  const unit = findUnit(unitText);
  if (!unit) return unread(`'${unitText}' is not a unit`, `write ${unitChoices}`);
  return read({ rate, unit });
}

/** `$7.40 / sq ft`, `$385 / each`. */
export function printRate({ rate, unit }: Rate): string {
  return `${printDollars(rate)} / ${unit}`;
}

/** Dollars of a decimal without rounding: `$7.40`, `$385`, `$0.075`. */
export function printDollars(rate: Decimal): string {
  const [whole = '', part = ''] = printDecimal(rate).replace('-', '').split('.');
  return `${rate.amount < 0 ? '−' : ''}$${groupDigits(whole)}${part === '' ? '' : `.${part.padEnd(2, '0')}`}`;
}
