import { fromInches, printLength } from '../../../base/units/index.js';
import type { HouseView, RoomView } from '../view.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2018, R312.2.1, from memory. */
const limit = { sill: fromInches(24), ground: fromInches(72) };

export const lowWindow: Rule = {
  id: 'low-window',
  title: 'Low window high above the ground',
  source: residentialCode('R312.2.1, from memory'),
  limits: () => [
    { what: 'Sill above the floor, less than', text: printLength(limit.sill) },
    { what: 'and above the ground outside, more than', text: printLength(limit.ground) },
  ],
  examples: [
    { what: 'An upper window with its sill 20" above the floor', sees: 'its sill at 1\'-8"', rooms: upper('20"') },
    { what: 'The same window with its sill at 24", at the limit', sees: null, rooms: upper('24"') },
    { what: 'The window of 20" on the lowest level', sees: null, rooms: upper('20"', 'main') },
  ],
  find: (house) =>
    house.rooms
      .filter((room) => isHigh(house, room))
      .flatMap((room) =>
        room.measure.openings
          .filter(({ own, kind, to, sill }) => own && kind === 'window' && to === 'outside' && sill < limit.sill)
          .map(({ mark, sill }) => ({
            room: room.slug,
            place: mark,
            placeText: `Window ${mark}`,
            selections: [],
            trades: [],
            seen: `Window ${mark} of ${room.name} is above the lowest level, its sill at ${printLength(sill)}. How high it is above the ground and whether it opens is not recorded.`,
            says: `A window that opens, with its opening less than ${printLength(limit.sill)} above the floor and more than ${printLength(limit.ground)} above the ground, has a guard or a device that keeps it from opening wide.`,
            ask: 'the window supplier and the building office',
          })),
      ),
};

/** The records do not say how high the ground is: what is above the lowest level is asked about. */
function isHigh({ levels }: HouseView, { level }: RoomView): boolean {
  return levels.indexOf(level) > 0;
}

function upper(sill: string, level: 'main' | 'upper' = 'upper'): ExampleRooms {
  const W1 = { kind: 'window', to: 'outside', width: '36"', height: '48"', sill } as const;
  return { hall: {}, loft: { level, openings: { W1 } } };
}
