import { sillOverFloor, type OpeningMeasure } from '../../model/index.js';
import { fromInches, printArea, printLength, type Area } from '../../../base/units/index.js';
import type { RoomView } from '../view.js';
import type { ExampleRooms } from './example.js';
import type { Finding, Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Clear, with the sash open. Source: IRC 2018, R310.2.1 and R310.2.2, from memory. */
const least = { area: 5.7 as Area, height: fromInches(24), width: fromInches(20) };
const mostSill = fromInches(44);

export const escapeOpening: Rule = {
  id: 'escape-opening',
  title: 'Way out of a bedroom',
  source: residentialCode('R310.1, R310.2.1 and R310.2.2, from memory'),
  limits: () => [
    { what: 'Clear opening, at least', text: printArea(least.area) },
    { what: 'Clear height and width, at least', text: `${printLength(least.height)} and ${printLength(least.width)}` },
    { what: 'Sill above the floor, at most', text: printLength(mostSill) },
  ],
  examples: [
    {
      what: 'A bedroom whose window is drawn 18" wide',
      sees: 'W1 is drawn 1\'-6" by 4\'-0"',
      rooms: bedroom({ width: '18"' }),
    },
    { what: 'The same window 30" wide with its sill at 48"', sees: 'sill at 4\'-0"', rooms: bedroom({ sill: '48"' }) },
    { what: 'The same window with its sill at 44"', sees: null, rooms: bedroom({ sill: '44"' }) },
    { what: 'A bedroom without a window', sees: 'no opening to the outside', rooms: { bunks: { use: 'bedroom' } } },
  ],
  find: ({ rooms }) => rooms.filter(({ use }) => use === 'bedroom').flatMap(wayOut),
};

function wayOut(room: RoomView): readonly Finding[] {
  const outside = room.measure.openings.filter(({ to }) => to === 'outside');
  if (outside.some(mayServe)) return [];
  const drawn = outside.map(
    (opening) =>
      `${opening.mark} is drawn ${printLength(opening.width)} by ${printLength(opening.height)}, its sill at ${printLength(sillOverFloor(opening))}`,
  );
  const seen =
    drawn.length === 0
      ? `${room.name} has no opening to the outside.`
      : `No opening of ${room.name} to the outside may serve as drawn: ${drawn.join('; ')}.`;
  return [
    {
      room: room.slug,
      place: outside[0]?.mark ?? 'walls',
      placeText: room.name,
      selections: [],
      trades: [],
      seen,
      says: `A room to sleep in has a way out through a window or door of its own: with the sash open ${printArea(least.area)} clear, ${printLength(least.height)} high and ${printLength(least.width)} wide, its sill at most ${printLength(mostSill)} above the floor. What is clear is the maker's figure and less than what is drawn.`,
      ask: 'the architect and the window supplier, before the opening is framed',
    },
  ];
}

/** As drawn: what is clear is less. */
function mayServe(opening: OpeningMeasure): boolean {
  const { kind, width, height, area } = opening;
  if (kind === 'door') return true;
  return width >= least.width && height >= least.height && sillOverFloor(opening) <= mostSill && area >= least.area;
}

function bedroom(window: { readonly width?: string; readonly sill?: string }): ExampleRooms {
  const W1 = { kind: 'window', to: 'outside', width: '30"', height: '48"', ...window } as const;
  return { bunks: { use: 'bedroom', openings: { W1 } } };
}
