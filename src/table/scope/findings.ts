import { findingWords, type ScopeFinding } from '../../core/scope/index.js';
import { col, words } from '../../sheet/index.js';
import { schedule } from '../schedule.js';

/** What nobody does, or two do, or was never chosen, the gravest first. */
export const findings = schedule<ScopeFinding>({
  table: {
    id: 'scope-findings',
    caption: 'Gaps, overlaps and what was never chosen, the gravest first',
    named: 'kind',
    anchor: 'finding',
    rowId: ({ id }) => id,
    columns: [
      // The one way to the record: which line that is says a terminal, and data.
      col.words(
        'kind',
        'Kind',
        ({ kind, source, line }) => ({ text: findingWords[kind], place: { to: 'record', id: source, line } }),
        { width: 'short' },
      ),
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'short', brief: true }),
      col.words('what', 'What was found', ({ what }) => what, { width: 'long', brief: true }),
      col.words('fix', 'What to do', ({ fix }) => fix, { width: 'long' }),
      col.list('trades', 'Trades', ({ trades }, names) => trades.map((trade) => words(names.trade(trade))), {
        width: 'short',
      }),
      col.words(
        'record',
        'Record',
        ({ source, line }) => ({ text: `${source}, line ${line}`, place: { to: 'record', id: source, line } }),
        { width: 'words', not: ['html', 'pdf'] },
      ),
    ],
  },
  rows: ({ book }) => book.scope.findings,
  trades: ({ trades }) => trades,
});
