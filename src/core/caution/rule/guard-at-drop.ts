import { factOf } from '../../fact/index.js';
import { fromInches, printLength } from '../../../base/units/index.js';
import { isRailing, stairOf, tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import { joinWords, optionWords, sideWords } from '../words.js';
import { guardedDrop, guardsOf } from './guards.js';
import type { ExampleRooms, ExampleSelection } from './example.js';
import type { Finding, Rule } from './rule.js';

/** Source: IRC 2018, R312.1.2 and its exception for stairs, as a county publishes it. */
const least = { floor: fromInches(36), stair: fromInches(34) };
const ask = 'the building office, before the shop drawing';
const says =
  'An open side more than 30" above what is below it wants a guard of at least 36", on the open side of a stair of at least 34" above the nosings.';

export const guardAtDrop: Rule = {
  id: 'guard-at-drop',
  title: 'Guard at a drop',
  source: { document: 'International Residential Code', edition: '2018', section: 'R312.1.1 and R312.1.2' },
  limits: [
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
    says,
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
        says,
        ask,
      },
    ];
  });
}

/** Open sides towards a lower level where no drop is recorded. The side where a stair arrives has none. */
function unrecorded(room: RoomView, house: HouseView): readonly Finding[] {
  const height = ({ level }: RoomView): number => house.levels.indexOf(level);
  const edges = new Set(room.measure.features.flatMap(edgeWalls));
  return room.measure.walls.flatMap((wall) => {
    const below = wall.openTo === undefined ? undefined : house.bySlug.get(wall.openTo);
    if (!below || height(below) >= height(room) || edges.has(wall.id)) return [];
    const arrives = below.measure.features.some((feature) => (stairOf(feature)?.width ?? -1) >= wall.run);
    if (arrives) return [];
    return [
      {
        room: room.slug,
        place: wall.id,
        placeText: sideWords(wall.name, below.name),
        selections: [],
        trades: tradesOf(house, isRailing),
        seen: `${wall.name}, ${printLength(wall.run)} long, is open to ${below.name} on the level below; its drop is not recorded.`,
        says,
        ask: 'the builder: record a drop-edge there, or the stair that arrives',
      },
    ];
  });
}

/** Walls along which an edge with a drop is recorded. */
function edgeWalls({ drop, data }: RoomView['measure']['features'][number]): readonly string[] {
  const wall = (data as { readonly wall?: unknown } | undefined)?.wall;
  return drop !== undefined && typeof wall === 'string' ? [wall] : [];
}

function loft(...selections: readonly ExampleSelection[]): ExampleRooms {
  return { loft: { selections, features: { edge: { kind: 'drop-edge', wall: 'north', drop: `8'` } } } };
}
