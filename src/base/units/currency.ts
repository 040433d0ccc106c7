import { keepBy } from './keep.js';
import { locale } from './locale.js';

/** The house's one currency, as its amounts are written. */
interface Currency {
  readonly code: string;
  /** `$`, `€`, `CHF`. */
  readonly sign: string;
  /** Digits of its smallest coin: 2 for most, 0 for the yen. */
  readonly digits: number;
}

const currencyOf = keepBy(
  (code: string) => code,
  (code: string): Currency => {
    const format = new Intl.NumberFormat('en-US', {
      style: 'currency',
      currency: code,
      currencyDisplay: 'narrowSymbol',
    });
    const sign = format.formatToParts(0).find(({ type }) => type === 'currency')?.value ?? code;
    // Whoever types `F CFA` types a plain space, and amounts are read with plain ones.
    return { code, sign: sign.replaceAll(/\s/gu, ' '), digits: format.resolvedOptions().maximumFractionDigits ?? 2 };
  },
);

/** The currency in force. Source of signs and digits: CLDR and ISO 4217, as the JavaScript engine has them. */
export function currency(): Currency {
  return currencyOf(locale().currency);
}

/** Is there a currency of that code? */
export function isCurrency(code: string): boolean {
  return Intl.supportedValuesOf('currency').includes(code);
}

/** Digits with the sign of the currency in force, parted where the sign is letters: `$12`, `CHF 12`. */
export function withSign(digits: string): string {
  const { sign } = currency();
  return `${sign}${/\p{L}$/u.test(sign) ? '\u00a0' : ''}${digits}`;
}

/** The digits of an amount in the currency in force and whether it is signed: `$12`; other signs than the dollar's may stand behind, and
 *  the code for any: `12 €`, `EUR 12`. */
export function takeSign(written: string): { readonly digits: string; readonly isSigned: boolean } {
  const { sign, code } = currency();
  const signs = sign === '$' ? [sign] : [sign, code];
  const ahead = signs.find((one) => written.startsWith(one));
  if (ahead !== undefined) return { digits: written.slice(ahead.length).trim(), isSigned: true };
  const behind = sign === '$' ? undefined : signs.find((one) => written.endsWith(one));
  if (behind !== undefined) return { digits: written.slice(0, -behind.length).trim(), isSigned: true };
  return { digits: written, isSigned: false };
}

/** A sign that may stand behind an amount, for patterns. */
export function signPattern(): string {
  const { sign, code } = currency();
  return sign === '$' ? '(?!)' : `(?:${sign.replaceAll('.', String.raw`\.`)}|${code})`;
}

/** Does an amount name a currency that is not the house's: `€12`, `CAD 12`, `CA$12`, `12 EUR`, `£7.40 / sq ft`? Amounts of a house
 *  are all in its one currency. */
export function namesCurrency(text: string): boolean {
  const amount = text.split(/\/|\bper\b/u)[0]?.trim() ?? '';
  if (!/\d/u.test(amount)) return false;
  const { digits, isSigned } = takeSign(amount.replace(/^- ?/u, ''));
  if (isSigned && !/[\p{L}\p{Sc}]/u.test(digits)) return false;
  return (
    /[^$\P{Sc}]/u.test(amount) ||
    (/\$/u.test(amount) && currency().sign !== '$') ||
    /^\s*(?:[A-Z]{3}(?=[\s\d])|[A-Z]{1,3}\$)|\d\s*(?:[A-Z]{3}|euros?|pounds?)\s*$/u.test(amount)
  );
}

export function oneCurrency(): string {
  const [sum, rate] = [withSign('12,450'), withSign('7.40')];
  return `a house has one currency, and its amounts are written with ${currency().sign}: convert it, and write such as ${sum} or ${rate}`;
}
