import { decimalNumber, readDecimal } from './decimal.js';
import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import { findUnit, unitChoices } from './unit.js';
import type { Unit } from './quantity.js';

/** Pounds for one unit of what is installed. */
interface UnitWeight {
  readonly pounds: number;
  readonly per: Unit;
}

/** Pounds in a kilogram. Source: 1 lb = 0.45359237 kg exactly, NIST SP 811 B.8. */
const poundsPerKilogram = 1 / 0.45359237;

/** Reads `2.1 lb / sq ft`, `85 lb / each`, `38 kg / each`. */
export function parseWeight(text: string): Reading<UnitWeight> {
  const [, digits = '', mass = '', unitText = ''] =
    /^([\d.,]+) ?([a-z]*)\.? ?(?:\/|per\b)? ?(.*)$/iu.exec(plainText(text)) ?? [];
  const amount = readDecimal(digits);
  if (!amount)
    return unread(`'${text}' is not a weight`, 'write a weight for a unit, such as 2.1 lb / sq ft or 85 lb / each');
  const factor = /^(lbs?|pounds?)$/iu.test(mass) ? 1 : /^kg$/iu.test(mass) ? poundsPerKilogram : undefined;
  if (factor === undefined)
    return unread(`'${text}' does not say pounds`, `write ${digits} lb / ${unitText || 'sq ft'}`);
  if (unitText === '')
    return unread(`'${text}' does not say for what`, `write ${digits} ${mass} / sq ft or ${digits} ${mass} / each`);
  const per = findUnit(unitText);
  if (!per) return unread(`'${unitText}' is not a unit`, `write ${unitChoices}`);
  return read({ pounds: decimalNumber(amount) * factor, per });
}
