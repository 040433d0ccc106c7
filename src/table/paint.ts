import type { PaintRow } from '../core/book/index.js';
import { col } from '../sheet/index.js';
import { asPrinted, capital, fewestDigits, printsAs, shown } from '../base/units/index.js';
import { saidOnce } from './places-of.js';
import { schedule } from './schedule.js';

/** Every coated surface, room by room. */
export const paint = schedule<PaintRow>({
  table: {
    id: 'paint',
    caption: 'Paint by room, surface and sheen',
    named: 'surface',
    rowId: ({ selection, surface }) => `${selection}-${surface}`,
    group: ({ room }, names) => ({ title: names.title(room) }),
    columns: [
      col.room('room', 'Room', ({ room }, names) => names.room(room), { not: ['html', 'pdf', 'text'] }),
      col.words('surface', 'Surface', ({ surface }) => surface, { width: 'short' }),
      col.words('place', 'Place', ({ placeText }) => saidOnce(placeText), { under: 'surface', width: 'words' }),
      col.finish('paint', 'Paint', paintOf, { width: 'words', brief: true }),
      col.words('sheen', 'Sheen', ({ sheen }) => capital(sheen), { width: 'short', brief: true }),
      col.exact(2)('coats', 'Coats', ({ coats }) => coats),
      col.ticked('area', 'One coat, sq ft', areaOf),
      col.amount('gallons', 'Paint, gal', ({ gallons }) => gallons),
      col.words('why', 'How this was figured', ({ why }) => why, { width: 'long' }),
    ],
    notes: () => [
      'Areas are of one coat and without waste. Coats on trim, doors, stairs and timber are counted here alone: the order list has none of them.',
    ],
  },
  rows: ({ book }) => book.schedules.paint,
});

function paintOf({ name, paint: id, standing }: PaintRow) {
  return {
    name,
    standing: standing === 'chosen' ? ('chosen' as const) : ('standard' as const),
    by: 'contractor' as const,
    place: { to: 'option' as const, id },
  };
}

/** With the digits that lead through the coats to the gallons. */
function areaOf({ area, coats, gallons }: PaintRow) {
  const { amount, digits: usual } = shown(area, 'sq ft');
  if (gallons === undefined) return { value: amount, digits: usual };
  const spread = (amount * coats) / gallons;
  return {
    value: amount,
    digits: fewestDigits(usual, (digits) => printsAs((asPrinted(amount, digits) * coats) / spread, gallons, 1)),
  };
}
