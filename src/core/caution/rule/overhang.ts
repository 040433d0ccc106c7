import { printArea, type Area } from '../../../base/units/index.js';
import { carries } from '../../fact/index.js';
import { knownAround } from '../../model/index.js';
import { isFraming, selectionsAt, tradesOf } from '../look-up.js';
import type { HouseView, RoomView, SelectionView } from '../view.js';
import type { ExampleRooms } from './example.js';
import type { Finding, Rule } from './rule.js';
import { commonPractice } from './source.js';

/** Less than this is what walls stand on. Common practice, no source. */
const least = 2 as Area;

export const overhang: Rule = {
  id: 'overhang',
  title: 'Floor that juts out',
  source: commonPractice('a floor over the outside is framed, filled and closed beneath as an outside wall is'),
  limits: () => [{ what: 'Floor of an upper level with no room under it, more than', text: printArea(least) }],
  examples: [
    {
      what: 'A bedroom of which 5 sq ft stand out over the room below',
      sees: '5 sq ft of its floor',
      rooms: jutting(5),
    },
    { what: 'One of which 2 sq ft do, at the limit', sees: null, rooms: jutting(2) },
    { what: 'One that stands on the room below', sees: null, rooms: jutting(0) },
    { what: 'The bedroom of 5 sq ft with insulation selected in its floor', sees: null, rooms: jutting(5, true) },
  ],
  find: (house) => house.rooms.flatMap((room) => overNothing(house, room)),
};

const isInsulation = ({ category }: SelectionView): boolean => carries(category, 'insulation', 'r-value');

/** Where insulation was decided on, somebody has thought of it. */
function overNothing(house: HouseView, room: RoomView): readonly Finding[] {
  const { overNothing: area = 0 as Area } = knownAround(room.measure) ?? {};
  if (area <= least || selectionsAt(room, 'floor').some(isInsulation)) return [];
  return [
    {
      room: room.slug,
      place: 'floor',
      placeText: 'Floor',
      selections: [],
      trades: [
        ...new Set([
          ...tradesOf(house, isFraming),
          ...tradesOf(house, (category) => carries(category, 'insulation', 'r-value')),
        ]),
      ],
      seen: `${room.name}: ${printArea(area)} of its floor have no room of the level below under them.`,
      says: 'Over the outside a floor needs joists that carry it, insulation between them, a stop for the air at the wall below, and a soffit that closes it. Nothing of that follows from the room above.',
      ask: 'the framer how far it juts out and what carries it, and the insulation contractor for the floor',
    },
  ];
}

function jutting(area: number, isFilled = false): ExampleRooms {
  const facts = { 'r-value': 30 } as const;
  return {
    bedroom: {
      level: 'upper',
      overNothing: area,
      ...(isFilled && { selections: [{ of: 'insulation', at: 'floor', facts }] }),
    },
  };
}
