import { decimalNumber, readDecimal } from './decimal.js';
import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import { findUnit, unitChoices } from './unit.js';
import type { Unit } from './quantity.js';

/** What is used up with a quantity: 380 lin ft for every 1,000 sq ft. */
export interface Usage {
  readonly amount: number;
  /** What it is counted in: `gal`, `lb`, `lin ft`, `each`, `tubes` … as written. */
  readonly unit: string;
  readonly per: number;
  /** What it goes with. `cu ft` is the room that joints leave between pieces. */
  readonly of: Unit | 'cu ft';
}

/** Reads `5 gal / 1,000 sq ft`, `1 each / lin ft`, `110 lb / cu ft`. More than nothing. */
export function parseUsage(text: string): Reading<Usage> {
  const [, amountText = '', unit = '', perText = '', ofText = ''] = pattern.exec(plainText(text)) ?? [];
  const amount = readDecimal(amountText);
  if (!amount || unit === '')
    return unread(`'${text}' does not say how much for what`, 'write it like 5 gal / 1,000 sq ft or 1 each / lin ft');
  const per = perText === '' ? 1 : decimalOf(perText);
  if (amount.amount <= 0 || per <= 0) return unread(`'${text}' is nothing`, 'write amounts of more than 0');
  const of = /^(cu\.? ?ft|ft3|ft³)$/iu.test(ofText) ? 'cu ft' : findUnit(ofText);
  if (!of) return unread(`'${ofText}' is not a unit`, `write ${unitChoices}, or 'cu ft' for what fills joints`);
  return read({ amount: decimalNumber(amount), unit: findUnit(unit) ?? unit, per, of });
}

const pattern = /^([\d.,]+) ?([\p{L}][\p{L}. ]*?) ?(?:\/|\bper\b) ?([\d.,]*) ?(\S.*)$/u;

function decimalOf(text: string): number {
  const decimal = readDecimal(text);
  return decimal ? decimalNumber(decimal) : 0;
}
