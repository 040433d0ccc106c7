import { factOf } from '../../fact/index.js';
import { feet, fromInches, printArea, printLength, type Area, type Length } from '../../../base/units/index.js';
import type { Option } from '../../model/index.js';
import { isStone, tradesOf } from '../look-up.js';
import { optionWords } from '../words.js';
import { fireplacesOf, type Fireplace } from './fireplace.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2006 to 2018, R1001.10. An opening of exactly 6 sq ft takes the larger size. */
const large = 6 as Area;
const least = {
  small: { front: fromInches(16), side: fromInches(8) },
  large: { front: fromInches(20), side: fromInches(12) },
};

export const hearthExtension: Rule = {
  id: 'hearth-extension',
  title: 'Hearth extension for the size of the opening',
  source: residentialCode('R1001.10; R1004.2 for listed units'),
  limits: () => [
    { what: `Opening under ${printArea(large)}: front and each side, at least`, text: sizeText(least.small) },
    { what: `Opening of ${printArea(large)} or more: front and each side, at least`, text: sizeText(least.large) },
  ],
  examples: [
    {
      what: 'A wood fire with an opening of 6 sq ft, and a hearth that reaches 16" to the front',
      sees: `the hearth reaches 1'-4" to the front`,
      rooms: hearthOf('16"'),
    },
    { what: 'The same fire with a hearth that reaches 20"', sees: null, rooms: hearthOf('20"') },
  ],
  find: (house) =>
    fireplacesOf(house).flatMap((fireplace) => {
      const seen = fireplace.options.flatMap((option) => seenAt(fireplace, option));
      if (seen.length === 0) return [];
      const { room, feature, unit } = fireplace;
      return [
        {
          room: room.slug,
          place: `${feature.id}/hearth`,
          placeText: `${feature.name}, hearth`,
          selections: unit ? [unit.id] : [],
          trades: unit ? [unit.category.trade] : tradesOf(house, isStone),
          seen: seen.join(' '),
          says: `Before a wood fire in masonry the floor is fireproof for ${sizeText(least.small)}; from ${printArea(large)} of opening for ${sizeText(least.large)}. A factory-built unit follows its own listing.`,
          ask: "the mason, with the unit's listing in hand, and the building office",
        },
      ];
    }),
};

/** Sides are measured from the opening, which stands in the middle of the hearth. */
function seenAt(
  { breast: { firebox, hearth }, unit, feature }: Fireplace,
  option: Option | undefined,
): readonly string[] {
  const fuel = factOf(option, 'fireplace', 'fuel');
  if (fuel === 'gas') return [];
  const width = factOf(option, 'fireplace', 'opening-width') ?? firebox.width;
  const height = factOf(option, 'fireplace', 'opening-height') ?? firebox.height;
  const area = (feet(width) * feet(height)) as Area;
  const limit = area >= large ? least.large : least.small;
  const name = unit && option ? optionWords(unit, option) : feature.name;
  const opening = `${name}, opening ${printLength(width)} by ${printLength(height)}, ${printArea(area)}`;
  const unknown = fuel === undefined ? [`${name}: what it burns is not recorded.`] : [];
  if (!hearth) return [...unknown, `${opening}: no hearth is recorded.`];
  const side = ((hearth.width - width) / 2) as Length;
  if (hearth.depth >= limit.front && side >= limit.side) return unknown;
  return [
    ...unknown,
    `${opening}: the hearth reaches ${printLength(hearth.depth)} to the front and ${printLength(side)} to each side.`,
  ];
}

function sizeText({ front, side }: { readonly front: Length; readonly side: Length }): string {
  return `${printLength(front)} and ${printLength(side)}`;
}

function hearthOf(depth: string): ExampleRooms {
  const firebox = { width: '36"', height: '24"', sill: '12"' };
  return {
    parlor: {
      features: { breast: { kind: 'chimney-breast', firebox, hearth: { width: '60"', depth } } },
      selections: [{ of: 'fireplace', at: 'breast', facts: { fuel: 'wood' } }],
    },
  };
}
