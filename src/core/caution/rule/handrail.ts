import { stairOf, type Stair } from '../../feature/index.js';
import { isRailing, selectionsOn, tradesOf } from '../look-up.js';
import type { ExampleRooms } from './example.js';
import { isLadder } from './guards.js';
import type { Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2018, R311.7.8, from memory. */
const least = { risers: 4 };

export const handrail: Rule = {
  id: 'handrail',
  title: 'Handrail of a stair',
  source: residentialCode('R311.7.8, from memory'),
  limits: () => [{ what: 'Risers of a flight that wants a handrail on one side, at least', text: `${least.risers}` }],
  examples: [
    { what: 'A flight of 14 risers between walls, without a handrail', sees: 'has 14 risers', rooms: flight(14, 0) },
    { what: 'A flight of 4 risers without one, at the limit', sees: 'has 4 risers', rooms: flight(4, 0) },
    { what: 'A flight of 3 risers without one', sees: null, rooms: flight(3, 0) },
    { what: 'The flight of 14 with a handrail on one wall', sees: null, rooms: flight(14, 1) },
  ],
  find: (house) =>
    house.rooms.flatMap((room) =>
      room.measure.features.flatMap((feature) => {
        const stair = stairOf(feature);
        if (!stair || !wantsOne(stair)) return [];
        // The top of a guard along the slope may be held: its shop drawing says so.
        const railings = selectionsOn(room, feature.id).filter(({ category }) => isRailing(category));
        if (railings.some(({ options }) => options.length > 0)) return [];
        return [
          {
            room: room.slug,
            place: feature.id,
            placeText: feature.name,
            selections: railings.map(({ id }) => id),
            trades: tradesOf(house, isRailing),
            seen: `${feature.name} has ${stair.risers} risers, and neither a handrail nor a railing is recorded.`,
            says: `A flight of ${least.risers} risers or more has a handrail on one side at least, without a break from its first riser to its last.`,
            ask: 'the building office, before the walls are closed over the backing',
          },
        ];
      }),
    ),
};

function wantsOne(stair: Stair): boolean {
  return stair.risers >= least.risers && stair.handrails === 0 && !isLadder(stair);
}

function flight(risers: number, handrails: number): ExampleRooms {
  return { hall: { features: { stair: { kind: 'stair', rise: `${risers * 7}"`, risers, rails: 0, handrails } } } };
}
