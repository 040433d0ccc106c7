import type { Cents } from '../units/index.js';
import type { ContractStep, LedgerEntry } from './cost.js';

/** The way from the contract sum to today's total: each allowance that moves it, then each selection that does, then what
 *  shared packs move at places that stand at their standard. The last
 *  step is the total, and its running figure is the sum of all before it. */
export function contractSteps(
  contractSum: Cents,
  ledger: readonly LedgerEntry[],
  selections: readonly { readonly id: string; readonly words: string; readonly change: Cents }[],
  sharedPacks: Cents,
): ContractStep[] {
  let running: number = contractSum;
  const step = (what: string, kind: ContractStep['kind'], amount: Cents, of?: string): ContractStep => {
    running += amount;
    return { what, kind, amount, running: running as Cents, ...(of !== undefined && { of }) };
  };
  const first: ContractStep = { what: 'Contract sum', kind: 'contract', amount: contractSum, running: contractSum };
  const allowances = ledger
    .filter((entry) => entry.change !== 0)
    .map((entry) =>
      step(`${entry.name}: ${entry.change > 0 ? 'over' : 'under'} the allowance`, 'allowance', entry.change, entry.id),
    );
  const choices = selections
    .filter(({ change }) => change !== 0)
    .map(({ id, words, change }) => step(words, change > 0 ? 'upgrade' : 'credit', change, id));
  const shared = sharedPacks === 0 ? [] : [step('Whole packs shared between places', 'shared-packs', sharedPacks)];
  const total: ContractStep = {
    what: 'Total today',
    kind: 'total',
    amount: running as Cents,
    running: running as Cents,
  };
  return [first, ...allowances, ...choices, ...shared, total];
}
