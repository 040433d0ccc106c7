import type { BookSelection } from '../core/book/index.js';
import { col, layOutFor, words, type Cell, type Table, type TradeBlock } from '../sheet/index.js';
import { namesOf, needColumns, needRows, tradeTables, type NeedRow, type Schedule } from '../table/index.js';
import type { IsoDate } from '../base/units/index.js';
import { isBefore, othersAt } from './others.js';
import { forTrades } from './sieve.js';
import type { Work } from './work.js';
import { roomNumbers } from './words.js';

/** The schedules that the trade's record asks for. */
export function schedules({ look, trade }: Work): readonly TradeBlock[] {
  return trade.schedules
    .map((name) => tradeTables[name].layFor(look, trade.slug, forTrades))
    .filter(({ groups }) => groups.length > 0);
}

/** What the house buys for the trade, or uses up with it: its own name over its own list would say nothing. */
export function listOf(list: Schedule, caption: string, { look, trade }: Work): TradeBlock {
  const table = list.layFor(look, trade.slug, forTrades);
  return { ...table, caption: forTrades(caption), groups: table.groups.map(({ rows }) => ({ rows })) };
}

/** What others leave for the trade: what its products need of them. */
export function leftForYou({ look, trade }: Work): TradeBlock {
  const rows = needRows(look).filter(({ of }) => of === trade.slug);
  return layOutFor(
    needs('left-for-you', 'What others leave for you', ({ by }) => by),
    rows,
    namesOf(look),
    forTrades,
  );
}

/** What the trade leaves for others: what their products need of it. */
export function leftByYou({ look, trade }: Work): TradeBlock {
  const rows = needRows(look).filter(({ by }) => by === trade.slug);
  return layOutFor(
    needs('left-by-you', 'What you leave for others', ({ of }) => of),
    rows,
    namesOf(look),
    forTrades,
  );
}

/** By the other trade. */
function needs(id: string, caption: string, other: (row: NeedRow) => string): Table<NeedRow> {
  return {
    id,
    caption,
    named: 'what',
    rowId: ({ by, of, before, what }) => `${by}/${of}/${before}/${what}`,
    group: (row, names) => ({ title: names.trade(other(row)) }),
    columns: needColumns,
  };
}

/** A kind of work, with what others do before and after it on the same places. */
interface Step {
  readonly category: string;
  readonly section: string;
  readonly milestone: string;
  readonly day?: IsoDate;
  readonly rooms: readonly string[];
  readonly before: readonly string[];
  readonly after: readonly string[];
}

const order: Table<Step> = {
  id: 'steps',
  caption: 'Kinds of work in their order, with what others do on the same places',
  named: 'category',
  rowId: ({ category }) => category,
  columns: [
    col.words('category', 'Work', ({ category }) => category, { width: 'words' }),
    col.words('section', 'Section', ({ section }) => section, { under: 'category' }),
    col.day('day', 'On site by', ({ day }) => day, { width: 'short', brief: true }),
    col.words('milestone', 'For', ({ milestone }) => milestone, { under: 'day' }),
    col.words('rooms', 'Rooms', ({ rooms }) => rooms.join(', '), { width: 'words' }),
    col.lines('others', 'Others there', othersThere, { width: 'long' }),
  ],
};

function othersThere({ before, after }: Step): readonly { readonly at: string; readonly cell: Cell }[] {
  return [
    ...(before.length > 0 ? [{ at: 'before', cell: words(before.join(', ')) }] : []),
    ...(after.length > 0 ? [{ at: 'after', cell: words(after.join(', ')) }] : []),
  ];
}

/** The trade's kinds of work in working order. */
export function steps(work: Work): TradeBlock {
  const rows = work.categories.flatMap((category): readonly Step[] => {
    const own = work.selections.filter(
      (selection) => selection.category === category.slug && selection.state !== 'none',
    );
    return own.length === 0 ? [] : [stepOf(category.slug, own, work)];
  });
  return layOutFor(order, rows, namesOf(work.look), forTrades);
}

function stepOf(slug: string, own: readonly BookSelection[], work: Work): Step {
  const { look } = work;
  const category = look.category(slug);
  const met = othersAt(work, own);
  const saidOf = (isEarlier: boolean) => [
    ...new Set(
      met
        .filter((other) => isBefore(work, other.category, slug) === isEarlier)
        .map((other) => `${look.categoryName(other.category)} (${look.tradeName(other.trade)})`),
    ),
  ];
  const neededAt = category?.neededAt ?? '';
  const milestone = look.book.calendar.milestones.find(({ id }) => id === neededAt);
  return {
    category: look.categoryName(slug),
    section: category?.section ?? '',
    milestone: look.milestoneName(neededAt),
    ...(milestone && { day: milestone.date }),
    rooms: roomNumbers(
      own.map(({ room }) => room),
      look,
    ),
    before: saidOf(true),
    after: saidOf(false),
  };
}
