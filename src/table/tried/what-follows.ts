import { lastMilestone, lookUp, type Book, type LookUp } from '../../core/book/index.js';
import { compareChoices, poundsWords, type ChoiceChanges, type NoticeChange } from '../../core/compare/index.js';
import { printWorkingDays } from '../../core/calendar/index.js';
import { counted, inLocale, printDay, printMoney, printMoneyChange, type Cents } from '../../base/units/index.js';
import { words, type Cell, type HouseBlock, type Place } from '../../sheet/index.js';
import { choicesTable, triedChoices, type TriedChoice } from './choices.js';
import { allowancesTable, stepsTable } from './money.js';
import { ordersTable } from './orders.js';
import { besidePricesWords, stillOpen } from './still-open.js';

/** What choices that are tried bring with them, ready to be shown: two whole Books held beside each other. */
export interface WhatFollows {
  readonly total: { readonly before: Cents; readonly after: Cents };
  /** `Total with 2 choices tried: $1,510,470.92, −$654.69 against $1,511,125.61 as it stands.` */
  readonly summary: string;
  /** Why it moves otherwise than the prices beside options say; empty where it does not. */
  readonly besidePrices: string;
  readonly facts: readonly Fact[];
  /** Those with rows. */
  readonly tables: readonly HouseBlock[];
  /** Cautions and findings of scope that come or go. */
  readonly notices: readonly { readonly title: string; readonly items: readonly Cell[] }[];
}

interface Fact {
  readonly label: string;
  readonly cell: Cell;
}

export interface Tried {
  /** As it stands, and with what is tried, for one day. */
  readonly from: Book;
  readonly to: Book;
  /** Ids of the selections at which something is tried. */
  readonly selections: readonly string[];
  /** Slugs of rooms whose pages are signed as they stand. */
  readonly signedRooms: readonly string[];
}

export function whatFollows(tried: Tried): WhatFollows {
  return inLocale(tried.to.house, () => follows(tried));
}

function follows({ from, to, selections, signedRooms }: Tried): WhatFollows {
  const [before, after] = [lookUp(from), lookUp(to)];
  const choices = triedChoices(before, after, selections);
  const changes = compareChoices(from, to);
  const total = { before: from.money.today, after: to.money.today };
  const tables = [
    choicesTable(choices, after),
    stepsTable(before, after),
    allowancesTable(before, after),
    ordersTable(before, after),
  ];
  return {
    total,
    summary: summaryOf(choices.length, total),
    besidePrices: besidePricesWords(stillOpen(after, selections)),
    facts: factsOf(choices, changes, after, signedRooms),
    tables: tables.filter(({ groups }) => groups.length > 0),
    notices: noticesOf(changes, after),
  };
}

function summaryOf(count: number, { before, after }: WhatFollows['total']): string {
  const moved = (after - before) as Cents;
  const against = moved === 0 ? 'no change' : printMoneyChange(moved, 'always');
  return `Total with ${counted(count, 'choice')} tried: ${printMoney(after, 'always')}, ${against} against ${printMoney(before, 'always')} as it stands.`;
}

function factsOf(
  choices: readonly TriedChoice[],
  { selections, trades }: ChoiceChanges,
  to: LookUp,
  signedRooms: readonly string[],
): WhatFollows['facts'] {
  const pounds = selections.reduce((sum, change) => sum + (change.pounds ?? 0), 0);
  const toInitial = [...new Set(choices.map(({ after }) => after.room))].filter((room) => signedRooms.includes(room));
  return [
    { label: 'End of the job', cell: words(endWords(choices, to)) },
    { label: 'Weight in place', cell: words(poundsWords(pounds)) },
    { label: 'Still open', cell: words(counted(openIn(to), 'choice')) },
    {
      label: 'Trades to tell',
      cell:
        trades.length === 0
          ? words('none')
          : { is: 'list', of: trades.map(({ trade, name }) => words(name, { to: 'trade', id: trade })), parted: ', ' },
    },
    ...unsettledFacts(choices, to),
    ...(toInitial.length > 0 ? [{ label: 'Pages to initial again', cell: roomsCell(toInitial, to) }] : []),
  ];
}

function roomsCell(rooms: readonly string[], to: LookUp): Cell {
  return { is: 'list', of: rooms.map((room) => words(to.roomTitle(room), { to: 'room', id: room })), parted: ', ' };
}

/** Why a choice on an allowance may move nothing yet. */
function unsettledFacts(choices: readonly TriedChoice[], to: LookUp): WhatFollows['facts'] {
  const open = stillOpen(
    to,
    choices.map(({ after }) => after.id),
  );
  if (open.length === 0) return [];
  const names: Cell = {
    is: 'list',
    of: open.map(({ id, name }) => words(name, { to: 'allowance', id })),
    parted: ', ',
  };
  const then = words('what is left of it moves the total with the last choice on it');
  return [{ label: 'Not all decided', cell: { is: 'list', of: [names, then], parted: '; ' } }];
}

function openIn({ book }: LookUp): number {
  return book.selections.filter(({ state }) => state === 'open').length;
}

/** The job's last milestone, and what a choice that is late moves it to when it is made on the Book's day. */
function endWords(choices: readonly TriedChoice[], { book }: LookUp): string {
  const end = lastMilestone(book.calendar.milestones);
  if (!end) return 'no milestone is recorded';
  const moves = choices.flatMap(({ decision }) => (decision.moves ?? []).filter(({ id }) => id === end.id));
  const [latest] = moves.toSorted((a, b) => b.days - a.days);
  const planned = `${end.name}, ${printDay(end.date)}`;
  if (!latest) return `${planned}: nothing tried moves it`;
  return `${end.name} moves ${printWorkingDays(latest.days)}, to ${printDay(latest.to)}, with what is late already`;
}

const noticeTitles = {
  appears: 'Comes with it',
  goes: 'Is settled by it',
  changed: 'Reads otherwise with it',
} as const;

function noticesOf({ cautions, scope }: ChoiceChanges, look: LookUp): WhatFollows['notices'] {
  const lists = [
    ['To check before it is built', cautions, 'caution'],
    ['Who does what', scope, 'finding'],
  ] as const;
  return lists.flatMap(([of, notices, to]) =>
    (['appears', 'goes', 'changed'] as const).flatMap((kind) => {
      const items = notices.filter((notice) => notice.kind === kind).map((notice) => noticeCell(notice, to, look));
      return items.length === 0 ? [] : [{ title: `${of}. ${noticeTitles[kind]}:`, items }];
    }),
  );
}

/** One that comes with what is tried is on no page yet: its room is. */
function noticeCell(notice: NoticeChange, is: Place['to'], look: LookUp): Cell {
  const { id, room, title, from, to, then, kind } = notice;
  const place: Place = kind === 'appears' ? { to: 'room', id: room } : { to: is, id };
  const said = `${to ?? from ?? ''}${kind === 'goes' ? '' : ` ${then}`}`;
  return { is: 'list', of: [words(`${look.roomName(room)}: ${title}.`, place), words(said)], parted: ' ' };
}
