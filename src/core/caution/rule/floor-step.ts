import type { FloorLevel, Riser } from '../../model/index.js';
import { fromInches, printLength, printPitch } from '../../../base/units/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import type { ExampleRooms } from './example.js';
import { guardedDrop } from './guards.js';
import type { Rule } from './rule.js';
import { residentialCode } from './source.js';

/** A step as a stair's, and a ramp as one on the way out. Source: IRC 2018, R311.7.5.1 and R311.8.1, from memory. */
const most = { rise: fromInches(7.75), slope: 1 / 12 };

export const floorStep: Rule = {
  id: 'floor-step',
  title: 'Steps and ramps in a floor',
  source: residentialCode('R311.7.5.1, R311.8.1 and R312.1.1; figures from memory, for single steps a yardstick'),
  limits: () => [
    { what: 'Height of a step, at most', text: printLength(most.rise) },
    { what: 'Slope of a ramp, at most', text: printPitch(most.slope) },
    { what: 'Fall without a guard, at most', text: printLength(guardedDrop) },
  ],
  examples: [
    { what: 'A step of 7 7/8" down into a pit', sees: '7 7/8" high', rooms: withRiser('7 7/8"') },
    { what: 'A step of 7 3/4", at the limit', sees: null, rooms: withRiser('7 3/4"') },
    { what: 'A pit 30 1/8" deep', sees: 'wants a guard too', rooms: withRiser('30 1/8"') },
    { what: 'A pit 30" deep, without a step in it', sees: `2'-6" high`, rooms: withRiser('30"') },
    { what: 'A ramp of 1 1/2 in 12', sees: 'slopes 1.5/12', rooms: { den: { ramps: { Ramp: '1.5/12' } } } },
    { what: 'A ramp of 1 in 12, at the limit', sees: null, rooms: { den: { ramps: { Ramp: '1/12' } } } },
  ],
  find: (house) =>
    house.rooms.flatMap(({ slug, measure }) => {
      const { risers = [], floor } = measure;
      const ramps = (floor.levels ?? []).filter(({ slope }) => slope > most.slope + 1e-9);
      const found = [...risers.filter(({ rise }) => rise > most.rise).map(stepWords), ...ramps.map(rampWords)];
      return found.map((words) => ({
        room: slug,
        ...words,
        selections: [],
        trades: tradesOf(house, isFraming),
        ask: 'the architect and the framer, before the floor is framed, and the building office',
      }));
    }),
};

function stepWords({ id, name, rise }: Riser) {
  const guard = rise > guardedDrop ? `; a fall of more than ${printLength(guardedDrop)} wants a guard too` : '';
  return {
    place: id,
    placeText: name,
    seen: `${name} is ${printLength(rise)} high${guard}.`,
    says: `One climbs ${printLength(most.rise)} at most in one step of a stair; a higher one is divided, or is no way to walk.`,
  };
}

function rampWords({ name, slope }: FloorLevel) {
  return {
    place: 'floor',
    placeText: `Floor, ${name}`,
    seen: `${name} slopes ${printPitch(slope)}.`,
    says: `A ramp rises ${printPitch(most.slope)} at most where people or wheels pass, and has a landing at each end.`,
  };
}

function withRiser(rise: string): ExampleRooms {
  return { den: { risers: { Riser: rise } } };
}
