import {
  groupBy,
  type FinishGroup,
  type FinishKey,
  type FinishNote,
  type FinishRow,
  type LookUp,
} from '../core/book/index.js';
import { scheduleColumns, type ScheduleColumn } from '../core/model/index.js';
import { col, words, type Cell, type Column, type Finish, type Names, type Width } from '../sheet/index.js';
import { capital, lower } from '../base/units/index.js';
import { saidOnce } from './places-of.js';
import { schedule } from './schedule.js';
import { finishOf } from './scheduled.js';
import { sharePlace } from './share-place.js';

type Finishes = FinishGroup['finishes'];

const widths: Readonly<Record<ScheduleColumn, Width>> = {
  floor: 'fit',
  base: 'fit',
  walls: 'words',
  ceiling: 'short',
  trim: 'short',
};

/** One line for each room: keys of its finishes in working order, walls told apart where they differ. */
export const finishes = schedule<FinishRow>({
  table: {
    id: 'finish',
    caption: 'Finishes by room',
    named: 'room',
    rowId: ({ room }) => room,
    columns: [
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'short' }),
      ...scheduleColumns.map((column): Column<FinishRow> =>
        col.lines(column, capital(column), ({ cells }, names) => cells[column].map((group) => groupOf(group, names)), {
          width: widths[column],
        }),
      ),
      col.span('height', 'Ceiling height', ({ lowest, highest }) => ({ from: lowest, to: highest }), { brief: true }),
      col.list('remarks', 'Remarks', ({ notes }) => notes.map(remarkOf), { width: 'fit' }),
    ],
    notes: emptyNotes,
  },
  rows: (look, trade) => {
    const told = new Set(notesFor(look, trade).map(({ number }) => number));
    const { rows } = look.book.schedules.finish;
    return rows.map((row) => ({ ...row, notes: row.notes.filter((number) => told.has(number)) }));
  },
});

/** Why no finish stands in any room. */
function emptyNotes(rows: readonly FinishRow[]): readonly string[] {
  const isEmpty = rows.every(({ cells }) => scheduleColumns.every((column) => cells[column].length === 0));
  if (!isEmpty || rows.length === 0) return [];
  const columns = scheduleColumns.join(', ');
  return [
    `No kind of finish that is selected says where it stands here: write schedule: with ${columns} or place in its record in content/categories/.`,
  ];
}

/** What each key means. */
export const finishKeys = schedule<FinishKey>({
  table: {
    id: 'finish-keys',
    caption: 'Keys of the room finish schedule',
    named: 'key',
    anchor: 'key',
    rowId: ({ key }) => key,
    columns: [
      col.mark('key', 'Key', ({ key }) => key, { width: 'fit' }),
      col.words('finish', 'Finish', ({ name, option }) => ({ text: name, place: { to: 'option', id: option } }), {
        width: 'long',
        brief: true,
      }),
      col.words('kind', 'Kind', ({ category }, names) => names.category(category), { width: 'words' }),
      col.words('product', 'Maker and model', ({ product }) => product, { width: 'long' }),
      col.words('section', 'Section', ({ section }) => section, { width: 'fit' }),
    ],
  },
  rows: ({ book }) => book.schedules.finish.legend,
});

export const finishRemarks = schedule<FinishNote>({
  table: {
    id: 'finish-remarks',
    caption: 'Remarks of the room finish schedule',
    named: 'number',
    anchor: 'remark',
    rowId: ({ number }) => String(number),
    columns: [
      col.mark('number', 'No.', ({ number }) => String(number), { width: 'fit' }),
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'short', brief: true }),
      col.words('place', 'Place', ({ placeText }) => saidOnce(placeText), { width: 'short', brief: true }),
      col.words('remark', 'Remark', ({ text }) => text, { width: 'long' }),
    ],
  },
  rows: notesFor,
});

/** All remarks, or those that concern a trade: of its own work, and of work at the same places. Their numbers stay. */
function notesFor({ book, selection }: LookUp, trade?: string): readonly FinishNote[] {
  const { notes } = book.schedules.finish;
  if (trade === undefined) return notes;
  const own = groupBy(
    book.selections.filter((one) => one.trade === trade && one.state !== 'none'),
    ({ room }) => room,
  );
  return notes.filter(({ selection: id }) => {
    const of = selection(id);
    return of !== undefined && (of.trade === trade || (own.get(of.room) ?? []).some((one) => sharePlace(one, of)));
  });
}

const remarkOf = (number: number): Cell => words(String(number), { to: 'remark', id: String(number) });

/** Keys of places that are finished alike, and which places where they differ within the room. */
function groupOf({ at, finishes: own }: FinishGroup, names: Names): { readonly cell: Cell; readonly after?: string } {
  const all = own.flatMap((one) => {
    const finish = finishOf(one, names);
    const kind = own.length > 1 ? kindOf(one, names) : undefined;
    return finish ? [{ ...finish, ...(kind !== undefined && { kind }) }] : [];
  });
  const parted = all.some(({ key }) => key === undefined) ? ', ' : ' ';
  const cell: Cell = { is: 'list', of: all.map((finish, index) => keyOf(finish, all.slice(index + 1))), parted };
  return at === '' ? { cell } : { cell, after: saidOnce(at) };
}

function kindOf({ standing, selection }: Finishes[number], names: Names): string | undefined {
  if (standing !== 'open' && standing !== 'none') return undefined;
  const [, category = ''] = selection.split('/');
  return lower(names.category(category));
}

/** A key alone; how urgent it is stands after the last of those that are alike. */
function keyOf({ urgency, ...finish }: Finish, later: readonly Finish[]): Cell {
  const isLast = urgency !== undefined && later.every((other) => other.urgency !== urgency);
  return { is: 'finish', ...finish, keyOnly: true, ...(isLast && { urgency }) };
}
