import { factOf } from '../../fact/index.js';
import { lengthOfStretches, stretchLess, type Stretch } from '../../../base/geometry/index.js';
import { fromInches, printLength, type Length } from '../../../base/units/index.js';
import { edgeStretch, type DropEdge } from '../../feature/index.js';
import { edgeOf, isRailing, tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import { joinWords, optionWords, sideWords } from '../words.js';
import { guardedDrop, guardsOf } from './guards.js';
import type { ExampleRooms, ExampleSelection } from './example.js';
import type { Finding, Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2018, R312.1.2 and its exception for stairs, as a county publishes it. */
const least = { floor: fromInches(36), stair: fromInches(34) };
const ask = 'the building office, before the shop drawing';
const says = (): string =>
  `An open side more than ${printLength(guardedDrop)} above what is below it wants a guard of at least ${printLength(least.floor)}, on the open side of a stair of at least ${printLength(least.stair)} above the nosings.`;

export const guardAtDrop: Rule = {
  id: 'guard-at-drop',
  title: 'Guard at a drop',
  source: residentialCode('R312.1.1 and R312.1.2'),
  limits: () => [
    { what: 'Drop that wants a guard, more than', text: printLength(guardedDrop) },
    { what: 'Height of a guard, at least', text: printLength(least.floor) },
    { what: 'Height on the open side of a stair, at least', text: printLength(least.stair) },
  ],
  examples: [
    { what: `An edge 8' above the floor below, and no railing`, sees: 'no guard is selected', rooms: loft() },
    {
      what: `The same edge with a railing 36" high`,
      sees: null,
      rooms: loft({ of: 'railing', at: 'edge', facts: { height: '36"' } }),
    },
    {
      what: 'A hole in the floor, and no edge recorded along it',
      sees: 'The floor ends at Well, side east',
      rooms: { loft: { level: 'upper', voids: { Well: ['east'] } } },
    },
  ],
  find: (house) => house.rooms.flatMap((room) => [...missing(room, house), ...low(room), ...unrecorded(room, house)]),
};

function missing(room: RoomView, house: HouseView): readonly Finding[] {
  return guardsOf(room).unguarded.map(({ hazard: { feature, fall }, declined }) => ({
    room: room.slug,
    place: feature.id,
    placeText: feature.name,
    selections: declined ? [declined.id] : [],
    trades: tradesOf(house, isRailing),
    seen: `${feature.name} stands ${printLength(fall)} above the floor below, and ${declined ? 'a guard was deliberately left out' : 'no guard is selected'}.`,
    says: says(),
    ask,
  }));
}

function low(room: RoomView): readonly Finding[] {
  return guardsOf(room).guards.flatMap(({ railing, hazards }) => {
    const limit = hazards.every(({ isStair }) => isStair) ? least.stair : least.floor;
    const seen = railing.options.flatMap((option) => {
      const height = factOf(option, 'railing', 'height');
      if (height === undefined) return [`${optionWords(railing, option)}: the height is not recorded.`];
      return height < limit ? [`${optionWords(railing, option)}: ${printLength(height)} high.`] : [];
    });
    if (seen.length === 0) return [];
    const places = joinWords(hazards.map(({ feature, fall }) => `${feature.name}, a fall of ${printLength(fall)}`));
    return [
      {
        room: room.slug,
        place: hazards[0].feature.id,
        placeText: railing.placeText,
        selections: [railing.id],
        trades: [railing.category.trade],
        seen: `${seen.join(' ')} It guards ${places}.`,
        says: says(),
        ask,
      },
    ];
  });
}

/** Sides of the room and of holes in its floor where floor ends and no drop is recorded. */
function unrecorded(room: RoomView, house: HouseView): readonly Finding[] {
  const bare = openSides(room, house);
  const flights = house.reach.flightsTo.get(room.slug) ?? [];
  const arrivals = bare.filter(({ length }) => flights.some(({ stair }) => stair.width >= length));
  // Where a stair arrives there is no guard; each stair arrives at one side.
  const isClear = arrivals.length <= flights.length;
  const stairs = joinWords(flights.map(({ feature }) => feature.name));
  return bare
    .filter((side) => !isClear || !arrivals.includes(side))
    .map((side) => ({
      room: room.slug,
      place: side.place,
      placeText: side.placeText,
      selections: [],
      trades: tradesOf(house, isRailing),
      seen: `${side.seen}${arrivals.includes(side) ? ` ${stairs} may arrive here or at another open side.` : ''}`,
      says: says(),
      ask: 'the builder: record a drop-edge there, or the stair that arrives',
    }));
}

interface OpenSide {
  readonly place: string;
  readonly placeText: string;
  readonly seen: string;
  /** Of it what has no edge recorded. */
  readonly length: Length;
}

function openSides(room: RoomView, house: HouseView): readonly OpenSide[] {
  const height = ({ level }: RoomView): number => house.levels.indexOf(level);
  const { walls, voids } = room.measure;
  const edges = room.measure.features.flatMap((feature) => {
    const edge = edgeOf(feature);
    return edge ? [edge] : [];
  });
  const sides = walls.flatMap((wall): OpenSide[] => {
    const below = wall.openTo === undefined ? undefined : house.bySlug.get(wall.openTo);
    if (!below || height(below) >= height(room)) return [];
    const own = edges.filter((edge) => edge.wall === wall.id);
    const length = bareLength([{ from: 0, to: wall.run }], own, wall.run);
    const whole =
      own.length === 0
        ? `${printLength(wall.run)} long, is`
        : `over ${printLength(length)} without a recorded edge, is`;
    const seen = `${wall.name}, ${whole} open to ${below.name} on the level below; its drop is not recorded.`;
    return [{ place: wall.id, placeText: sideWords(wall.name, below.name), seen, length }];
  });
  const holes = voids.flatMap(({ id, name, sides: around }) =>
    around.map((side): OpenSide => {
      const own = edges.filter((edge) => edge.void === name && edge.side === side.name);
      const length = bareLength(side.edges, own, side.run);
      const placeText = `${name}, side ${side.name}`;
      const seen = `The floor ends at ${placeText}, over ${printLength(length)} without a recorded edge; its drop is not recorded.`;
      return { place: `${id}-${side.name}`, placeText, seen, length };
    }),
  );
  return [...sides, ...holes].filter(({ length }) => length >= gap);
}

/** Between the end of a guard and a wall a ball of this size must not go through. Source: IRC 2018, R312.1.3. */
const gap = fromInches(4);

/** What edges leave of the stretches of a side, which lie apart. */
function bareLength(stretches: readonly Stretch[], edges: readonly DropEdge[], run: Length): Length {
  const taken = edges.map((edge) => edgeStretch(edge, run));
  return lengthOfStretches(stretches.flatMap((stretch) => stretchLess(stretch, taken))) as Length;
}

function loft(...selections: readonly ExampleSelection[]): ExampleRooms {
  return { loft: { selections, features: { edge: { kind: 'drop-edge', wall: 'north', drop: `8'` } } } };
}
