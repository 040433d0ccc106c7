import type { Contract } from '../model/index.js';
import { printDay, printMoney, type Cents } from '../../base/units/index.js';
import type { ContractStep, LedgerEntry } from './cost.js';
import type { NetStep } from './markup.js';

/** A selection as a step: its words, what it changes, and why. */
export interface SelectionStep {
  readonly id: string;
  readonly words: string;
  readonly change: Cents;
  readonly why: string;
}

/** The way from the contract sum to today's total: each allowance that moves it, then each selection that does, then what
 *  shared packs move at places that stand at their standard, then mark-up and fee on the net of these. The last step is the
 *  total, and its running figure is the sum of all before it. */
export function contractSteps(
  contract: Contract,
  ledger: readonly LedgerEntry[],
  selections: readonly SelectionStep[],
  sharedPacks: Cents,
  onNet: readonly NetStep[],
): ContractStep[] {
  let running: number = contract.sum;
  const step = (what: string, kind: ContractStep['kind'], amount: Cents, why: string, of?: string): ContractStep => {
    running += amount;
    return { what, kind, amount, running: running as Cents, why, ...(of !== undefined && { of }) };
  };
  const first: ContractStep = {
    what: 'Contract sum',
    kind: 'contract',
    amount: contract.sum,
    running: contract.sum,
    why: `as signed on ${printDay(contract.date)}`,
  };
  const allowances = ledger
    .filter((entry) => entry.change !== 0)
    .map((entry) => {
      const what = `${entry.name}: ${entry.change > 0 ? 'over' : 'under'} the allowance`;
      return step(what, 'allowance', entry.change, allowanceReason(entry), entry.id);
    });
  const choices = selections
    .filter(({ change }) => change !== 0)
    .map(({ id, words, change, why }) => step(words, change > 0 ? 'upgrade' : 'credit', change, why, id));
  const packsWhy =
    'choices elsewhere leave more or fewer whole packs and less or more freight to places at their standard';
  const shared =
    sharedPacks === 0 ? [] : [step('Whole packs shared between places', 'shared-packs', sharedPacks, packsWhy)];
  const net = onNet.map(({ what, kind, amount, why, of }) => step(what, kind, amount, why, of));
  const total: ContractStep = {
    what: 'Total today',
    kind: 'total',
    amount: running as Cents,
    running: running as Cents,
    why: 'the sum of all steps above',
  };
  return [first, ...allowances, ...choices, ...shared, ...net, total];
}

function allowanceReason({ amount, committed, markup, retained, overage, lines }: LedgerEntry): string {
  const exact = (cents: number) => printMoney(cents as Cents, 'always');
  const paid = lines.filter(({ computed }) => computed !== undefined);
  const invoiced = paid.reduce((total, { covered }) => total + covered, 0);
  const drawn = `${exact(committed)} drawn${paid.length === 0 ? '' : `, ${exact(invoiced)} of it as invoiced,`}`;
  const sum = `${drawn} less ${exact(amount)}`;
  if (overage > 0) return markup === 0 ? sum : `${sum}, plus ${exact(markup)} mark-up`;
  const texts = [
    ...(retained === 0 ? [] : [`${exact(retained)} stays with the builder`]),
    ...(markup === 0 ? [] : [`${exact(-markup)} mark-up returns`]),
  ];
  return [`${sum}, every choice made`, ...texts].join('; ');
}
