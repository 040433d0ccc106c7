import { currency, namesCurrency, oneCurrency, signPattern, takeSign, withSign } from './currency.js';
import { decimalNumber, figure, fixFor, printDecimal, readDecimal } from './decimal.js';
import { beyondHouse, mostMoney } from './limits.js';
import { isMetric } from './locale.js';
import { unitName } from './metric.js';
import { groupDigits, plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import { unitChoices, writtenUnit } from './unit.js';
import type { Decimal, Unit } from './quantity.js';

/** Dollars for one unit, exactly. */
export interface Rate {
  readonly rate: Decimal;
  readonly unit: Unit;
}

/** Reads `$7.40 / sq ft`, `$385 / each`, `$1,200 / lump`, `€38.50 / m2`; parts of a cent are fine in a rate. Never negative. What is for a metre
 *  or a square metre is turned into the program's units without losing a digit. */
export function parseRate(text: string): Reading<Rate> {
  const written = plainText(text);
  const { money, unit: unitText } = partsOfRate(written);
  if (namesCurrency(written)) return unread(`'${text}' names a currency of its own`, oneCurrency(), 'currency');
  const { digits, isSigned } = takeSign(money.trim());
  const rate = readDecimal(digits);
  const usual = unitName('sq ft');
  if (!rate || rate.amount < 0) {
    const what = currency().sign === '$' ? 'dollars' : 'an amount';
    const fix = `write ${what} for a unit, such as ${withSign('7.40')} / ${usual} or ${withSign('385')} / each`;
    return unread(`'${text}' is not a rate`, fixFor(digits, fix));
  }
  if (!isSigned) return unread(`'${text}' has no currency sign`, `write ${withSign(digits)} / ${unitText || usual}`);
  if (unitText === '') {
    const amount = withSign(digits);
    return unread(
      `'${text}' does not say for what`,
      `write ${amount} / ${usual}, ${amount} / ${unitName('lin ft')}, ${amount} / each or ${amount} / lump`,
    );
  }
  const unit = writtenUnit(unitText);
  if (!unit) return unread(`'${unitText}' is not a unit`, `write ${unitChoices()}`);
  const beyond = beyondHouse<Rate>(text, decimalNumber(rate), mostMoney);
  if (beyond) return beyond;
  if (!unit.metric) return read({ rate, unit: unit.unit });
  const amount = rate.amount * unit.metric.over;
  if (!Number.isSafeInteger(amount)) return unread(`'${text}' has too many digits`, 'write fewer digits');
  return read({ rate: { amount, scale: rate.scale + unit.metric.scale }, unit: unit.unit });
}

/** What stands before the unit and what behind it, both empty where no figure stands: `5` and `sf` of `5 sf`, `$6.50` and nothing of `$6.50`. */
export function partsOfRate(text: string): { readonly money: string; readonly unit: string } {
  const { money = '', unit = '' } = pattern().exec(plainText(text))?.groups ?? {};
  return { money, unit };
}

/** `$7.40`, `7.40 €`, then what it is for. */
const pattern = (): RegExp =>
  new RegExp(`^(?<money>[^\\d/-]*${figure}(?: ?${signPattern()})?) ?(?:\\/|per\\b)? ?(?<unit>.*)$`, 'u');

/** A rate in the units of the house in force, and how many of them one of the program's is. What was written for a square metre comes back
 *  digit by digit; what was written for a square foot is rounded to a millionth in a metric house. */
export function houseRate({ rate, unit }: Rate): {
  readonly rate: Decimal;
  readonly unit: string;
  readonly times: number;
} {
  const metric = isMetric() ? writtenUnit(unitName(unit))?.metric : undefined;
  if (!metric) return { rate, unit, times: 1 };
  const times = metric.over / 10 ** metric.scale;
  const isExact = rate.scale >= metric.scale && rate.amount % metric.over === 0;
  const own = isExact
    ? { amount: rate.amount / metric.over, scale: rate.scale - metric.scale }
    : { amount: Math.round((rate.amount / 10 ** rate.scale / times) * 1e6), scale: 6 };
  return { rate: own, unit: unitName(unit), times };
}

/** `$7.40 / sq ft`, `$385 / each`. */
export function printRate(rate: Rate): string {
  const own = houseRate(rate);
  return `${printDollars(shortened(own.rate))} / ${own.unit}`;
}

/** A price for a square metre in a house of feet has more digits than anybody reads. */
function shortened(rate: Decimal): Decimal {
  return rate.scale <= 6 ? rate : { amount: Math.round(rate.amount / 10 ** (rate.scale - 4)), scale: 4 };
}

/** Dollars of a decimal without rounding: `$7.40`, `$385`, `$0.075`. */
export function printDollars(rate: Decimal): string {
  const [whole = '', part = ''] = printDecimal(rate).replace('-', '').split('.');
  const least = currency().digits;
  const digits = `${groupDigits(whole)}${part === '' ? '' : `.${part.padEnd(least, '0')}`}`;
  return `${rate.amount < 0 ? '−' : ''}${withSign(digits)}`;
}
