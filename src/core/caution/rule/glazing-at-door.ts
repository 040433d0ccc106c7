import { fromInches, printLength, type Length } from '../../../base/units/index.js';
import { factOf } from '../../fact/index.js';
import { sillOverFloor, type OpeningMeasure } from '../../model/index.js';
import type { HouseView, RoomView } from '../view.js';
import { doorAt } from './doors.js';
import type { ExampleRooms } from './example.js';
import { glassWords, isDoubtful, lowGlass, paneFinding } from './glazing.js';
import type { Finding, Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2018, R308.4.1 and R308.4.2, from memory. */
const limit = { bottom: fromInches(60), beside: fromInches(24) };

export const glazingAtDoor: Rule = {
  id: 'glazing-at-door',
  title: 'Glass in a door or beside one',
  source: residentialCode('R308.4.1 and R308.4.2, from memory'),
  limits: () => [
    { what: 'Bottom of the glass above the floor, less than', text: printLength(limit.bottom) },
    { what: 'and in the wall of a door, from its edge at most', text: printLength(limit.beside) },
  ],
  examples: [
    { what: 'A window 20" from a door', sees: '1\'-8" from door D1', rooms: beside('20"', '36"') },
    { what: 'A window 24" from it, at the limit', sees: '2\'-0" from door D1', rooms: beside('24"', '36"') },
    { what: 'A window 25" from it', sees: null, rooms: beside('25"', '36"') },
    { what: 'The window at 20" with its sill at 60"', sees: null, rooms: beside('20"', '60"') },
    { what: 'The window at 20", tempered', sees: null, rooms: beside('20"', '36"', 'tempered') },
    {
      what: 'A door with plain glass in it',
      sees: 'Door D1 has glass in it',
      rooms: { hall: { openings: { D1: { to: 'outside', glass: 'plain' } } } },
    },
  ],
  find: (house) =>
    house.rooms.flatMap((room) => [
      ...lowGlass(room, limit.bottom).flatMap((pane) => besideDoor(house, room, pane)),
      ...room.measure.openings.flatMap((door) => inDoor(house, room, door)),
    ]),
};

function besideDoor(house: HouseView, room: RoomView, pane: OpeningMeasure): readonly Finding[] {
  const near = room.measure.openings
    .filter(({ kind, wall }) => kind === 'door' && wall === pane.wall)
    .map((door) => ({ door, gap: gapBetween(pane, door) }))
    .filter(({ gap }) => gap <= limit.beside)
    .sort((a, b) => a.gap - b.gap)[0];
  if (!near) return [];
  const says = `Glass within ${printLength(limit.beside)} of the edge of a door, its bottom less than ${printLength(limit.bottom)} above the floor, is safety glazing, tempered or laminated.`;
  const where = `Window ${pane.mark} of ${room.name} is ${printLength(near.gap)} from door ${near.door.mark}`;
  const seen = `${where}, its bottom ${printLength(sillOverFloor(pane))} above the floor, and ${glassWords(pane)}.`;
  return [paneFinding(house, room, pane, seen, says)];
}

function gapBetween(a: OpeningMeasure, b: OpeningMeasure): Length {
  return Math.max(0, a.at - b.at - b.width, b.at - a.at - a.width) as Length;
}

/** Of a door that no record gives glass, nothing is asked. */
function inDoor(house: HouseView, room: RoomView, door: OpeningMeasure): readonly Finding[] {
  if (door.kind !== 'door' || !door.own || !isDoubtful(door)) return [];
  const option = doorAt(house, room, door)?.option;
  const told = factOf(option, 'door', 'glass');
  const isGlazed = door.glass !== undefined || (told !== undefined && told !== 'none');
  if (!isGlazed || (door.glass === undefined && /\b(tempered|laminated|safety)\b/iu.test(told ?? ''))) return [];
  const seen = `Door ${door.mark} has glass in it${told === undefined ? '' : ` (${told})`}, and ${glassWords(door)}.`;
  return [paneFinding(house, room, door, seen, 'Glass in a door is safety glazing, tempered or laminated.')];
}

/** A door at one foot from the corner, and a window so far to its right. */
function beside(gap: string, sill: string, glass?: 'tempered'): ExampleRooms {
  const W1 = { kind: 'window', to: 'outside', width: '24"', height: '24"', sill } as const;
  return {
    hall: {
      openings: {
        D1: { to: 'outside', at: '12"', width: '30"' },
        W1: { ...W1, at: `${42 + Number.parseInt(gap)}"`, ...(glass && { glass }) },
      },
    },
  };
}
