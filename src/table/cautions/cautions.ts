import { cautionWords, sourceText, stateWords, type Caution } from '../../core/caution/index.js';
import { col, words } from '../../sheet/index.js';
import { schedule } from '../schedule.js';
import { saidOnce } from '../places-of.js';

/** Every caution, by room: what was seen, what its source says, whom to ask, and who accepts it. */
export const cautions = schedule<Caution>({
  table: {
    id: 'caution-register',
    caption: 'Register of cautions, by room',
    named: 'place',
    anchor: 'caution',
    rowId: ({ id }) => id,
    columns: [
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'short' }),
      col.words(
        'place',
        'Place',
        ({ id, placeText }) => ({ text: saidOnce(placeText), place: { to: 'caution', id } }),
        {
          width: 'short',
        },
      ),
      col.words('title', 'Caution', ({ title }) => title, { under: 'place' }),
      col.words('seen', 'Seen', ({ seen }) => seen, { width: 'words' }),
      col.words('says', 'What the source says', ({ says }) => says, { width: 'long' }),
      col.words('source', 'Source', ({ source }) => `${cautionWords.source}: ${sourceText(source)}`, { under: 'says' }),
      col.words(
        'locally',
        cautionWords.locally,
        ({ locally }) => (locally === '' ? undefined : `${cautionWords.locally}: ${locally}.`),
        { under: 'says' },
      ),
      col.words('ask', 'Ask', ({ ask }) => `${cautionWords.ask} ${ask}.`, { under: 'says' }),
      col.list('trades', 'For', ({ trades }, names) => trades.map((trade) => words(names.trade(trade))), {
        width: 'short',
      }),
      col.cell('words', 'status', 'Status', statusOf, { width: 'short' }),
      col.day('acceptedOn', 'Accepted on', ({ accepted }) => accepted?.on, { under: 'status' }),
      col.words('why', 'Why', ({ accepted }) => accepted?.why, { under: 'status' }),
      col.words('name', 'Name of this caution', ({ id }) => id, { not: ['html', 'pdf', 'text'] }),
    ],
  },
  rows: ({ book }) => book.cautions,
  trades: ({ trades }) => trades,
});

function statusOf(caution: Caution) {
  const text = stateWords(caution);
  return caution.accepted ? words(text) : ({ is: 'words', text, tone: 'strong' } as const);
}
