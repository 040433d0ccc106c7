import type { BookRoom, LookUp } from '../core/book/index.js';
import { col, words, type Sheet } from '../sheet/index.js';
import { houseSchedule } from './schedule.js';

type Row = BookRoom & { readonly levelName: string };

/** Every room of the house, with what is chosen in it and what is still open. */
export const rooms = houseSchedule<Row>(
  {
    id: 'rooms',
    caption: 'Rooms of the house',
    named: 'room',
    rowId: ({ slug }) => slug,
    columns: [
      col.room('room', 'Room', ({ slug }, names) => names.room(slug), { width: 'words' }),
      col.words('level', 'Level', ({ levelName }) => levelName, { width: 'short' }),
      col.amount('floor', 'Floor, sq ft', ({ measure }) => measure.floor.net),
      col.count('selections', 'Selections', ({ selections }) => selections.length),
      col.count('open', 'Open', ({ open }) => (open === 0 ? undefined : open)),
      col.money('change', 'Change', ({ change }) => change, { change: true }),
    ],
  },
  (look) => look.book.rooms.map((room) => ({ ...room, levelName: look.levelName(room.level) })),
);

/** The rooms in the printed book, after the house's own words. */
export const roomSheet = (look: LookUp): Sheet => ({
  format: 'bookmatch/sheet/1',
  id: 'rooms',
  title: 'Rooms',
  paper: 'portrait',
  blocks: [
    {
      block: 'prose',
      tone: 'lead',
      of: [words('Every room of the house, with what is chosen in it and what is still open.')],
    },
    { block: 'body', text: look.book.house.body },
    rooms.lay(look),
  ],
});
