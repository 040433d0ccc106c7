import type { RailingRow } from '../core/book/index.js';
import { col } from '../sheet/index.js';
import { capital, type Length } from '../base/units/index.js';
import { schedule } from './schedule.js';
import { finishOf } from './scheduled.js';

/** Every run of railing, level or along a stair. */
export const railings = schedule<RailingRow>({
  table: {
    id: 'railings',
    caption: 'Railing schedule',
    named: 'run',
    rowId: ({ railing, place }) => `${railing.selection}-${place}`,
    columns: [
      col.words('run', 'Run', ({ name }) => name, { width: 'words' }),
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'short' }),
      col.finish('railing', 'Railing', ({ railing }, names) => finishOf(railing, names), { width: 'words' }),
      col.words('kind', 'Level or rake', ({ kind }) => capital(kind), { under: 'run' }),
      col.pitch('slope', 'Slope', ({ slope }) => slope, { under: 'run' }),
      col.length('length', 'Length', ({ length }) => length),
      col.count('pieces', 'Pieces', ({ pieces }) => pieces.length),
      col.count('posts', 'Posts', ({ posts }) => posts),
      col.length('postSpacing', 'Post spacing', ({ postSpacing }) => postSpacing),
      col.length('height', 'Height', ({ height }) => height),
      col.length('clearOpening', 'Clear opening', ({ clearOpening }) => clearOpening),
      col.length('drop', 'Drop', ({ drop }) => drop),
      col.words('mount', 'Mount', ({ mount }) => mount, { width: 'fit' }),
    ],
    sums: (rows) => [
      {
        what: 'All runs',
        strong: true,
        cells: {
          length: { is: 'length', nm: rows.reduce((sum, { length }) => sum + length, 0) as Length },
          pieces: { is: 'count', value: rows.reduce((sum, { pieces }) => sum + pieces.length, 0) },
          posts: { is: 'count', value: rows.reduce((sum, { posts = 0 }) => sum + posts, 0) },
        },
      },
    ],
    notes: ['Height and openings are the product’s; the building office confirms what is asked for here.'],
  },
  rows: ({ book }) => book.schedules.railings.rows,
});
