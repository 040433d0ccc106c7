import type { BookIssue } from '../../core/book/index.js';
import { col, nothing, quiet, words, type Cell } from '../../sheet/index.js';
import { capital, counted, printDay, shortDigest } from '../../base/units/index.js';
import { schedule } from '../schedule.js';

/** The issued versions, with who signed each. */
export const issues = schedule<BookIssue>({
  table: {
    id: 'issue-list',
    caption: 'Issued versions',
    named: 'issue',
    anchor: 'issue',
    rowId: ({ number }) => String(number),
    columns: [
      col.mark(
        'issue',
        'Issue',
        ({ number, source }) => ({ text: String(number), place: { to: 'record', id: source } }),
        { width: 'fit' },
      ),
      col.words('purpose', 'For', ({ purpose }) => purpose, { width: 'short' }),
      col.day('date', 'Date', ({ date }) => date),
      col.mark('digest', 'Digest', ({ digest }) => shortDigest(digest)),
      col.cell('lines', 'signed', 'Signed', signedBy, { width: 'long' }),
      col.words('note', 'Note', noteOf, { width: 'long' }),
    ],
  },
  rows: ({ book }) => book.issues,
});

/** What a reader must know of it before anything else. */
function noteOf({ void: taken, anyway }: BookIssue): string {
  return [
    ...(taken ? [`Void since ${printDay(taken.on)}, ${taken.by}: ${taken.why}`] : []),
    ...(anyway ? [`Issued although ${counted(anyway.despite.length, 'point')} stood in the way: ${anyway.why}`] : []),
  ].join(' ');
}

function signedBy({ signatures }: BookIssue): Cell {
  if (signatures.length === 0) return quiet('not signed');
  const of = signatures.map(({ role, name, on, how }) => {
    const parts: readonly Cell[] = [words(name), { is: 'day', day: on }, how === 'hand' ? words('by hand') : nothing];
    const cell: Cell = { is: 'list', of: parts.filter(({ is }) => is !== 'nothing'), parted: ', ' };
    return { at: `${capital(role)}:`, cell };
  });
  return { is: 'lines', of };
}
