import type { SoundRow } from '../core/book/index.js';
import { col, type Cell } from '../sheet/index.js';
import { schedule } from './schedule.js';
import { finishOf } from './scheduled.js';
import { saidOnce } from './places-of.js';

/** Walls that are rated for sound. */
export const soundWalls = schedule<SoundRow>({
  table: {
    id: 'sound-walls',
    caption: 'Schedule of sound-rated walls',
    named: 'room',
    rowId: ({ batt: { selection } }) => selection,
    columns: [
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'short' }),
      col.words('walls', 'Walls', ({ placeText }) => saidOnce(placeText), { width: 'short', brief: true }),
      col.rooms('beside', 'Other side', ({ beside }, names) => beside.map(names.number), { width: 'short' }),
      col.finish('insulation', 'Insulation', ({ batt }, names) => finishOf(batt, names), { width: 'words' }),
      col.count('stc', 'STC', ({ stc }) => stc),
      col.words('assembly', 'Tested with', ({ assembly }) => assembly, { width: 'long' }),
      col.length('depth', 'Depth', ({ thickness }) => thickness),
      col.amount('area', 'Area, sq ft', ({ area }) => area),
      col.list('openings', 'Openings in it', ({ openings }) => openings.map(markOf), { width: 'fit' }),
    ],
  },
  rows: ({ book }) => book.schedules.sound,
});

const markOf = (mark: string): Cell => ({ is: 'mark', text: mark, place: { to: 'opening', id: mark } });
