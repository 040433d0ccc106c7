import {
  edges,
  headings,
  intersect,
  lengthOf,
  patchFrom,
  plus,
  ringInFeet,
  stretchDistance,
  type Patch,
  type Ring,
  type Xy,
} from '../../../base/geometry/index.js';
import { feet, fromInches, printLength, type Length } from '../../../base/units/index.js';
import type { Polygon } from '../../model/index.js';
import { flightOf, stairOf, type Stair } from '../../feature/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import { offsetBetween, type HouseView, type RoomView } from '../view.js';
import { isLadder } from './guards.js';
import type { ExampleRooms } from './example.js';
import { leavesIn, type Leaf } from './leaves.js';
import type { Finding, Rule } from './rule.js';
import { commonPractice } from './source.js';

/** What a leaf may reach over before it is told: what tapes miss. Common practice, no source. */
const play = fromInches(0.5);

/** Before the first riser and after the last. Source: IRC 2018, R311.7.6, from memory. */
const landingDepth = fromInches(36);

/** What stands in the way of a leaf, beside stairs. */
const obstacles = ['built-in', 'chimney-breast', 'half-wall'];

export const swingMeets: Rule = {
  id: 'swing-meets',
  title: 'Swing of a door',
  source: commonPractice('a leaf swings free of stairs, of what is built in and of other leaves'),
  limits: () => [
    {
      what: 'A leaf reaches over a stair, a built-in, a breast or the swing of another leaf by at most',
      text: printLength(play),
    },
  ],
  examples: [
    {
      what: 'A door of 2\'-6" beside a stair that begins 2\'-5" from its hinge',
      sees: 'reaches 1" over',
      rooms: besideStair('55"'),
    },
    {
      what: 'The same door, the stair 2\'-5 1/2" from its hinge, at the limit',
      sees: null,
      rooms: besideStair('54 1/2"'),
    },
    { what: 'The same door, the stair 2\'-6" from its hinge', sees: null, rooms: besideStair('54"') },
    {
      what: 'The door over the landing of a stair whose first riser is 4\'-0" from its hinge, along the wall',
      sees: 'reaches 1\'-6" over the landing at the foot',
      rooms: besideStair('84"', '60"'),
    },
    { what: 'The same, the first riser 5\'-6" from it, at the limit', sees: null, rooms: besideStair('84"', '78"') },
    { what: 'Two doors beside each other in one wall', sees: null, rooms: twoDoors() },
  ],
  find: (house) => house.rooms.flatMap((room) => leavesIn(room).flatMap((leaf) => meetings(house, room, leaf))),
};

function meetings(house: HouseView, room: RoomView, leaf: Leaf): readonly Finding[] {
  const zones = [
    ...[room, ...openTo(house, room)].flatMap((other) => zonesIn(house, room, other, leaf)),
    ...headsOf(house, room),
  ];
  return zones.flatMap(({ outline, meets }) => {
    const over = reachOver(leaf, outline);
    return over === undefined ? [] : [findingOf(house, room, leaf, meets(printLength(over)))];
  });
}

/** What a leaf may reach over, in the plan of the leaf's room, and words for what it does there. */
interface Zone {
  readonly outline: Patch;
  readonly meets: (over: string) => string;
}

/** In a room that no wall parts from the leaf's: what stands there, landings at the foot of stairs, and swings of other leaves. */
function zonesIn(house: HouseView, room: RoomView, other: RoomView, leaf: Leaf): readonly Zone[] {
  const off = offsetBetween(house, room, other);
  if (!off) return [];
  const features = other.measure.features.flatMap((feature): readonly Zone[] => {
    const { name, footprint = [] } = feature;
    const stair = stairOf(feature);
    if (stair ? isLadder(stair) : !obstacles.includes(feature.kind)) return [];
    const own = patchFrom(movedBy(ringInFeet(footprint), off));
    const stands: Zone = { outline: own, meets: (over) => `reaches ${over} over ${name}` };
    const landing = stair && landingOf(stair, footprint, 'foot', off);
    return landing
      ? [stands, { outline: landing, meets: (over) => `reaches ${over} over the landing at the foot of ${name}` }]
      : [stands];
  });
  // Of two leaves the one is told that comes first.
  const leaves = leavesIn(other)
    .filter(({ mark }) => room.slug + leaf.mark < other.slug + mark)
    .map(({ mark, sweep }) => ({
      outline: patchFrom(movedBy(sweep.outline, off)),
      meets: () => `swings through the swing of ${mark}`,
    }));
  return [...features, ...leaves];
}

/** Landings at the head of stairs that lead up to a room. */
function headsOf(house: HouseView, room: RoomView): readonly Zone[] {
  return (house.reach.flightsTo.get(room.slug) ?? []).flatMap(({ room: below, feature, stair }): readonly Zone[] => {
    const from = house.bySlug.get(below);
    const off = from && offsetBetween(house, room, from);
    const landing = off && !isLadder(stair) && landingOf(stair, feature.footprint ?? [], 'head', off);
    return landing
      ? [{ outline: landing, meets: (over) => `reaches ${over} over the landing at the head of ${feature.name}` }]
      : [];
  });
}

/** As wide as the flight. The footprint starts with the two corners at the foot. */
function landingOf(stair: Stair, footprint: Polygon, end: 'foot' | 'head', off: Xy): Patch | undefined {
  const [left, right] = movedBy(ringInFeet(footprint), off);
  if (!left || !right) return undefined;
  const run = feet(flightOf(stair).run);
  const [from, to] = end === 'foot' ? [-feet(landingDepth), 0] : [run, run + feet(landingDepth)];
  const go = headings[stair.go];
  const at = (point: Xy, by: number): Xy => ({ x: point.x + go.x * by, y: point.y + go.y * by });
  return patchFrom([at(left, from), at(right, from), at(right, to), at(left, to)]);
}

function movedBy(ring: Ring, off: Xy): Ring {
  return ring.map((point) => plus(point, off));
}

/** How far a leaf reaches over something when it stands where that is nearest to its hinge; undefined where it is free of it. */
function reachOver({ hinge, width, sweep }: Leaf, outline: Patch): Length | undefined {
  const common = intersect([sweep], outline).flatMap((patch) => edges(patch.outline));
  if (common.length === 0) return undefined;
  const nearest = Math.min(...common.map((edge) => stretchDistance([hinge, hinge], edge)));
  const over = lengthOf(width - nearest);
  return over > play + feetGrain ? over : undefined;
}

/** What lengths lose on their way through feet and back. */
const feetGrain = fromInches(1 / 64);

/** Rooms of its level that no wall parts from it, each once. */
function openTo(house: HouseView, { slug, level, measure }: RoomView): readonly RoomView[] {
  const others = new Set(measure.walls.flatMap(({ openTo: to }) => to ?? []));
  others.delete(slug);
  return [...others].flatMap((other) => house.bySlug.get(other) ?? []).filter((other) => other.level === level);
}

function findingOf(house: HouseView, { slug, name }: RoomView, { mark, width }: Leaf, meets: string): Finding {
  return {
    room: slug,
    place: mark,
    placeText: `Door ${mark}`,
    selections: [],
    trades: tradesOf(house, isFraming),
    seen: `The leaf of ${mark}, ${printLength(lengthOf(width))} wide, ${meets} in ${name}.`,
    says: 'A leaf that swings over a step or against what stands there opens only in part, and one who comes up a stair is met by it. Hinges on the other side, a swing to the other room or a door that slides change that.',
    ask: 'the designer which way it shall swing, before the opening is framed; the building office where it swings over a stair',
  };
}

/** A door a foot from the west end of a north wall, hinged there; its leaf comes 2'-6" into the room, to 7'-6". A flight goes east below it. */
function besideStair(y: string, x = '0"'): ExampleRooms {
  const stair = {
    kind: 'stair',
    rise: '84"',
    risers: 12,
    going: '10"',
    width: '36"',
    x,
    y,
    go: 'east',
    rails: 0,
    handrails: 1,
  };
  return { hall: { openings: { D1: { to: 'study', hinge: 'left' } }, features: { stair } }, study: {} };
}

function twoDoors(): ExampleRooms {
  const doors = { D1: { to: 'study', hinge: 'left' }, D2: { to: 'study', hinge: 'right', at: `4'-0"` } } as const;
  return { hall: { openings: doors }, study: {} };
}
