import {
  currency,
  inLocale,
  namesCurrency,
  unread,
  withSign,
  type Locale,
  type Reading,
} from '../../base/units/index.js';

/** Reads an amount of a flag, which carries the currency's sign as in records. A shell takes `$1` out of `"$12.40"`: what is left of it looks like an
 *  amount, and is another one. `example` is written as it is typed, without quotes. */
export function readSigned<T>(text: string, read: (text: string) => Reading<T>, example: string): Reading<T> {
  const { sign, code } = currency();
  const isSigned = !/\d/u.test(text) || text.includes(sign) || text.includes(code) || namesCurrency(text);
  if (isSigned) return read(text);
  const shell = sign === '$' ? `; between double quotes a shell takes $ and the digit after it away` : '';
  return unread(`'${text}' has no currency sign`, `write it with its sign, in single quotes: '${example}'${shell}`);
}

/** The same in a house whose currency is not in force yet. */
export function readSignedIn<T>(locale: Locale, text: string, read: (text: string) => Reading<T>): Reading<T> {
  return inLocale(locale, () => readSigned(text, read, withSign('480,000')));
}
