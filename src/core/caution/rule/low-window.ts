import { fromInches, printLength, type Length } from '../../../base/units/index.js';
import { sillOverFloor, type OpeningMeasure } from '../../model/index.js';
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
    {
      what: 'The window of 20" on the lowest level, whose floor is 53" above the ground',
      sees: '6\'-1" above the ground',
      rooms: upper('20"', 'main', '53"'),
    },
    {
      what: 'The window of 20" on an upper level whose floor is 52" above the ground, at the limit',
      sees: null,
      rooms: upper('20"', 'upper', '52"'),
    },
  ],
  find: (house) =>
    house.rooms.flatMap((room) =>
      room.measure.openings
        .filter(({ own, kind, to }) => own && kind === 'window' && to === 'outside')
        .filter((window) => sillOverFloor(window) < limit.sill && isHigh(house, room, window))
        .map((window) => ({
          room: room.slug,
          place: window.mark,
          placeText: `Window ${window.mark}`,
          selections: [],
          trades: [],
          seen: seenOf(room, window),
          says: `A window that opens, with its opening less than ${printLength(limit.sill)} above the floor and more than ${printLength(limit.ground)} above the ground, has a guard or a device that keeps it from opening wide.`,
          ask: 'the window supplier and the building office',
        })),
    ),
};

/** Where the records do not say how high the ground is, what is above the lowest level is asked about. */
function isHigh({ levels }: HouseView, { level, aboveGround }: RoomView, { sill }: OpeningMeasure): boolean {
  return aboveGround === undefined ? levels.indexOf(level) > 0 : aboveGround + sill > limit.ground;
}

function seenOf({ name, aboveGround }: RoomView, window: OpeningMeasure): string {
  const { mark, sill } = window;
  const at = `its sill at ${printLength(sillOverFloor(window))}`;
  if (aboveGround === undefined)
    return `Window ${mark} of ${name} is above the lowest level, ${at}. How high it is above the ground and whether it opens is not recorded.`;
  const ground = printLength((aboveGround + sill) as Length);
  return `Window ${mark} of ${name} has ${at} and is ${ground} above the ground. Whether it opens is not recorded.`;
}

function upper(sill: string, level: 'main' | 'upper' = 'upper', aboveGround?: string): ExampleRooms {
  const W1 = { kind: 'window', to: 'outside', width: '36"', height: '48"', sill } as const;
  return { hall: {}, loft: { level, openings: { W1 }, ...(aboveGround !== undefined && { aboveGround }) } };
}
