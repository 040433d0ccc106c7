import type { ChangeOrder } from '../model/index.js';
import { printDay, type Cents } from '../../base/units/index.js';
import type { ContractStep } from './cost.js';

/** The way from the contract sum first agreed to today's total by what was agreed: each approved change order, the current
 *  contract sum, and what no change order covers. The last step is the total. */
export function agreedSteps(
  contractSum: Cents,
  approved: readonly Pick<ChangeOrder, 'number' | 'title' | 'amount' | 'decidedOn' | 'decidedBy'>[],
  today: Cents,
): ContractStep[] {
  let running: number = contractSum;
  const orders = approved.map(({ number, title, amount, decidedOn = '', decidedBy = '' }): ContractStep => {
    running += amount;
    const what = `Change order ${number}: ${title}`;
    const why = `approved ${printDay(decidedOn)}, ${decidedBy}`;
    return { what, kind: 'change-order', of: String(number), amount, running: running as Cents, why };
  });
  const current = running as Cents;
  return [
    { what: 'Contract sum', kind: 'contract', amount: contractSum, running: contractSum, why: 'as first agreed' },
    ...orders,
    { what: 'Current contract sum', kind: 'total', amount: current, running: current, why: 'what is agreed now' },
    {
      what: 'Change not covered by a change order',
      kind: 'not-covered',
      amount: (today - current) as Cents,
      running: today,
      why: 'what the records hold beyond it',
    },
    {
      what: 'Total today',
      kind: 'total',
      amount: today,
      running: today,
      why: 'contract sum with every choice made so far',
    },
  ];
}
