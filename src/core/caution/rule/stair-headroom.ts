import { fromInches, printLength } from '../../../base/units/index.js';
import { stairOf } from '../../feature/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import type { ExampleRooms } from './example.js';
import { isLadder } from './guards.js';
import type { Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Over the line of the nosings. Source: IRC 2018, R311.7.2, as a county publishes it. */
const least = fromInches(80);

export const stairHeadroom: Rule = {
  id: 'stair-headroom',
  title: 'Headroom over a stair',
  source: residentialCode('R311.7.2'),
  limits: () => [{ what: 'Height of the ceiling over the line of the nosings, at least', text: printLength(least) }],
  examples: [
    { what: `A flight that rises 29" under a ceiling of 9'`, sees: '6\'-7" over the nosings', rooms: under('29"') },
    { what: `A flight that rises 28" there, at the limit`, sees: null, rooms: under('28"') },
    { what: `A flight through a ceiling of 9' in which no hole is recorded`, sees: null, rooms: under(`10'`) },
  ],
  /** By the ceiling of the stair's own room: the edge of a floor above is seen where that room's ceiling is recorded with the well. Rooms have no
   *  coordinates in common, so that a beam or floor of another room is not. */
  find: (house) =>
    house.rooms.flatMap((room) =>
      room.measure.features.flatMap((feature) => {
        const stair = stairOf(feature);
        const { headroom } = feature;
        if (!stair || isLadder(stair) || !headroom || headroom.height >= least) return [];
        return [
          {
            room: room.slug,
            place: feature.id,
            placeText: feature.name,
            selections: [],
            trades: tradesOf(house, isFraming),
            seen: `The ceiling of ${room.name} comes down to ${printLength(headroom.height)} over the nosings of ${feature.name}, ${printLength(headroom.along)} from the lowest.`,
            says: `Over the line of the nosings a stair has ${printLength(least)} everywhere, finishes and trim included.`,
            ask: 'the framer and the architect, before the well is framed, and the building office',
          },
        ];
      }),
    ),
};

/** Four risers up, in a room 9' high. */
function under(rise: string): ExampleRooms {
  const flight = { risers: 4, going: '10"', width: '36"', x: '0"', y: '0"', go: 'east', rails: 0, handrails: 1 };
  return { hall: { features: { stair: { kind: 'stair', rise, ...flight } } } };
}
