import { wallsBetween, type LookUp, type WallBetween } from '../../core/book/index.js';
import { col } from '../../sheet/index.js';
import { schedule } from '../schedule.js';

interface Row extends WallBetween {
  readonly wallName: string;
  readonly otherName: string;
}

/** Walls that stand between two rooms, with what lies from face to face. */
export const betweenRooms = schedule<Row>({
  table: {
    id: 'walls-between',
    caption: 'Walls between rooms',
    named: 'room',
    rowId: ({ room, wall, otherRoom, otherWall }) => `${room}-${wall}-${otherRoom}-${otherWall}`,
    columns: [
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'words' }),
      col.words('wall', 'Its wall', ({ wallName }) => wallName, { width: 'short' }),
      col.room('other', 'And room', ({ otherRoom }, names) => names.room(otherRoom), { width: 'words' }),
      col.words('otherWall', 'That one’s wall', ({ otherName }) => otherName, { width: 'short' }),
      col.length('length', 'Along', ({ length }) => length),
      col.length('thickness', 'Face to face', ({ thickness }) => thickness),
    ],
    notes: () => [
      'Rooms of one level. Face to face is what the tapes leave between two rooms: the wall with its finishes.',
    ],
  },
  rows: (look) =>
    wallsBetween(look.book).map((between) => ({
      ...between,
      wallName: wallName(between.room, between.wall, look),
      otherName: wallName(between.otherRoom, between.otherWall, look),
    })),
});

function wallName(room: string, wall: string, look: LookUp): string {
  return look.room(room)?.measure.walls.find(({ id }) => id === wall)?.name ?? wall;
}
