import type { LaidLevel } from '../../core/model/index.js';
import { col } from '../../sheet/index.js';
import { schedule } from '../schedule.js';

interface Row extends Pick<LaidLevel, 'level' | 'rooms' | 'net' | 'gross' | 'perimeter'> {
  readonly name: string;
  readonly group: number;
  readonly numbers: readonly string[];
}

/** The levels as the house is laid out, with their areas. */
export const levels = schedule<Row>({
  table: {
    id: 'levels',
    caption: 'Levels, as laid out from the rooms’ own tapes',
    named: 'level',
    rowId: ({ level, group }) => `${level}-${group}`,
    columns: [
      col.words('level', 'Level', ({ name, group }) => (group === 0 ? name : `${name}, drawn apart`), {
        width: 'short',
      }),
      col.count('count', 'Rooms', ({ rooms }) => rooms.length),
      col.words('rooms', 'Which', ({ numbers }) => numbers.join(', '), { width: 'words' }),
      col.amount('net', 'Net, sq ft', ({ net }) => net),
      col.amount('gross', 'Gross, sq ft', ({ gross }) => gross),
      col.length('perimeter', 'Perimeter', ({ perimeter }) => perimeter),
    ],
    notes: [
      'Net is between finished faces, without walls; gross is to the outside of the framing, without what is open to below. The perimeter is that of the outline, what is open to below with it.',
    ],
  },
  rows: (look) =>
    look.book.laid.groups.flatMap((laid, group) =>
      laid.levels.map(({ level, rooms, net, gross, perimeter }) => ({
        level,
        rooms,
        net,
        gross,
        perimeter,
        group,
        name: look.levelName(level),
        numbers: rooms.map(({ room }) => look.room(room)?.number ?? room),
      })),
    ),
});
