import type { JointDecision, LookUp } from '../../core/book/index.js';
import { col, quiet, type HouseTable } from '../../sheet/index.js';
import { decisionWords, pickedNames, pricedWords } from '../decision.js';
import { houseSchedule } from '../schedule.js';

export type DecisionRow = JointDecision & { readonly look: LookUp };

/** Its columns, whatever decisions are listed. */
export const decisionTable = {
  named: 'decision',
  rowId: ({ id }: DecisionRow) => id,
  columns: [
    col.day('decideBy', 'Decide by', ({ by }) => by),
    col.cell('words', 'decision', 'Decision', ({ look, ...decision }) => decisionWords(decision, look), {
      width: 'words',
    }),
    col.money('low', 'Cheapest', ({ low }) => low.change, { change: true, brief: true }),
    col.cell('words', 'lowOptions', 'Cheapest, with', ({ low, look }) => quiet(pickedNames(low.options, look)), {
      under: 'low',
    }),
    col.money('high', 'Dearest', ({ high }) => high.change, { change: true, brief: true }),
    col.cell('words', 'highOptions', 'Dearest, with', ({ high, look }) => quiet(pickedNames(high.options, look)), {
      under: 'high',
    }),
    col.words('priced', 'How it was priced', ({ priced }) => pricedWords[priced], { not: ['html', 'pdf', 'text'] }),
  ],
} as const satisfies Omit<HouseTable<DecisionRow>, 'id' | 'caption'>;

export const decisionRows = (look: LookUp): readonly DecisionRow[] =>
  look.book.decisions.map((decision) => ({ ...decision, look }));

/** What is open, in decisions, with what each moves at its cheapest and at its dearest. */
export const jointDecisions = houseSchedule<DecisionRow>(
  { ...decisionTable, id: 'joint-decisions', caption: 'What each decision may move of today’s total' },
  decisionRows,
);
