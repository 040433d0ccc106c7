import { fromInches, printAmount, printArea, printLength } from '../../../base/units/index.js';
import type { RoomUse } from '../../model/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import type { Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2012 to 2021, R305.1 with its exception for sloped ceilings, as quoted in a code forum. */
const least = { height: fromInches(84), counted: fromInches(60), share: 0.5 };
const lived: readonly RoomUse[] = ['living', 'kitchen', 'dining', 'study', 'bedroom', 'hall', 'gallery'];

export const headroom: Rule = {
  id: 'headroom',
  title: 'Headroom in a gallery or under a slope',
  source: residentialCode('R305.1 and R304.3'),
  limits: () => [
    { what: 'Height over half of the floor, at least', text: printLength(least.height) },
    { what: 'Floor under less than this is not counted', text: printLength(least.counted) },
  ],
  examples: [
    {
      what: `A gallery of 200 sq ft that has 7' of height over 80 sq ft`,
      sees: '40 % of the 200 sq ft',
      rooms: { loft: { use: 'gallery', headroom: { sevenFeet: 80, fiveFeet: 200 } } },
    },
    {
      what: `The same gallery with 7' over 120 sq ft`,
      sees: null,
      rooms: { loft: { use: 'gallery', headroom: { sevenFeet: 120, fiveFeet: 200 } } },
    },
  ],
  find: (house) =>
    house.rooms.flatMap(({ slug, name, use, measure }) => {
      const { fiveFeet, sevenFeet } = measure.headroom;
      if (!lived.includes(use) || sevenFeet >= fiveFeet * least.share) return [];
      const share = fiveFeet > 0 ? printAmount((sevenFeet / fiveFeet) * 100, 0) : '0';
      return [
        {
          room: slug,
          place: 'ceiling',
          placeText: 'Ceiling',
          selections: [],
          trades: tradesOf(house, isFraming),
          seen: `${name} has ${printLength(least.height)} or more over ${printArea(sevenFeet)}, ${share} % of the ${printArea(fiveFeet)} that has ${printLength(least.counted)}; its ceiling runs from ${printLength(measure.lowest)} to ${printLength(measure.highest)}.`,
          says: `A room to live in has ${printLength(least.height)} over at least half of the floor it needs; under a slope floor with less than ${printLength(least.counted)} does not count.`,
          ask: 'the architect and the building office',
        },
      ];
    }),
};
