import type { BookMoney } from '../../core/book/index.js';
import { money as amount, words, type Block } from '../../sheet/index.js';
import { printPercent } from '../../base/units/index.js';
import { creditMarkupText, markupOnText, markupText, taxText } from '../../core/price/index.js';

/** What the contract says of money. */
export const contractRules = (money: BookMoney): Block => ({
  block: 'facts',
  facts: [
    { label: 'Sales tax', cell: words(money.tax.map(taxText).join('; ')) },
    { label: 'Mark-up on what goes over an allowance or a standard', cell: words(markupText(money)) },
    { label: 'Mark-up is figured on', cell: words(markupOnText(money)) },
    {
      label: 'Returned of what stays under',
      cell: words(`${printPercent(money.creditReturns)}, ${creditMarkupText(money)}`),
    },
    ...(money.fee
      ? [{ label: 'Contractor’s fee', cell: words(`${printPercent(money.fee)} of what the cost changes, either way`) }]
      : []),
    {
      label: 'Installing what the owner furnishes',
      cell: words(money.ownerFurnishedInstall === 'contract' ? 'in the contract' : 'paid by the owner'),
    },
    { label: 'Contingency', cell: amount(money.contingency) },
    { label: 'Rounding', cell: words(money.rounding) },
  ],
});
