import type { BookHouseAlternative } from '../../core/book/index.js';
import { describeSlack, printWorkingDays } from '../../core/calendar/index.js';
import { col, quiet } from '../../sheet/index.js';
import { counted, printSize, printDay, printMoney, type Cents } from '../../base/units/index.js';
import { houseSchedule } from '../schedule.js';
import { todayTitle } from './cells.js';

/** A whole house: as it stands, or with an alternative. */
interface House {
  readonly id: string;
  readonly name: string;
  readonly total: Cents;
  readonly open: number;
  /** Absent for the house as it stands. */
  readonly with?: BookHouseAlternative;
}

/** The house as it stands today, and each alternative beside it. */
export const alternatives = houseSchedule<House>(
  {
    id: 'alternatives',
    caption: 'The house as it stands, and with each alternative',
    named: 'house',
    rowId: ({ id }) => id,
    strong: ({ with: one }) => one === undefined,
    columns: [
      col.words('house', 'House', ({ name, with: one }) => (one ? { text: name, place: placeOf(one) } : name), {
        width: 'words',
      }),
      col.words('drawnUp', 'Drawn up', ({ with: one }) => drawnUp(one), { under: 'house' }),
      col.words('file', 'Name to type', ({ with: one }) => one?.slug, { under: 'house', not: ['html', 'pdf'] }),
      col.money('total', 'Total', ({ total }) => total),
      col.money('change', 'Against today', ({ with: one }) => one?.change, { change: true }),
      col.day('decideBy', 'First last day', ({ with: one }) => one?.decideBy),
      col.words('days', 'Days', ({ with: one }) => one && dayWords(one), { under: 'decideBy', width: 'words' }),
      col.count('stillOpen', 'Still open', ({ open }) => open),
      col.exact(0)('weight', 'Weight of its lines, lb', ({ with: one }) => one?.pounds),
      col.exact(0)('weightToday', 'Of these today, lb', ({ with: one }) => one?.poundsToday, {
        not: ['html', 'pdf', 'text'],
      }),
      col.cell(
        'words',
        'weightBefore',
        'Today',
        ({ with: one }) => quiet(one ? `${printSize(one.poundsToday, 'lb', 0)} today` : ''),
        { under: 'weight' },
      ),
      col.words('cautions', 'Cautions', ({ with: one }) => one && cautionCount(one), { width: 'short' }),
    ],
  },
  ({ book }) => [
    {
      id: 'today',
      name: todayTitle,
      total: book.money.today,
      open: book.selections.filter(({ state }) => state === 'open').length,
    },
    ...book.alternatives.map((one) => ({ id: one.slug, name: one.name, total: one.total, open: one.open, with: one })),
  ],
);

const placeOf = ({ slug }: BookHouseAlternative) => ({ to: 'alternative', id: slug }) as const;

function drawnUp(one: BookHouseAlternative | undefined): string {
  return [one?.by, one?.on && printDay(one.on)].filter((text) => text !== undefined).join(', ');
}

/** `12 working days left`; `2 choices late: decided today, the job ends 6 working days later, $3,900`. */
export function dayWords({ slack, late, endMoves, delayCost }: BookHouseAlternative): string {
  if (slack === undefined) return '';
  if (late === 0) return describeSlack(slack);
  const cost = delayCost === undefined ? '' : `, ${printMoney(delayCost)} by the contract`;
  const end = endMoves === 0 ? 'the job ends no later' : `the job ends ${printWorkingDays(endMoves)} later${cost}`;
  return `${counted(late, 'choice')} late: decided today, ${end}`;
}

function cautionCount({ cautions, cautionsGone }: BookHouseAlternative): string {
  const parts = [
    ...(cautions.length > 0 ? [`${cautions.length} more`] : []),
    ...(cautionsGone.length > 0 ? [`${cautionsGone.length} fewer`] : []),
  ];
  return parts.join(', ') || 'as today';
}
