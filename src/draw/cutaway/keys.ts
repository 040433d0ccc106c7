import { findPlaces, placeText } from '../../core/takeoff/index.js';
import type { RoomMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import type { Decal, Facet } from './facet.js';
import { finishWords, hasOpen, lookOf, partLook, type Look, type Looks } from './look.js';
import { covers, layFacet, type Laid } from './order.js';
import type { Axonometry } from './view.js';

/** A finish that is seen. */
export interface Key {
  /** In the picture; absent where no number has room on it. */
  readonly number?: number;
  /** `Floor`, `North and east walls`. */
  readonly at: string;
  readonly finish: string;
  readonly isOpen: boolean;
}

export interface PlacedKey extends Key {
  /** Of its number on the sheet, in feet. */
  readonly spot?: Spot;
}

/** Steps of the search for a free spot, each way. */
const steps = 14;
/** Facets of one finish that are looked at, the largest first. */
const looked = 3;

interface Group {
  readonly part: Part;
  /** As `finishWords` has it. */
  readonly finish: string;
  readonly isOpen: boolean;
  readonly places: string[];
  readonly facets: { readonly laid: Laid; readonly index: number; readonly size: number }[];
}

/** What of a room a finish is on, in the order of their numbers. */
const parts = ['surface', 'railing', 'base', 'trim', 'door', 'hardware'] as const;
type Part = (typeof parts)[number];

/** A facet of the picture with what lies on it. */
export interface Covered {
  readonly laid: Laid;
  readonly decals: readonly Decal[];
}

/** One number for a finish, where the freest part of it is seen; `radius` is what a number takes, in feet of the sheet. Without it there are no numbers. */
export function placeKeys(
  covered: readonly Covered[],
  looks: Looks,
  { measure, camera }: { readonly measure: RoomMeasure; readonly camera: Axonometry },
  radius: number | undefined,
): readonly PlacedKey[] {
  const laid = covered.map((one) => one.laid);
  const taken: Spot[] = [];
  const found = groupsOf(covered, looks, camera).map((group) => {
    const largest = group.facets.toSorted((one, other) => other.size - one.size).slice(0, looked);
    const spot = radius === undefined ? undefined : freest(largest, laid, taken, radius);
    if (spot) taken.push(spot);
    return { group, spot };
  });
  let number = 0;
  return found
    .toSorted((one, other) => rank(one.group, measure) - rank(other.group, measure))
    .map(({ group, spot }) => ({
      ...(spot && { number: (number += 1), spot }),
      ...keyOf(group, measure),
    }));
}

/** A finish at its places, in words. */
export function keyOf(
  { part, finish, isOpen, places }: Pick<Group, 'part' | 'finish' | 'isOpen' | 'places'>,
  measure: RoomMeasure,
): Key {
  const at = placeText(
    [],
    byMark(wholePlaces(places, measure), measure).flatMap((place) => findPlaces(place, measure) ?? []),
  );
  const isAlong = part === 'base' && places[0] !== 'base';
  return { at: isAlong ? `Base, ${at.charAt(0).toLowerCase()}${at.slice(1)}` : at, finish, isOpen };
}

/** Openings in the order of the record; all else as it is drawn. */
function byMark(places: readonly string[], { openings }: RoomMeasure): readonly string[] {
  const rankOf = (place: string): number => openings.findIndex(({ mark }) => mark === place);
  return places.toSorted((one, other) => rankOf(one) - rankOf(other));
}

/** A feature's name says its faces too, and stands for several of them. */
function wholePlaces(places: readonly string[], { features }: RoomMeasure): readonly string[] {
  const whole = places.map((place) => {
    const feature = features.find(({ id }) => place.startsWith(`${id}/`));
    const faces = places.filter((other) => feature && other.startsWith(`${feature.id}/`));
    return feature && faces.length > 1 ? feature.id : place;
  });
  return [...new Set(whole)].filter((place) => !whole.some((other) => place.startsWith(`${other}/`)));
}

/** Floor, walls, ceiling, what stands in the room, and then what lies on all of these. */
function rank({ part, places: [first = ''] }: Group, { walls }: RoomMeasure): number {
  if (part !== 'surface') return 3 + parts.indexOf(part);
  if (first === 'floor') return 0;
  if (first === 'ceiling') return 2;
  return walls.some(({ id }) => id === first) ? 1 : 3;
}

function groupsOf(covered: readonly Covered[], looks: Looks, camera: Axonometry): readonly Group[] {
  const groups = new Map<string, Group>();
  const add = (part: Part, look: Look, laid: Laid, index: number): void => {
    if (look.is === 'bare') return;
    const finish = finishWords(look);
    const name = `${part} ${finish}`;
    const group = groups.get(name) ?? { part, finish, isOpen: hasOpen(look), places: [], facets: [] };
    groups.set(name, group);
    if (!group.places.includes(look.place)) group.places.push(look.place);
    group.facets.push({ laid, index, size: sizeOf(laid) });
  };
  covered.forEach(({ laid, decals }, index) => {
    const { facet } = laid;
    const part = partOf(facet, looks);
    if (part) add(part, lookOf(facet, looks), laid, index);
    for (const { role, patches, place } of decals) {
      if (role === 'panel') continue;
      const of = role === 'knob' ? 'hardware' : role;
      const look = partLook(of, [place], looks);
      if (look) add(of, look, layFacet({ ...facet, patches }, camera), index);
    }
  });
  return [...groups.values()];
}

/** A frame that has no trim of its own has the finish of its wall. */
function partOf({ role, places }: Facet, looks: Looks): Part | undefined {
  if (role === 'finish') return 'surface';
  if (role === 'rail') return 'railing';
  if (role === 'door') return 'door';
  return role === 'frame' && partLook('trim', places, looks) ? 'trim' : undefined;
}

function sizeOf({ rings }: Laid): number {
  return rings.reduce((sum, ring) => sum + signed(ring), 0);
}

function signed(ring: readonly Spot[]): number {
  let twice = 0;
  ring.forEach(([x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length]!;
    twice += x * nextY - nextX * y;
  });
  return Math.abs(twice) / 2;
}

function freest(
  facets: Group['facets'],
  laid: readonly Laid[],
  taken: readonly Spot[],
  radius: number,
): Spot | undefined {
  let best: Spot | undefined;
  let most = 0.4 * radius;
  for (const { laid: one, index } of facets) {
    const later = laid.slice(index + 1).filter((other) => meets(one, other));
    const middle: Spot = [(one.left + one.right) / 2, (one.top + one.bottom) / 2];
    for (let i = 1; i < steps; i += 1)
      for (let j = 1; j < steps; j += 1) {
        const spot: Spot = [
          one.left + ((one.right - one.left) * i) / steps,
          one.top + ((one.bottom - one.top) * j) / steps,
        ];
        if (!covers(one, spot) || later.some((other) => covers(other, spot))) continue;
        if (taken.some((other) => Math.hypot(other[0] - spot[0], other[1] - spot[1]) < 3 * radius)) continue;
        const room = [one, ...later].reduce(
          (least, other) => Math.min(least, distanceTo(other, spot, least)),
          4 * radius,
        );
        const value = room - 0.02 * Math.hypot(spot[0] - middle[0], spot[1] - middle[1]);
        if (value > most) [best, most] = [spot, value];
      }
  }
  return best;
}

function meets(one: Laid, other: Laid): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

function distanceTo({ rings, left, right, top, bottom }: Laid, [x, y]: Spot, least: number): number {
  const off = Math.max(left - x, x - right, top - y, y - bottom);
  if (off > least) return least;
  let near = least;
  for (const ring of rings)
    ring.forEach(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length]!;
      const square = (bx - ax) ** 2 + (by - ay) ** 2;
      const share = square === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square));
      near = Math.min(near, Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay)));
    });
  return near;
}
