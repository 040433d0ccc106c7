import { namesCurrency, oneCurrency } from './currency.js';
import { readDecimal } from './decimal.js';
import { groupDigits, plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import type { Cents } from './quantity.js';

/** Reads `$12,450` or `$7.40` into whole cents; `-$310` and `−$310` are read as negative. Parts of a cent are refused. */
export function parseMoney(text: string): Reading<Cents> {
  const written = plainText(text);
  const [, minus = '', digits = ''] = /^(- ?)?\$ ?([\d.,]+)$/u.exec(written) ?? [];
  if (digits === '') return refuse(written, text);
  const amount = readDecimal(digits);
  if (!amount) return refuse(written, text);
  if (amount.scale > 2) return unread(`'${text}' has parts of a cent`, 'write dollars and whole cents, such as $7.40');
  const cents = amount.amount * 10 ** (2 - amount.scale);
  if (!Number.isSafeInteger(cents)) return unread(`'${text}' is more money than can be counted to the cent`);
  return read((minus === '' || cents === 0 ? cents : -cents) as Cents);
}

function refuse(written: string, text: string): Reading<Cents> {
  if (namesCurrency(written)) return unread(`'${text}' names a currency of its own`, oneCurrency);
  const bare = readDecimal(written);
  if (bare && bare.scale <= 2) {
    return unread(
      `'${text}' has no currency sign`,
      `did you mean ${printMoney((bare.amount * 10 ** (2 - bare.scale)) as Cents)}?`,
    );
  }
  const misgrouped = /^\$ ?([\d,]+)(\.\d{1,2})?$/u.exec(written);
  if (misgrouped?.[1]?.includes(',')) {
    const digits = misgrouped[1].replaceAll(',', '');
    return unread(
      `'${text}' has a comma in the wrong place`,
      `did you mean $${groupDigits(digits)}${misgrouped[2] ?? ''}?`,
    );
  }
  return unread(`'${text}' is not an amount of money`, 'write dollars such as $12,450 or $7.40');
}

/** `$12,450`, `$7.40`, `−$310`: whole dollars without cents, unless `cents` asks for them always. */
export function printMoney(amount: Cents, cents: 'always' | 'when-any' = 'when-any'): string {
  const size = Math.abs(amount);
  const part = size % 100;
  const dollars = groupDigits(Math.floor(size / 100).toString());
  const rest = part === 0 && cents === 'when-any' ? '' : `.${part.toString().padStart(2, '0')}`;
  return `${amount < 0 ? '−' : ''}$${dollars}${rest}`;
}

/** What a choice changes: `+$1,240`, `−$310`, `$0`. */
export function printMoneyChange(amount: Cents, cents: 'always' | 'when-any' = 'when-any'): string {
  return `${amount > 0 ? '+' : ''}${printMoney(amount, cents)}`;
}
