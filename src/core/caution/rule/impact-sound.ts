import { carries, factOf } from '../../fact/index.js';
import { knownAround, quietUses, type Option } from '../../model/index.js';
import { isSoundInsulation, selectionsAt, tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import { joinWords, optionWords } from '../words.js';
import type { ExampleRooms, ExampleSelection } from './example.js';
import { floorFinish } from './floor-finish.js';
import type { Finding, Rule } from './rule.js';
import { commonPractice } from './source.js';

/** What a code asks of the floor between two dwellings; inside one it asks nothing, and this is the yardstick at hand.
 *  Source: IBC 2018, 1206.3, from memory. */
const least = 50;

export const impactSound: Rule = {
  id: 'impact-sound',
  title: 'Steps on a hard floor over a quiet room',
  source: commonPractice(
    'a hard floor over a room for sleep or work gets a resilient layer under it, or a ceiling that hangs clear',
  ),
  limits: () => [{ what: 'Tested floor and ceiling, where a rating is recorded, at least', text: `IIC ${least}` }],
  examples: [
    {
      what: 'Boards over a bedroom, with nothing under them',
      sees: 'Nothing against the sound of steps',
      rooms: over(),
    },
    { what: 'The same boards on an underlayment', sees: null, rooms: over({ underlayment: 'cork' }) },
    {
      what: 'The same boards with sound insulation over the bedroom',
      sees: null,
      rooms: over({}, { of: 'sound-insulation', at: 'ceiling', facts: { stc: 50 } }),
    },
    { what: 'Carpet over the bedroom', sees: null, rooms: over({ kind: 'carpet' }) },
    { what: 'Boards tested at IIC 49', sees: 'tested at IIC 49', rooms: over({ underlayment: 'cork', iic: 49 }) },
    { what: 'Boards tested at IIC 50, at the limit', sees: null, rooms: over({ iic: 50 }) },
  ],
  find: (house) => house.rooms.flatMap((room) => stepsOver(house, room)),
};

function stepsOver(house: HouseView, room: RoomView): readonly Finding[] {
  const floor = floorFinish(room);
  if (!floor || !isHard(floor.counted)) return [];
  const heard = (knownAround(room.measure)?.under ?? []).flatMap(({ room: slug }) => {
    const below = house.bySlug.get(slug);
    return below && quietUses.includes(below.use) && !isStilled(room, floor.counted, below) ? [below] : [];
  });
  if (heard.length === 0) return [];
  const { selection, counted } = floor;
  const iic = factOf(counted, 'flooring', 'iic');
  const rating =
    iic === undefined ? 'Nothing against the sound of steps is recorded between' : `It is tested at IIC ${iic}`;
  return [
    {
      room: room.slug,
      place: 'floor',
      placeText: 'Floor',
      selections: [selection.id],
      trades: [
        ...new Set([
          selection.category.trade,
          ...tradesOf(house, (category) => carries(category, 'sound-insulation', 'stc')),
        ]),
      ],
      seen: `${room.name}: ${optionWords(selection, counted)}, over ${joinWords(heard.map(({ name }) => name))}. ${rating}.`,
      says: `Between two dwellings the International Building Code asks for IIC ${least} (2018, 1206.3, from memory); inside one it asks for none, and this is for comfort. Steps on a hard floor are heard below. What takes most of them off is soft underfoot, a resilient layer under the floor, or a ceiling that hangs clear of the joists; batts between these take off little.`,
      ask: 'the owners what they want to hear below, and the flooring contractor for a floor tested with its underlayment and ceiling',
    },
  ];
}

/** Tile, boards and sheets: all that is no carpet. */
function isHard(option: Option): boolean {
  return factOf(option, 'flooring', 'kind') !== 'carpet';
}

/** A tested floor by its figure; any other by what lies between the two rooms. */
function isStilled(above: RoomView, floor: Option, below: RoomView): boolean {
  const iic = factOf(floor, 'flooring', 'iic');
  if (iic !== undefined) return iic >= least;
  if (factOf(floor, 'flooring', 'underlayment') !== undefined) return true;
  return [...selectionsAt(above, 'floor'), ...selectionsAt(below, 'ceiling')].some(isSoundInsulation);
}

function over(
  facts: Extract<ExampleSelection, { of: 'flooring' }>['facts'] = {},
  ...below: readonly ExampleSelection[]
): ExampleRooms {
  return {
    hall: { level: 'upper', over: ['bedroom'], selections: [{ of: 'flooring', at: 'floor', facts }] },
    bedroom: { use: 'bedroom', selections: below },
  };
}
