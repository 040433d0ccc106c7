import { knownAround } from '../../core/model/index.js';
import { col } from '../../sheet/index.js';
import { schedule } from '../schedule.js';
import { figure, roundedNote, sumOf, ticking, type Figure } from './figure.js';

interface Row {
  readonly room: string;
  readonly wall: string;
  readonly name: string;
  readonly whole: Figure;
  readonly outside: Figure;
  readonly openings: Figure;
  readonly net: Figure;
}

/** What of each wall stands outside: what is meant by outside-walls in a selection or a slot. */
export const outsideWalls = schedule<Row>({
  table: {
    id: 'outside-walls',
    caption: 'Walls that stand outside, by room',
    named: 'wall',
    rowId: ({ room, wall }) => `${room}-${wall}`,
    columns: [
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'words', brief: true }),
      col.words('wall', 'Wall', ({ name }) => name, { width: 'words' }),
      col.ticked('whole', 'Wall, sq ft', ({ whole }) => whole),
      col.ticked('outside', 'Outside, sq ft', ({ outside }) => outside),
      col.ticked('openings', 'Openings, sq ft', ({ openings }) => openings),
      col.ticked('net', 'Net, sq ft', ({ net }) => net),
    ],
    sums: (rows) => [
      {
        what: 'All walls',
        strong: true,
        cells: {
          outside: sumOf(rows.map(({ outside }) => outside)),
          openings: sumOf(rows.map(({ openings }) => openings)),
          net: sumOf(rows.map(({ net }) => net)),
        },
      },
    ],
    notes: () => [
      'Net: less openings to the outside alone. What is hidden by a breast or the like is in it.',
      roundedNote,
    ],
  },
  rows: ({ book }) =>
    book.rooms.flatMap(({ slug, measure }) =>
      (knownAround(measure)?.outside ?? []).map(({ id, name, gross, deductions }): Row => {
        const openings = deductions.reduce((sum, { kind, area }) => (kind === 'opening' ? sum + area : sum), 0);
        const [outside, net, taken] = ticking(gross, [gross - openings, openings]) as [Figure, Figure, Figure];
        const whole = measure.walls.find((wall) => wall.id === id)?.gross ?? gross;
        return { room: slug, wall: id, name, whole: figure(whole), outside, openings: taken, net };
      }),
    ),
});
