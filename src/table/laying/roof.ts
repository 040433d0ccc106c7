import { knownAround } from '../../core/model/index.js';
import { col } from '../../sheet/index.js';
import { schedule } from '../schedule.js';
import { figure, sumOf, type Figure } from './figure.js';

interface Row {
  readonly room: string;
  readonly whole: Figure;
  readonly roof: Figure;
}

/** What of each ceiling lies under the roof: what is meant by roof-ceiling in a selection or a slot. */
export const roofCeilings = schedule<Row>({
  table: {
    id: 'roof-ceilings',
    caption: 'Ceilings under the roof, by room',
    named: 'room',
    rowId: ({ room }) => room,
    columns: [
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'words' }),
      col.ticked('whole', 'Ceiling, sq ft', ({ whole }) => whole),
      col.ticked('roof', 'Under the roof, sq ft', ({ roof }) => roof),
    ],
    sums: (rows) => [{ what: 'All ceilings', strong: true, cells: { roof: sumOf(rows.map(({ roof }) => roof)) } }],
    notes: () => [
      'Measured along the slope. Under the outside walls of a room above, a ceiling is not under the roof.',
    ],
  },
  rows: ({ book }) =>
    book.rooms.flatMap(({ slug, measure }): Row[] => {
      const roof = knownAround(measure)?.underRoof;
      return roof ? [{ room: slug, whole: figure(measure.ceiling.gross), roof: figure(roof.gross) }] : [];
    }),
});
