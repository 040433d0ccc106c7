import type { JointDecision, LookUp } from '../../core/book/index.js';
import { col, quiet, type HouseTable } from '../../sheet/index.js';
import { decisionWords, pickedNames, pricedWords } from '../decision.js';
import { houseSchedule } from '../schedule.js';
import { dueNext } from '../summary/due.js';

type Row = JointDecision & { readonly look: LookUp };

const table = {
  named: 'decision',
  rowId: ({ id }: Row) => id,
  columns: [
    col.day('decideBy', 'Decide by', ({ by }) => by),
    col.cell('words', 'decision', 'Decision', ({ look, ...decision }) => decisionWords(decision, look), {
      width: 'words',
    }),
    col.money('low', 'Cheapest', ({ low }) => low.change, { change: true }),
    col.cell('words', 'lowOptions', 'Cheapest, with', ({ low, look }) => quiet(pickedNames(low.options, look)), {
      under: 'low',
    }),
    col.money('high', 'Dearest', ({ high }) => high.change, { change: true }),
    col.cell('words', 'highOptions', 'Dearest, with', ({ high, look }) => quiet(pickedNames(high.options, look)), {
      under: 'high',
    }),
    col.words('priced', 'How it was priced', ({ priced }) => pricedWords[priced], { not: ['html', 'pdf', 'text'] }),
  ],
} as const satisfies Omit<HouseTable<Row>, 'id' | 'caption'>;

const rowsOf = (look: LookUp): readonly Row[] => look.book.decisions.map((decision) => ({ ...decision, look }));

/** What is open, in decisions, with what each moves at its cheapest and at its dearest. */
export const jointDecisions = houseSchedule<Row>(
  { ...table, id: 'joint-decisions', caption: 'What each decision may move of today’s total' },
  rowsOf,
);

/** Of these what is due next. */
export const dueDecisions = houseSchedule<Row>(
  { ...table, id: 'due-decisions', caption: 'To decide next, and what it may move of today’s total' },
  (look) => rowsOf(look).filter(({ by }) => by <= (dueNext(look)?.by ?? '')),
);
