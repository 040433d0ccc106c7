import type { StoneRow } from '../core/book/index.js';
import { amountCell, col, words } from '../sheet/index.js';
import { printSize } from '../base/units/index.js';
import { saidOnce } from './places-of.js';
import { schedule } from './schedule.js';
import { finishOf } from './scheduled.js';

/** Stone by the place that it is set on. */
export const stone = schedule<StoneRow>({
  table: {
    id: 'stone',
    caption: 'Stone schedule, without waste',
    named: 'place',
    rowId: ({ stone: { selection } }) => selection,
    columns: [
      col.words('place', 'Place', ({ placeText }) => saidOnce(placeText), { width: 'words' }),
      col.room('room', 'Room', ({ room }, names) => names.room(room), { under: 'place' }),
      col.finish('stone', 'Stone', ({ stone }, names) => finishOf(stone, names), { width: 'words', brief: true }),
      col.lines('faces', 'Faces, sq ft', ({ faces }) => faces.map(faceOf), { width: 'words' }),
      col.amount('flats', 'Flats, sq ft', ({ flats }) => flats),
      col.amount('corners', 'Corners, lin ft', ({ corners }) => corners),
      col.length('bed', 'Bed', ({ bed }) => bed),
      col.exact(0)('weight', 'Weight, lb', ({ pounds }) => pounds),
      col.amount('weightPerArea', 'Weight in place, lb / sq ft', ({ poundsPerSqFt }) => poundsPerSqFt),
      col.words('setting', 'Set on', ({ setting }) => setting, { width: 'short' }),
      col.words('joint', 'Joint', ({ joint }) => joint, { under: 'setting' }),
      col.lines('support', 'What carries it', supportOf, { width: 'words' }),
    ],
  },
  rows: ({ book }) => book.schedules.stone,
});

/** What is covered of a face, and of how much where something takes from it. */
function faceOf({ name, gross, net }: StoneRow['faces'][number]) {
  const after = net === gross ? {} : { after: `of ${printSize(gross, 'sq ft')}` };
  return { at: `${name}:`, cell: amountCell(net, 'sq ft'), ...after };
}

function supportOf({ support }: StoneRow, names: { readonly trade: (slug: string) => string }) {
  return support.map(({ what, by }) => ({ cell: words(what), after: `(${names.trade(by)})` }));
}
