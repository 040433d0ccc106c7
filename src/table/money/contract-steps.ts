import type { LookUp } from '../../core/book/index.js';
import type { ContractStep } from '../../core/price/index.js';
import { counted } from '../../base/units/index.js';
import { houseSchedule } from '../schedule.js';
import { stepTable } from './step-table.js';

/** From the contract sum to today's total. Choices are one step here: the table of upgrades and credits has each of them, and the
 *  same sum at its foot. */
export const contractSteps = houseSchedule(
  stepTable('contract-steps', 'From the contract sum to today, each step and the running total'),
  foldedSteps,
);

const isChoice = ({ kind }: ContractStep): boolean => kind === 'upgrade' || kind === 'credit';

/** All choices as one step. */
export function foldedSteps({ book: { money, selections } }: LookUp): readonly ContractStep[] {
  const last = money.steps.findLast(isChoice);
  const choices = selections.filter(({ change }) => change !== 0).length;
  return money.steps.flatMap((step): ContractStep[] => {
    if (!isChoice(step)) return [step];
    if (step !== last) return [];
    const what = `Upgrades less credits: ${counted(choices, 'choice')}`;
    const why = 'each of them stands with the upgrades and credits, by room';
    return [{ what, kind: 'upgrade', amount: money.net, running: step.running, why }];
  });
}

/** The same by what was agreed: the contract sum, each approved change order, and what none covers. */
export const agreedSteps = houseSchedule(
  stepTable('agreed-steps', 'From the contract sum to today, by change order'),
  ({ book }) => book.money.agreed.steps,
);
