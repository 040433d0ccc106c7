import { inLocale, locale } from '../base/units/index.js';
import type { MoneyCell } from './cell.js';

/** Does some work in the currency of an amount that names one of its own. */
export function inCurrency<T>({ currency }: Pick<MoneyCell, 'currency'>, work: () => T): T {
  return currency === undefined ? work() : inLocale({ ...locale(), currency }, work);
}
