import { currency, namesCurrency, oneCurrency, takeSign, withSign } from './currency.js';
import { decimalNumber, fixFor, readDecimal } from './decimal.js';
import { beyondHouse, mostMoney } from './limits.js';
import { isMetric } from './locale.js';
import { groupDigits, plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import type { Cents } from './quantity.js';

/** Reads `$12,450` or `$7.40` into whole cents; `-$310` and `−$310` are read as negative. Parts of a cent are refused. Of another currency
 *  than the dollar its smallest coins are counted, whatever they are called. */
export function parseMoney(text: string): Reading<Cents> {
  const written = plainText(text);
  const minus = /^- ?/u.test(written);
  const { digits, isSigned } = takeSign(written.replace(/^- ?/u, ''));
  if (!isSigned || !/^[\d.,' ]+$/u.test(digits)) return refuse(written, text);
  const amount = readDecimal(digits);
  const { digits: kept, sign, code } = currency();
  const isTwofold = !amount || amount.scale > kept;
  const twoWays = isTwofold ? inTwoWays(digits) : undefined;
  if (twoWays !== undefined) return unread(`'${text}' can be read in two ways`, twoWays);
  if (!amount) return refuse(written, text);
  if (amount.scale > kept) {
    if (sign === '$') return unread(`'${text}' has parts of a cent`, 'write dollars and whole cents, such as $7.40');
    return unread(`'${text}' has more digits than ${code} has`, `write at most ${kept} after the point`);
  }
  const beyond = beyondHouse<Cents>(text, decimalNumber(amount), mostMoney);
  if (beyond) return beyond;
  const cents = amount.amount * 10 ** (kept - amount.scale);
  if (!Number.isSafeInteger(cents)) return unread(`'${text}' is more money than can be counted to the cent`);
  return read((!minus || cents === 0 ? cents : -cents) as Cents);
}

/** `320.000` and `320,000` are thousands to some and coins to others: both ways to write it, where that is so. */
function inTwoWays(digits: string): string | undefined {
  const [, whole = '', part = ''] = (isMetric() && /^([1-9]\d{0,2})[.,](\d{3})$/u.exec(digits)) || [];
  if (whole === '') return undefined;
  const { digits: kept } = currency();
  const coins = kept === 0 ? '' : `.${part.slice(0, kept)}`;
  return `write ${withSign(`${whole}${part}`)} or ${withSign(`${whole}${coins}`)}`;
}

function refuse(written: string, text: string): Reading<Cents> {
  if (namesCurrency(written)) return unread(`'${text}' names a currency of its own`, oneCurrency(), 'currency');
  const { digits, sign } = currency();
  const bare = readDecimal(written);
  if (bare && bare.scale <= digits) {
    return unread(
      `'${text}' has no currency sign`,
      `did you mean ${printMoney((bare.amount * 10 ** (digits - bare.scale)) as Cents)}?`,
    );
  }
  const misgrouped = sign === '$' ? /^\$ ?([\d,]+)(\.\d{1,2})?$/u.exec(written) : null;
  if (misgrouped?.[1]?.includes(',')) {
    const whole = `$${groupDigits(misgrouped[1].replaceAll(',', ''))}${misgrouped[2] ?? ''}`;
    const withCents = written.replace(/,(\d\d)$/u, '.$1');
    const meant = withCents !== written && parseMoney(withCents).ok ? `${withCents} or ${whole}` : whole;
    return unread(`'${text}' has a comma in the wrong place`, `did you mean ${meant}?`);
  }
  const examples = `${withSign('12,450')} or ${withSign(digits === 0 ? '740' : '7.40')}`;
  const fix = `write ${sign === '$' ? 'dollars' : 'amounts'} such as ${examples}`;
  return unread(`'${text}' is not an amount of money`, fixFor(takeSign(written).digits, fix));
}

/** `$12,450`, `$7.40`, `−$310`: whole dollars without cents, unless `cents` asks for them always. */
export function printMoney(amount: Cents, cents: 'always' | 'when-any' = 'when-any'): string {
  const { digits } = currency();
  const size = Math.abs(amount);
  const part = size % 10 ** digits;
  const whole = groupDigits(Math.floor(size / 10 ** digits).toString());
  const rest = digits === 0 || (part === 0 && cents === 'when-any') ? '' : `.${part.toString().padStart(digits, '0')}`;
  return `${amount < 0 ? '−' : ''}${withSign(`${whole}${rest}`)}`;
}

/** What a choice changes: `+$1,240`, `−$310`, `$0`. */
export function printMoneyChange(amount: Cents, cents: 'always' | 'when-any' = 'when-any'): string {
  return `${amount > 0 ? '+' : ''}${printMoney(amount, cents)}`;
}

/** What a sum moves: `$99,118.00 → $100,000.00, +$882.00`. */
export function printMoneyMove(was: Cents, now: Cents): string {
  const change = printMoneyChange((now - was) as Cents, 'always');
  return `${printMoney(was, 'always')} → ${printMoney(now, 'always')}, ${change}`;
}

/** To whole units of the currency, a half away from zero: for overviews, where nothing is ticked. */
export function wholeMoney(amount: Cents): Cents {
  const unit = 10 ** currency().digits;
  return (Math.sign(amount) * Math.round(Math.abs(amount) / unit) * unit) as Cents;
}

/** Money as a number of the currency's whole units: 7.4 for $7.40. */
export function moneyNumber(amount: Cents): number {
  const { digits } = currency();
  return Number((amount / 10 ** digits).toFixed(digits));
}
