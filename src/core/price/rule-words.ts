import type { Contract, TaxRate } from '../model/index.js';
import { joinWords, printPercent } from '../../base/units/index.js';

/** The contract's rules of money in words. */

/** '6.25 % of material and freight', 'State 6.25 % of material'. */
export function taxText({ authority, rate, on }: TaxRate): string {
  return `${authority === undefined ? '' : `${authority} `}${printPercent(rate)} of ${joinWords(on) || 'nothing'}`;
}

/** 'each addition by itself'. */
export function markupOnText({ markupOn }: Pick<Contract, 'markupOn'>): string {
  return {
    'each-line': 'each addition by itself',
    net: 'the net of a change order: additions less deductions, where more is added',
  }[markupOn];
}

/** '15 %', or '15 % over an allowance, 10 % on other work'. */
export function markupText({ overageMarkup, workMarkup }: Pick<Contract, 'overageMarkup' | 'workMarkup'>): string {
  const [over, work] = [printPercent(overageMarkup), printPercent(workMarkup)];
  return over === work ? over : `${over} over an allowance, ${work} on other work`;
}

/** 'without mark-up', 'with as much mark-up as would have been added', 'with 5 % mark-up'. */
export function creditMarkupText({ creditMarkup }: Pick<Contract, 'creditMarkup'>): string {
  if (creditMarkup === false) return 'without mark-up';
  if (creditMarkup === 'as-added') return 'with as much mark-up as would have been added';
  return `with ${printPercent(creditMarkup)} mark-up`;
}
