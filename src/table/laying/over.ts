import { knownAround, type RoomAround } from '../../core/model/index.js';
import { col } from '../../sheet/index.js';
import { schedule } from '../schedule.js';
import { figure, type Figure } from './figure.js';

interface Row {
  readonly room: string;
  /** Absent: no room is under it there. */
  readonly under?: string;
  readonly area: Figure;
}

/** Which room stands over which, and where no room is under a floor. */
export const roomsOver = schedule<Row>({
  table: {
    id: 'rooms-over',
    caption: 'Rooms over rooms',
    named: 'room',
    rowId: ({ room, under }) => `${room}-over-${under ?? 'nothing'}`,
    columns: [
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'words' }),
      col.words('lies', 'Lies', ({ under }) => (under === undefined ? 'over no room' : 'over'), { width: 'short' }),
      col.room('under', 'Room below', ({ under }, names) => (under === undefined ? undefined : names.room(under)), {
        width: 'words',
      }),
      col.ticked('area', 'Area, sq ft', ({ area }) => area),
    ],
    notes: () => ['Between finished faces, one level over the next. What lies over a wall is in none of them.'],
  },
  rows: ({ book }) =>
    book.rooms.flatMap(({ slug, measure }) => {
      const around = knownAround(measure);
      return around ? rowsOf(slug, around) : [];
    }),
});

function rowsOf(room: string, { under, overNothing }: RoomAround): readonly Row[] {
  const over = under.map((one): Row => ({ room, under: one.room, area: figure(one.area) }));
  return overNothing !== undefined && overNothing > 0 ? [...over, { room, area: figure(overNothing) }] : over;
}
