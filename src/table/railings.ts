import type { RailingRow } from '../core/book/index.js';
import { col } from '../sheet/index.js';
import type { Infill, Rail } from '../core/takeoff/index.js';
import { capital, counted, printLength, type Length } from '../base/units/index.js';
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
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'short', brief: true }),
      col.finish('railing', 'Railing', ({ railing }, names) => finishOf(railing, names), { width: 'words' }),
      col.words('kind', 'Level or rake', ({ kind }) => capital(kind), { under: 'run' }),
      col.pitch('slope', 'Slope', ({ slope }) => slope, { under: 'run' }),
      col.length('length', 'Length', ({ length }) => length, { brief: true }),
      col.count('pieces', 'Pieces', ({ pieces }) => pieces.length),
      col.count('posts', 'Posts', ({ posts }) => posts),
      col.words('corners', 'Posts at corners', ({ rail }) => cornerWords(rail), { under: 'run' }),
      col.words('infill', 'Infill', ({ rail }) => infillWords(rail), { under: 'railing', width: 'words' }),
      col.length('handrail', 'Handrail on wall', ({ rail }) => rail?.handrail?.length),
      col.count('brackets', 'Brackets', ({ rail }) => rail?.handrail?.brackets),
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
          brackets: {
            is: 'count',
            value: rows.reduce((sum, { rail }) => sum + (rail?.handrail?.brackets ?? 0), 0),
          },
        },
      },
    ],
    notes: () => [
      'Posts of a run stand equally far apart. Where two runs end together there is one post, counted with one of them.',
      'Height and openings are the product’s; the building office confirms what is asked for here.',
    ],
  },
  rows: ({ book }) => book.schedules.railings.rows,
});

/** Where a post is also another run's, and which of the two has it. */
function cornerWords(rail: Rail | undefined): string {
  return (rail?.shared ?? [])
    .map(({ end, other, isOwn }) => `Post at its ${end} also at the ${other}, counted ${isOwn ? 'here' : 'there'}`)
    .join('; ');
}

function infillWords(rail: Rail | undefined): string {
  return (rail?.pieces ?? []).flatMap(({ bays, infill }) => (infill ? [fillWords(infill, bays)] : [])).join('; ');
}

function fillWords(infill: Infill, bays: number): string {
  const { count } = infill;
  switch (infill.fill) {
    case 'balusters':
      return `${count} balusters, ${bays === 0 ? 0 : count / bays} in a bay, ${printLength(infill.gap)} between`;
    case 'cables':
      return `${count} cables of ${printLength(infill.length)}`;
    case 'panels':
      return `${counted(count, 'panel')} ${printLength(infill.width)} wide`;
  }
}
