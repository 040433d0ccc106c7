import type { LookUp } from '../../core/book/index.js';
import { elevationsOf } from '../../core/lay/index.js';
import type { LaidLevel } from '../../core/model/index.js';
import { lengthOf } from '../../base/geometry/index.js';
import { joinWords, type Length } from '../../base/units/index.js';
import { col } from '../../sheet/index.js';
import { schedule } from '../schedule.js';
import { figure, sumOf, type Figure } from './figure.js';

interface Row {
  readonly id: string;
  readonly level: string;
  readonly rooms: number;
  readonly net: Figure;
  readonly gross: Figure;
  readonly perimeter: Length;
  readonly toNext?: Length;
}

/** What each level covers. */
export const areas = schedule<Row>({
  table: {
    id: 'areas',
    caption: 'Areas by level',
    named: 'level',
    rowId: ({ id }) => id,
    columns: [
      col.words('level', 'Level', ({ level }) => level, { width: 'words' }),
      col.count('rooms', 'Rooms', ({ rooms }) => rooms),
      col.ticked('net', 'Net, sq ft', ({ net }) => net),
      col.ticked('gross', 'Gross, sq ft', ({ gross }) => gross),
      col.length('perimeter', 'Perimeter', ({ perimeter }) => perimeter),
      col.length('toNext', 'Floor to floor', ({ toNext }) => toNext),
    ],
    sums: (rows) => [
      {
        what: 'All levels',
        strong: true,
        cells: {
          rooms: { is: 'count', value: rows.reduce((sum, { rooms }) => sum + rooms, 0) },
          net: sumOf(rows.map(({ net }) => net)),
          gross: sumOf(rows.map(({ gross }) => gross)),
        },
      },
    ],
    notes: () => [
      'Net: between finished faces, room by room. Gross: to the outside of the framing, less what is open to a room below. Perimeter: around the outside of the framing.',
      'As the house is laid out from its rooms’ tapes. Sheathing and cladding are not in it, and it is no area for a permit or a sale.',
    ],
  },
  rows: ({ book, levelName, room }: LookUp) => {
    const heights = elevationsOf(book.levels);
    const ids = book.levels.map(({ id }) => id);
    return book.laid.groups.flatMap(({ levels }, group) =>
      levels.map((laid): Row => {
        const [here, next] = [heights.get(laid.level), heights.get(ids[ids.indexOf(laid.level) + 1] ?? '')];
        return {
          id: `${laid.level}-${group + 1}`,
          level: group === 0 ? levelName(laid.level) : `${levelName(laid.level)}: ${roomNames(laid, room)}`,
          rooms: laid.rooms.length,
          net: figure(laid.net),
          gross: figure(laid.gross),
          perimeter: laid.perimeter,
          ...(here !== undefined && next !== undefined && { toNext: lengthOf(next - here) }),
        };
      }),
    );
  },
});

/** Rooms that nothing joins to the rest stand by themselves. */
export function roomNames({ rooms }: LaidLevel, room: LookUp['room']): string {
  return joinWords(rooms.map(({ room: slug }) => room(slug)?.name ?? slug));
}
