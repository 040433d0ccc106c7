import type { LookUp } from '../../core/book/index.js';
import { words, type Block, type Sheet } from '../../sheet/index.js';
import { byText, capital, joinWords, printDay, printMoney } from '../../base/units/index.js';
import { jointDecisions } from '../money/joint-decisions.js';
import { decisions } from './decisions.js';
import { lastDays } from './last-days.js';
import { milestones } from './milestones.js';

/** What is open by its day, then the milestones, as printed. */
export function decisionSheet(look: LookUp): Sheet {
  const { reviewDays } = look.book.calendar.rules;
  const lead = `What is still open, by the last day to decide without moving the work. Each day leaves ${reviewDays} working days for review.`;
  return {
    format: 'bookmatch/sheet/1',
    id: 'decisions',
    title: 'Decide-by calendar',
    paper: 'portrait',
    blocks: [
      { block: 'prose', tone: 'lead', of: [words(lead)] },
      stillOpen(look),
      ...lastDaySection(look),
      ...(look.book.decisions.length === 0 ? [] : [moved(look)]),
      {
        block: 'section',
        id: 'milestones-by-day',
        title: 'Milestones',
        of: [...criticalChain(look), milestones.lay(look)],
      },
    ],
  };
}

/** The same for a terminal: what the work waits for first. */
export function calendarBlocks(look: LookUp): readonly Block[] {
  return [
    milestones.lay(look),
    { block: 'section', id: 'still-open', title: 'Still open', of: [stillOpen(look)] },
    ...(look.book.decisions.length === 0 ? [] : [moved(look)]),
  ];
}

/** What is decided together, with the money. */
function moved(look: LookUp): Block {
  const told =
    'Choices on one allowance, or of one product that is bought together, are one decision: what each moves depends on the others. The cheapest and the dearest are priced as whole houses, with what is considered.';
  return {
    block: 'section',
    id: 'moved-by-decision',
    title: 'What each decision may move',
    of: [{ block: 'prose', tone: 'small', of: [words(told)] }, jointDecisions.lay(look)],
  };
}

/** What a day of the job costs, by the contract. */
export function dayCostWords({ book: { money } }: LookUp): string {
  if (money.dayCost === undefined) return 'The contract has no cost of a day.';
  return `A working day by which the job ends later costs ${printMoney(money.dayCost)} by the contract.`;
}

/** What a day later comes to, where something is open. */
function lastDaySection(look: LookUp): readonly Block[] {
  const table = lastDays.lay(look);
  if (table.groups.length === 0) return [];
  return [
    {
      block: 'section',
      id: 'last-days',
      title: 'What a day later comes to',
      of: [{ block: 'prose', tone: 'plain', of: [words(dayCostWords(look))] }, table],
    },
  ];
}

function criticalChain(look: LookUp): readonly Block[] {
  const said = criticalWords(look);
  return said === undefined ? [] : [{ block: 'prose', tone: 'plain', of: [words(said)] }];
}

/** The milestones that drive the last one, of those still to come; absent when all are done. */
export function criticalWords({ book }: LookUp): string | undefined {
  const chain = book.calendar.milestones.filter(({ float }) => float === 0);
  if (chain.length === 0) return undefined;
  const inOrder = chain.toSorted((a, b) => byText(a.date, b.date));
  return `What drives the last day, without a day to spare: ${inOrder.map(({ name }) => name).join(' → ')}.`;
}

function stillOpen(look: LookUp): Block {
  const table = decisions.lay(look);
  return table.groups.length > 0 ? table : { block: 'prose', tone: 'plain', of: [words('Nothing is open.')] };
}

/** Which days count as working days. */
export function dayRules({ book }: LookUp): Block {
  const { weekend, holidays, reviewDays, closed } = book.calendar.rules;
  const rules: readonly (readonly [string, string])[] = [
    ['No work on', joinWords(weekend.map(capital)) || 'no day of the week'],
    ['Holidays', holidays === 'us-federal' ? 'United States federal holidays' : 'none'],
    ['Review of a choice', `${reviewDays} working days`],
    ...closed.map(({ why, from, to }) => [why, `${printDay(from)} to ${printDay(to)}`] as const),
  ];
  return { block: 'facts', facts: rules.map(([label, text]) => ({ label, cell: words(text) })) };
}
