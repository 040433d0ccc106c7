import type { LookUp } from '../../core/book/index.js';
import { words } from '../../sheet/index.js';
import type { Block, Sheet } from '../../sheet/index.js';
import { capital, joinWords, printDay } from '../../base/units/index.js';
import { jointDecisions } from '../money/joint-decisions.js';
import { decisions } from './decisions.js';
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
      ...(look.book.decisions.length === 0 ? [] : [moved(look)]),
      { block: 'section', id: 'milestones-by-day', title: 'Milestones', of: [milestones.lay(look)] },
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
