import type { TimberRow } from '../core/book/index.js';
import { col } from '../sheet/index.js';
import { asPrinted, printLength, printWeight, shown } from '../base/units/index.js';
import { schedule } from './schedule.js';
import { finishOf } from './scheduled.js';

/** Timbers as they are ordered: pieces with their ends, the lengths they are cut from, what one weighs. */
export const timbers = schedule<TimberRow>({
  table: {
    id: 'timbers',
    caption: 'Timber schedule',
    named: 'timber',
    rowId: ({ timber, place }) => `${timber.selection}-${place}`,
    columns: [
      col.words('timber', 'Timber', ({ name }) => name, { width: 'words' }),
      col.room('room', 'Room', ({ room }, names) => names.room(room), { under: 'timber' }),
      col.finish('product', 'Product', ({ timber }, names) => finishOf(timber, names), { width: 'words' }),
      col.words('section', 'Section', ({ section }) => section, { width: 'fit', brief: true }),
      col.count('count', 'Pieces', ({ count }) => count),
      col.length('clear', 'Clear', ({ clear }) => clear),
      col.words(
        'ends',
        'At the ends',
        ({ ends: [first, second] }) => (first + second === 0 ? '' : `${printLength(first)} and ${printLength(second)}`),
        { width: 'short' },
      ),
      col.length('length', 'Piece', ({ length }) => length, { brief: true }),
      col.words('stock', 'Cut from', ({ stock }) => stock.map(({ length }) => printLength(length)).join(' and '), {
        width: 'fit',
      }),
      col.amount('weight', 'Weight of one, lb', ({ pounds }) => pounds),
      col.amount('weightAll', 'Weight of all, lb', ({ pounds, count }) =>
        pounds === undefined ? undefined : pounds * count,
      ),
      col.words('joinery', 'Joinery', ({ joinery }) => joinery, { width: 'words' }),
    ],
    sums: (rows) => {
      const known = rows.flatMap(({ pounds, count }) => (pounds === undefined ? [] : [{ pounds, count }]));
      if (known.length === 0) return [];
      return [
        {
          what: `All timbers; the heaviest lift is ${printWeight(Math.max(...known.map(({ pounds }) => pounds)))}`,
          strong: true,
          cells: {
            count: { is: 'count', value: rows.reduce((sum, { count }) => sum + count, 0) },
            weightAll: {
              is: 'amount',
              // Of what is printed in the rows.
              value: known.reduce(
                (sum, { pounds, count }) => sum + asPrinted(shown(pounds * count, 'lb').amount, 1),
                0,
              ),
              digits: 1,
            },
          },
        },
      ];
    },
    notes: () => [
      'A piece is the clear length with what is added at its ends. It is cut from one length; none is joined from two.',
    ],
  },
  rows: ({ book }) => book.schedules.timbers,
});
