import type { BookSelection, LookUp } from '../../core/book/index.js';
import { describeDayAfter, type Decision } from '../../core/calendar/index.js';
import { col, layOut, quiet, type Cell, type HouseBlock, type HouseTable } from '../../sheet/index.js';
import { byText, joinWords, type Cents } from '../../base/units/index.js';
import { choiceWords } from '../choice.js';
import { namesOf } from '../names-of.js';
import { houseSchedule } from '../schedule.js';

/** The last day of some options of an open choice, and what the day after comes to. */
interface LastDay {
  readonly id: string;
  readonly choice: Cell;
  readonly decision: Decision;
  /** Names of the options whose last day it is; `all` when it is that of every one considered. */
  readonly options: string;
  readonly delayCost?: Cents;
}

const columns: HouseTable<LastDay>['columns'] = [
  col.day('lastDay', 'Last day', ({ decision }) => decision.by),
  col.words('options', 'For', ({ options }) => options, { width: 'long' }),
  col.words('why', 'Why this day', ({ decision }) => decision.reason, { under: 'options', width: 'long' }),
  col.words('dayAfter', 'The day after', ({ decision: { dayAfter } }) => dayAfter && describeDayAfter(dayAfter), {
    width: 'long',
  }),
  col.money('cost', 'Days of the job', ({ delayCost }) => delayCost),
];

const table: HouseTable<LastDay> = {
  id: 'last-days',
  caption: 'The last day of each option still considered, and what the day after comes to',
  named: 'options',
  rowId: ({ id, decision }) => `${id}-${decision.by}-${decision.milestone}`,
  columns,
};

const houseTable: HouseTable<LastDay> = {
  ...table,
  named: 'choice',
  columns: [
    ...columns.slice(0, 1),
    col.cell('words', 'choice', 'Choice', ({ choice }) => choice, { width: 'words' }),
    ...columns.slice(1),
  ],
};

/** Of every open choice, by day. */
export const lastDays = houseSchedule<LastDay>(houseTable, (look) =>
  look.book.selections
    .flatMap((selection) => lastDaysOf(selection, look))
    .sort((a, b) => byText(a.decision.by, b.decision.by)),
);

/** Of one open choice, by day: what waiting leaves, and what it costs. */
export function lastDaysHere(selection: BookSelection, look: LookUp): HouseBlock {
  return layOut(table, lastDaysOf(selection, look), namesOf(look));
}

/** One row for the options that share a day and what follows from it. */
function lastDaysOf({ id, state, category, alternatives }: BookSelection, look: LookUp): readonly LastDay[] {
  if (state !== 'open') return [];
  const groups = new Map<string, (typeof alternatives)[number][]>();
  for (const alternative of [...alternatives].sort((a, b) => byText(a.decision.by, b.decision.by))) {
    const { by, milestone } = alternative.decision;
    const key = `${by} ${milestone}`;
    groups.set(key, [...(groups.get(key) ?? []), alternative]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (!first) return [];
    const names = group.map(({ option }) => look.option(category, option)?.name ?? option);
    const all = group.length === alternatives.length && group.length > 1;
    const { decision, delayCost } = first;
    const options = all ? `All ${group.length} considered` : joinWords(names);
    return [{ id, choice: choiceWords(id, look), decision, options, ...(delayCost !== undefined && { delayCost }) }];
  });
}

/** What bears on the day of one choice, the earliest first, and what no longer does. */
export function boundsHere({ decision }: BookSelection, look: LookUp): HouseBlock {
  return layOut(boundTable, boundRows(decision), namesOf(look));
}

interface BoundRow {
  readonly by: Cell;
  readonly reason: string;
  readonly milestone: string;
  readonly lifted: string;
}

const boundTable: HouseTable<BoundRow> = {
  id: 'bounds',
  caption: 'What bears on the day, the earliest first',
  named: 'reason',
  rowId: ({ milestone, reason }) => `${milestone}-${reason}`,
  columns: [
    col.cell('day', 'by', 'Last day', ({ by }) => by),
    col.words('reason', 'What', ({ reason }) => reason, { width: 'long' }),
    col.words('lifted', 'Why no longer', ({ lifted }) => lifted, { under: 'reason', width: 'long' }),
    col.words('milestone', 'Milestone', ({ milestone }) => milestone, { width: 'words' }),
  ],
};

function boundRows({ bounds, lifted = [] }: Decision): readonly BoundRow[] {
  return [
    ...bounds.map(({ by, reason, milestoneName }): BoundRow => ({
      by: { is: 'day', day: by },
      reason,
      milestone: milestoneName,
      lifted: '',
    })),
    ...lifted.map(({ what, milestone, by }): BoundRow => ({
      by: quiet('no longer'),
      reason: what,
      milestone,
      lifted: by,
    })),
  ];
}
