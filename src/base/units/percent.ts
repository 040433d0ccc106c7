import { printDecimal, readDecimal } from './decimal.js';
import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import type { Decimal } from './quantity.js';

/** Reads `7.25 %` into the share it is: 7.25 % is 0.0725, `{ amount: 725, scale: 4 }`. From 0 to 100 %. */
export function parsePercent(text: string): Reading<Decimal> {
  const written = plainText(text);
  const [, digits = '', sign = ''] = /^(-?[\d.,]+) ?(%|percent|per cent)?$/iu.exec(written) ?? [];
  const amount = readDecimal(digits);
  if (!amount) return unread(`'${text}' is not a percentage`, 'write a percentage such as 7.25 %');
  if (sign === '') {
    const share = amount.amount > 0 && amount.amount <= 10 ** amount.scale && amount.scale > 0;
    const meant = share
      ? `${digits} % or ${printDecimal({ amount: amount.amount * 100, scale: amount.scale })} %`
      : `${digits} %`;
    return unread(`'${text}' has no % sign`, `did you mean ${meant}?`);
  }
  if (amount.amount < 0) return unread(`'${text}' is less than nothing`);
  if (amount.amount > 100 * 10 ** amount.scale) return unread(`'${text}' is more than 100 %`);
  return read({ amount: amount.amount, scale: amount.scale + 2 });
}

/** `7.25 %`, `15 %`. */
export function printPercent({ amount, scale }: Decimal): string {
  const share = scale >= 2 ? { amount, scale: scale - 2 } : { amount: amount * 10 ** (2 - scale), scale: 0 };
  return `${printDecimal(share)} %`.replace('-', '−');
}
