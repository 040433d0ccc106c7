import type { OpeningRow } from '../core/book/index.js';
import { isDownToFloor } from '../core/model/index.js';
import { capital, printLength } from '../base/units/index.js';
import { col } from '../sheet/index.js';
import { schedule } from './schedule.js';
import { shapeOf } from './shape-of.js';
import { trimOf } from './scheduled.js';

const kinds = { window: 'Windows', cased: 'Cased openings', open: 'Open passages' } as const;

/** Windows, cased openings and open passages, each once. */
export const openings = schedule<OpeningRow>({
  table: {
    id: 'openings',
    caption: 'Windows, cased openings and open passages',
    named: 'mark',
    anchor: 'opening',
    rowId: ({ mark }) => mark,
    group: ({ kind }) => ({ title: kinds[kind] }),
    columns: [
      col.mark('mark', 'Mark', ({ mark }) => mark, { width: 'fit' }),
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'words', brief: true }),
      col.words('wall', 'Wall', ({ wall }) => wall, { width: 'fit', brief: true }),
      col.room('to', 'To', ({ to }, names) => names.room(to), { width: 'words' }),
      col.length('width', 'Width', ({ width }) => width, { brief: true }),
      col.length('height', 'Height', ({ height }) => height),
      col.words('shape', 'Shape', (row) => shapeOf(row), { under: 'width' }),
      col.length('sill', 'Sill', (row) => (isDownToFloor(row) ? undefined : row.sill)),
      col.length('head', 'Head', ({ head }) => head),
      col.amount('area', 'Area, sq ft', ({ area }) => area),
      col.lines('trim', 'Trim', ({ trim }, names) => trimOf(trim, names), { width: 'words' }),
      col.words('remarks', 'Remarks', ({ note }) => note, { width: 'words' }),
      col.words('plumb', 'Leaning wall', ({ plumb }) => plumb && leaningWords(plumb), { under: 'remarks' }),
      col.words('glass', 'Glass', ({ glass }) => glass && `${capital(glass)} glass`, { under: 'remarks' }),
    ],
  },
  rows: ({ book }) => {
    const { openings } = book.schedules;
    return (['window', 'cased', 'open'] as const).flatMap((kind) => openings.filter((row) => row.kind === kind));
  },
});

/** Sizes on a wall that leans go along it. */
function leaningWords({ sill, head }: NonNullable<OpeningRow['plumb']>): string {
  return `On a wall that leans: sill, height and head along it; plumb, from ${printLength(sill)} to ${printLength(head)} above the floor`;
}
