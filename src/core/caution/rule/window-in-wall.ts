import {
  bounds,
  boundsMeet,
  direction,
  grown,
  intersect,
  lengthOf,
  patchFrom,
  plus,
  pointInFeet,
  ringInFeet,
  type Bounds,
  type Patch,
  type Xy,
} from '../../../base/geometry/index.js';
import { feet, fromInches, keepBy, printLength, type Length } from '../../../base/units/index.js';
import type { OpeningMeasure } from '../../model/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import type { ExampleRooms } from './example.js';
import { openingLine } from './glazing.js';
import type { Finding, Rule } from './rule.js';
import { commonPractice } from './source.js';

/** A stud that carries the header stands beside an opening. Common practice, no source. */
const stud = fromInches(1.5);

/** How far before the framing it is looked, in feet: less than any wall is thick. */
const depth = 1 / 12;

export const windowInWall: Rule = {
  id: 'window-in-wall',
  title: 'Window at an inner corner',
  source: commonPractice('an opening stays clear of the wall that goes out beside it'),
  limits: () => [
    { what: 'From an opening to the framing of an outside wall beside it, at least', text: printLength(stud) },
  ],
  examples: [
    {
      what: 'A window that reaches 1" into the thickness of the outside wall beside it',
      sees: 'lies 1" behind the framing',
      rooms: corner(`2'-11 1/2"`),
    },
    { what: 'One that ends where that framing begins', sees: 'ends at the framing', rooms: corner(`2'-10 1/2"`) },
    { what: 'One that ends 1" from it', sees: 'ends 1" from the framing', rooms: corner(`2'-9 1/2"`) },
    { what: 'One that ends 1 1/2" from it, at the limit', sees: null, rooms: corner(`2'-9"`) },
  ],
  find: (house) => {
    const wallsOn = keepBy(
      (level: string) => level,
      (level) => house.rooms.filter((room) => room.level === level).flatMap((room) => wallsOf(house, room)),
    );
    return house.rooms.flatMap((room) =>
      room.measure.openings
        .filter(({ own, to }) => own && to === 'outside')
        .flatMap((opening) => behindWall(house, room, opening, wallsOn(room.level))),
    );
  },
};

/** A room's plan with outside walls all around, in the coordinates of the rooms that it hangs together with. */
interface Walls {
  readonly room: RoomView;
  readonly group: number;
  readonly patches: readonly Patch[];
  readonly within: Bounds;
}

function wallsOf({ stands, outsideWall }: HouseView, room: RoomView): readonly Walls[] {
  const stand = stands.get(room.slug);
  if (!stand || room.measure.plan.length === 0) return [];
  const at = pointInFeet(stand.at);
  const plan = ringInFeet(room.measure.plan).map((point) => plus(point, at));
  const patches = grown([patchFrom(plan)], feet(outsideWall));
  return [{ room, group: stand.group, patches, within: bounds(patches.flatMap(({ outline }) => outline)) }];
}

function behindWall(
  house: HouseView,
  room: RoomView,
  opening: OpeningMeasure,
  walls: readonly Walls[],
): readonly Finding[] {
  const line = openingLine(room, opening);
  const stand = house.stands.get(room.slug);
  if (!line || !stand) return [];
  const at = pointInFeet(stand.at);
  const [left, right] = [plus(line[0], at), plus(line[1], at)];
  const before = stripBefore([left, right], feet(house.outsideWall));
  const within = bounds(before.outline);
  const [worst] = walls
    // Most rooms are far away.
    .filter((other) => other.group === stand.group && boundsMeet(within, other.within))
    .map(({ room: other, patches }) => ({ other, by: behind(before, [left, right], patches) }))
    .toSorted((a, b) => b.by - a.by);
  if (!worst || worst.by <= grain) return [];
  const word = opening.kind === 'door' ? 'Door' : 'Window';
  const whose = worst.other.slug === room.slug ? 'another wall of the room' : `a wall of ${worst.other.name}`;
  return [
    {
      room: room.slug,
      place: opening.mark,
      placeText: `${word} ${opening.mark}`,
      selections: [],
      trades: tradesOf(house, isFraming),
      seen: `${word} ${opening.mark} of ${room.name} ${whereIs((worst.by - stud) as Length)} of ${whose}, which goes out beside it.`,
      says: 'What lies behind a wall cannot be glazed or cased outside, and cladding, a stud and its flashing want room beside the opening too.',
      ask: 'the framer for the rough opening, and the designer whether the window moves or becomes narrower',
    },
  ];
}

/** What lengths lose on their way through feet and back. */
const grain = fromInches(1 / 64);

function whereIs(over: Length): string {
  if (over > grain) return `lies ${printLength(over)} behind the framing`;
  return over < -grain ? `ends ${printLength(-over as Length)} from the framing` : 'ends at the framing';
}

/** A thin strip along an opening and the studs beside it, just before the outside of its wall's framing. */
function stripBefore([left, right]: readonly [Xy, Xy], wall: number): Patch {
  const along = direction(left, right);
  const out = { x: -along.y, y: along.x };
  const at = (from: Xy, by: number): Xy => ({ x: from.x + out.x * by, y: from.y + out.y * by });
  const beside = (point: Xy, by: number): Xy => ({ x: point.x + along.x * by, y: point.y + along.y * by });
  const start = wall + depth / 100;
  const [from, to] = [beside(left, -feet(stud)), beside(right, feet(stud))];
  return patchFrom([at(from, start), at(to, start), at(to, start + depth), at(from, start + depth)]);
}

/** How much of a strip, along the opening, walls stand before. */
function behind(strip: Patch, [left, right]: readonly [Xy, Xy], patches: readonly Patch[]): Length {
  const along = direction(left, right);
  const places = patches
    .flatMap((walls) => intersect([strip], walls))
    .flatMap(({ outline }) => outline.map(({ x, y }) => (x - left.x) * along.x + (y - left.y) * along.y));
  return places.length === 0 ? (0 as Length) : lengthOf(Math.max(...places) - Math.min(...places));
}

/** A study of 10' by 10' and a window in its north wall, 7'-0" from the west; east of it, behind 4 1/2", a parlor that goes on to the north, so that
 *  the outside of its wall, 6" from its face, is 9'-10 1/2" from the study's west. */
function corner(width: string): ExampleRooms {
  const W1 = { kind: 'window', to: 'outside', at: `7'-0"`, width } as const;
  return {
    study: { openings: { W1 }, stands: { x: '0"', y: '0"', size: [`10'`, `10'`] } },
    parlor: { stands: { x: `10'-4 1/2"`, y: '0"', size: [`10'`, `20'`] } },
  };
}
