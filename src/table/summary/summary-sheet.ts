import type { LookUp } from '../../core/book/index.js';
import { countedInWords, printDay } from '../../base/units/index.js';
import { words, type Block, type Sheet } from '../../sheet/index.js';
import { allowances } from '../money/allowances.js';
import { agreedSteps } from '../money/contract-steps.js';
import { dueDecisions } from './due-decisions.js';
import { dueNext, headline, type Due } from './due.js';
import { needsALook } from './needs-a-look.js';

/** The house on one sheet: what to decide next, where the money stands, what needs a look. */
export function summarySheet(look: LookUp): Sheet {
  const due = dueNext(look);
  const said = headline(due);
  const counts = needsALook(look);
  return {
    format: 'bookmatch/sheet/1',
    id: 'summary',
    title: 'Where the house stands',
    paper: 'portrait',
    blocks: [
      { block: 'prose', tone: 'lead', of: [words([said.due, said.late].filter((each) => each !== '').join(' '))] },
      ...(due ? [dueDecisions.lay(look), ...later(due, look)] : []),
      { block: 'section', id: 'summary-money', title: 'The contract', of: [agreedSteps.lay(look)] },
      ...(look.book.money.allowances.length === 0
        ? []
        : [{ block: 'section', id: 'summary-allowances', title: 'Allowances', of: [allowances.lay(look)] } as const]),
      ...(counts.length === 0
        ? []
        : [
            {
              block: 'section',
              id: 'summary-look',
              title: 'Needs a look',
              of: counts.map(({ count, what, of }): Block => ({
                block: 'prose',
                tone: 'small',
                of: [words(`${count} ${what}${of === '' ? '' : `: ${of.replace(/\.$/u, '')}`}.`)],
              })),
            } as const,
          ]),
    ],
  };
}

/** How much is open after that. */
function later(due: Due, look: LookUp): readonly Block[] {
  const days = look.book.decisions.filter(({ by }) => by > due.by).map(({ by }) => by);
  const [next] = days;
  if (next === undefined) return [];
  const said = `${countedInWords(days.length, 'decision')} more later, the next by ${printDay(next)}.`;
  return [{ block: 'prose', tone: 'small', of: [words(said)] }];
}
