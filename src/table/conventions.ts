import type { BookCategory } from '../core/book/index.js';
import { col } from '../sheet/index.js';
import { printQuantity } from '../base/units/index.js';
import { houseSchedule } from './schedule.js';

/** How each kind of finish is measured, by this house's records. */
export const conventions = houseSchedule<BookCategory>(
  {
    id: 'conventions',
    caption: 'How each kind of finish is measured, in this house’s records',
    named: 'category',
    rowId: ({ slug }) => slug,
    columns: [
      col.words('category', 'Category', ({ name, source }) => ({ text: name, place: { to: 'record', id: source } }), {
        width: 'words',
      }),
      col.words('by', 'Measured by', ({ measure }) => measure.by),
      col.words('rule', 'Rule', ({ measure }) => measure.words, { width: 'long' }),
      col.words('openings', 'Openings', openingWords, { width: 'short' }),
      col.exact(2)('times', 'Times', ({ measure }) => measure.times),
      col.words('source', 'Source', ({ measure }) => measure.source, { width: 'words' }),
    ],
  },
  ({ book }) => book.categories,
);

function openingWords({ measure }: BookCategory): string {
  if (measure.by !== 'area' && measure.by !== 'stone') return '';
  const { openings } = measure;
  if (openings.rule === 'all') return 'all taken off';
  return openings.rule === 'none' ? 'none taken off' : `taken off over ${printQuantity(openings.area, 'sq ft')}`;
}
