import type { BookMoney } from '../../core/book/index.js';
import { money as amount, words, type Block } from '../../sheet/index.js';
import { joinWords, printPercent } from '../../base/units/index.js';

/** What the contract says of money. */
export const contractRules = (money: BookMoney): Block => ({
  block: 'facts',
  facts: [
    { label: 'Sales tax', cell: words(`${printPercent(money.tax.rate)} of ${joinWords(money.tax.on)}`) },
    {
      label: 'Mark-up on what goes over an allowance or a standard',
      cell: words(printPercent(money.overageMarkup)),
    },
    {
      label: 'Returned of what stays under',
      cell: words(`${printPercent(money.creditReturns)}, ${money.creditMarkup ? 'with' : 'without'} mark-up`),
    },
    {
      label: 'Installing what the owner furnishes',
      cell: words(money.ownerFurnishedInstall === 'contract' ? 'in the contract' : 'paid by the owner'),
    },
    { label: 'Contingency', cell: amount(money.contingency) },
    { label: 'Rounding', cell: words(money.rounding) },
  ],
});
