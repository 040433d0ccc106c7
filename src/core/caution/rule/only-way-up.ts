import { flightOf, type Stair } from '../../feature/index.js';
import { fromInches, printArea, printLength, type Area } from '../../../base/units/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import type { ExampleRooms } from './example.js';
import { floorsAbove, type FloorAbove } from './floors-above.js';
import { isLadder } from './guards.js';
import type { Finding, Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2018, R311.7.1, R311.7.5.1 and R311.7.5.2; R311.7.11 and R311.7.12 for what is steeper. */
const limits = { riser: fromInches(7.75), going: fromInches(10), width: fromInches(36), area: 200 as Area };

export const onlyWayUp: Rule = {
  id: 'only-way-up',
  title: 'Ladder or steep stair as the only way up',
  source: residentialCode('R311.7.1, R311.7.5, R311.7.11 and R311.7.12'),
  limits: () => [
    { what: 'Riser, at most', text: printLength(limits.riser) },
    { what: 'Going, at least', text: printLength(limits.going) },
    { what: 'Width, at least', text: printLength(limits.width) },
    { what: 'Floor that a ladder alone may serve, at most', text: printArea(limits.area) },
  ],
  examples: [
    {
      what: 'A ladder with goings of 5" as the only way up to a loft of 300 sq ft',
      sees: 'is the only way up to 300 sq ft',
      rooms: loft({ going: '5"', width: '24"' }),
    },
    {
      what: 'A stair with goings of 10", 36" wide, to the same loft',
      sees: null,
      rooms: loft({ going: '10"', width: '36"' }),
    },
  ],
  find: (house) => floorsAbove(house).flatMap((floor) => steepWays(house, floor)),
};

/** Ways up to one floor, where none of them is a stair. */
function steepWays(house: HouseView, { rooms, words, isWhole, area, ways }: FloorAbove): readonly Finding[] {
  const isSmall = area <= limits.area && rooms.every(isPlain);
  if (isSmall || ways.some(({ stair }) => steepness(stair).length === 0)) return [];
  const of = isWhole ? '' : ` in ${words}`;
  return ways.flatMap(({ room, feature: { id, name }, stair }) => {
    const kind = isLadder(stair) ? `${name}, a ladder,` : name;
    const seen = `${kind} is the only way up to ${printArea(area)} of floor${of}, and it has ${steepness(stair).join(', ')}.`;
    const stands = house.bySlug.get(room);
    return stands ? [finding(house, stands, { place: id, placeText: name, seen })] : [];
  });
}

/** A room that a ladder alone may serve: no kitchen, no bath. */
function isPlain({ use }: RoomView): boolean {
  return use !== 'kitchen' && use !== 'bath' && use !== 'powder';
}

/** What makes a stair a ladder to the source; none for a stair. */
function steepness(stair: Stair): readonly string[] {
  const { riser } = flightOf(stair);
  return [
    ...(riser > limits.riser ? [`risers of ${printLength(riser)}`] : []),
    ...(stair.going < limits.going ? [`a going of ${printLength(stair.going)}`] : []),
    ...(stair.width < limits.width ? [`a width of ${printLength(stair.width)}`] : []),
  ];
}

function finding(
  house: HouseView,
  room: RoomView,
  { place, placeText, seen }: Pick<Finding, 'place' | 'placeText' | 'seen'>,
): Finding {
  return {
    room: room.slug,
    place,
    placeText,
    selections: room.selections.filter(({ places }) => places.some(({ id }) => id === place)).map(({ id }) => id),
    trades: tradesOf(house, (category) => category.measure.by === 'stair' || isFraming(category)),
    seen,
    says: `A stair has risers of at most ${printLength(limits.riser)}, goings of at least ${printLength(limits.going)} and is ${printLength(limits.width)} wide or more. What is steeper, a ladder among it, is an extra way up beside one, except to at most ${printArea(limits.area)} without kitchen or bath.`,
    ask: 'the architect and the building office, before the opening is framed',
  };
}

function loft(flight: { readonly going: string; readonly width: string }): ExampleRooms {
  return {
    hall: { features: { stair: { kind: 'stair', rise: `9'`, risers: 14, rails: 0, ...flight } } },
    loft: { level: 'upper', use: 'gallery', floor: 300 },
  };
}
