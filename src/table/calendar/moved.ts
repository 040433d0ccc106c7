import type { LookUp } from '../../core/book/index.js';
import type { MovedDecision } from '../../core/calendar/index.js';
import { laterWords, type MilestoneChange } from '../../core/compare/index.js';
import { col, layOut, quiet, statusWords, type Cell, type HouseBlock, type Table } from '../../sheet/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { choiceWords } from '../choice.js';
import { idsAsNames, namesOf } from '../names-of.js';

const dayOr = (day: IsoDate | undefined, otherwise: string): Cell =>
  day === undefined ? quiet(otherwise) : { is: 'day', day };

const milestoneTable: Table<MilestoneChange> = {
  id: 'moved-milestones',
  caption: 'Milestones that moved',
  named: 'milestone',
  rowId: ({ id }) => id,
  columns: [
    col.words('milestone', 'Milestone', ({ name }) => name, { width: 'words' }),
    col.cell('day', 'was', 'Was', ({ from }) => dayOr(from, 'not there')),
    col.cell('day', 'now', 'Now', ({ to }) => dayOr(to, 'taken out')),
    col.words('moves', 'Moves', ({ days }) => (days === undefined ? '' : laterWords(days)), { width: 'words' }),
  ],
};

/** Milestones whose day is another now. */
export const movedMilestones = (rows: readonly MilestoneChange[]): HouseBlock =>
  layOut(milestoneTable, rows, idsAsNames);

type Row = MovedDecision & { readonly choice: Cell };

const decisionTable: Table<Row> = {
  id: 'moved-decisions',
  caption: 'Choices whose last day moves',
  named: 'choice',
  rowId: ({ id }) => id,
  columns: [
    col.cell('words', 'choice', 'Decide by', ({ choice }) => choice, { width: 'long' }),
    col.day('was', 'Was', ({ from }) => from),
    col.day('now', 'Now', ({ to }) => to),
    col.words('moves', 'Moves', ({ days }) => laterWords(days), { width: 'words' }),
    col.words('status', 'Status', statusOf, { width: 'words' }),
  ],
};

/** Open choices whose last day is another now; empty where none moves. */
export function movedDecisions(moved: readonly MovedDecision[], look: LookUp): HouseBlock {
  const rows = moved
    .filter(({ id }) => look.selection(id)?.state === 'open')
    .map((one) => ({ ...one, choice: choiceWords(one.id, look) }));
  return layOut(decisionTable, rows, namesOf(look));
}

function statusOf({ stateFrom, stateTo }: MovedDecision): string {
  const [from, to] = [stateFrom, stateTo].map((state) => (state === 'decided' ? 'Decided' : statusWords[state]));
  return from === to ? (to ?? '') : `${from ?? ''} → ${to ?? ''}`;
}
