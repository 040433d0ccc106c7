import { factOf } from '../../fact/index.js';
import { leastGap, lengthOf } from '../../../base/geometry/index.js';
import type { OpeningMeasure } from '../../model/index.js';
import { outlineOf, shapeWords } from '../../opening/index.js';
import { feet, fromInches, printLength, type Length } from '../../../base/units/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import { doorAt } from './doors.js';
import type { Finding, Rule } from './rule.js';
import { residentialCode } from './source.js';

/** What a framed head takes above a door. Source: common practice; the smallest header of the code's tables is a pair of 2x4
 *  (IRC Table R602.7(1), from memory), two plates are 1 1/2" each. */
const head = { rough: fromInches(2.5), header: fromInches(3.5), plates: fromInches(3) };

export const doorUnderSlope: Rule = {
  id: 'door-under-slope',
  title: 'Door head against ceiling and header',
  source: residentialCode('Table R602.7(1), from memory; room for plates is common practice'),
  limits: () => [
    { what: 'Rough opening above the leaf, where the door does not say', text: printLength(head.rough) },
    {
      what: 'Least header, and two plates over it',
      text: `${printLength(head.header)} and ${printLength(head.plates)}`,
    },
  ],
  examples: [
    {
      what: `A door 6'-8" high under a ceiling at 7'-4"`,
      sees: '8" above the head',
      rooms: { attic: { height: `7'-4"`, openings: { D1: {} } } },
    },
    {
      what: `The same door under a ceiling at 8'`,
      sees: null,
      rooms: { attic: { height: `8'`, openings: { D1: {} } } },
    },
  ],
  find: (house) =>
    house.rooms.flatMap((room) => room.measure.openings.flatMap((opening) => headOf(house, room, opening))),
};

function headOf(house: HouseView, room: RoomView, opening: OpeningMeasure): readonly Finding[] {
  const { kind, wall, at, sill, height, mark } = opening;
  const standing = room.measure.walls.find(({ id, openTo }) => id === wall && openTo === undefined);
  if (!standing || (kind !== 'door' && kind !== 'cased')) return [];
  const top = standing.top.map((point) => ({ along: feet(point.along), height: feet(point.height) }));
  const outline = outlineOf(opening).map(({ x, y }) => ({ x: feet(at) + x, y: feet(sill) + y }));
  const left = lengthOf(leastGap(top, outline).gap);
  const door = doorAt(house, room, opening);
  const rough = roughAbove(kind, door && factOf(door.option, 'door', 'rough-height'));
  const wanted = (rough + head.header + head.plates) as Length;
  if (left >= wanted) return [];
  const name = `${kind === 'door' ? 'Door' : 'Cased opening'} ${mark}`;
  return [
    {
      room: room.slug,
      place: mark,
      placeText: name,
      selections: door ? [door.selection.id] : [],
      trades: [...new Set([...tradesOf(house, isFraming), ...(door ? [door.selection.category.trade] : [])])],
      seen: `${name} is ${printLength(height)} high${over(opening, room, left)}`,
      says: `A framed head with the least header takes ${printLength(wanted)}: ${rough > 0 ? `${printLength(rough)} for the rough opening, ` : ''}${printLength(head.header)} of header and ${printLength(head.plates)} of plates. A wall that carries nothing may do with less.`,
      ask: 'the framer, and the structural engineer when the wall carries',
    },
  ];
}

function over({ sill, height, ...opening }: OpeningMeasure, { name }: RoomView, left: Length): string {
  const shape = shapeWords(opening);
  if (shape !== undefined)
    return `, ${shape}; the ceiling of ${name} comes down to ${printLength(left)} above its head.`;
  const ceiling = printLength((sill + height + left) as Length);
  return `; over it the ceiling of ${name} is at ${ceiling}, ${printLength(left)} above the head.`;
}

/** A cased opening is recorded as it is framed. */
function roughAbove(kind: OpeningMeasure['kind'], recorded: Length | undefined): Length {
  return kind === 'cased' ? (0 as Length) : (recorded ?? head.rough);
}
