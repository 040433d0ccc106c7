import type { Cents } from '../units/index.js';
import type { ContractStep } from './cost.js';

/** The way from the contract sum first agreed to today's total by what was agreed: each approved change order, the current
 *  contract sum, and what no change order covers. The last step is the total. */
export function agreedSteps(
  contractSum: Cents,
  approved: readonly { readonly number: number; readonly title: string; readonly amount: Cents }[],
  today: Cents,
): ContractStep[] {
  let running: number = contractSum;
  const orders = approved.map(({ number, title, amount }): ContractStep => {
    running += amount;
    const what = `Change order ${number}: ${title}`;
    return { what, kind: 'change-order', of: String(number), amount, running: running as Cents };
  });
  const current = running as Cents;
  return [
    { what: 'Contract sum', kind: 'contract', amount: contractSum, running: contractSum },
    ...orders,
    { what: 'Current contract sum', kind: 'total', amount: current, running: current },
    {
      what: 'Change not covered by a change order',
      kind: 'not-covered',
      amount: (today - current) as Cents,
      running: today,
    },
    { what: 'Total today', kind: 'total', amount: today, running: today },
  ];
}
