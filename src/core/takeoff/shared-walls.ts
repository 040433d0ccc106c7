import { bounds, intersect, patchFrom, type Patch } from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import { wallShape, wallWithin } from '../measure/index.js';
import type { Category, Convention, RoomMeasure, Selection, WallMeasure, WallStretch } from '../model/index.js';
import { quantityOf } from './convention/area.js';
import type { SharedWalls } from './convention/convention.js';
import { besideWall, stretchesOf } from './places.js';
import { resolvePlaces } from './resolve.js';

/** A room with what it selects. */
export interface SelectingRoom {
  readonly slug: string;
  readonly name: string;
  readonly measure: RoomMeasure;
  readonly selections: readonly Selection[];
}

/** What the rooms before this one count of the walls they share with it. Undefined where the category counts each side. `before` answers, in order, which of
 *  some rooms come before it: only its neighbours can share one. */
export function countedBefore(
  room: Pick<SelectingRoom, 'slug' | 'measure'>,
  { slug: category, measure: rule }: Category,
  before: (slugs: readonly string[]) => readonly SelectingRoom[],
): SharedWalls | undefined {
  if (rule.betweenRooms !== 'once') return undefined;
  const others = before([...neighboursOf(room.measure)]).map((from) => ({
    from,
    selected: selectedWalls(from, category),
  }));
  return new Map(
    room.measure.walls.flatMap((wall) => {
      const counted = others.flatMap(({ from, selected }) =>
        selected.flatMap((there) => {
          const net = sharedNet({ room, wall }, { room: from, wall: there }, rule);
          return net > 0 ? [{ room: from.name, net }] : [];
        }),
      );
      return counted.length > 0 ? [[wall.id, counted]] : [];
    }),
  );
}

/** Rooms that stand against a wall of a room, or beside one by its record. */
function neighboursOf(measure: RoomMeasure): ReadonlySet<string> {
  return new Set(
    measure.walls.flatMap((wall) => [
      ...besideWall(wall, measure),
      ...(stretchesOf(wall, measure) ?? []).flatMap(({ behind }) => behind?.room ?? []),
    ]),
  );
}

/** The walls that a room selects a category for, less those of which it selects what stands outside. What is open without a standard selects
 *  nothing yet. */
function selectedWalls({ measure, selections }: SelectingRoom, category: string): readonly WallMeasure[] {
  return selections
    .filter((selection) => selection.category === category && stands(selection))
    .flatMap((selection) => resolvePlaces(selection, measure).places)
    .flatMap((place) => (place.kind === 'wall' && place.part?.side !== 'outside' ? [place.wall] : []));
}

function stands({ chosen, standard }: Selection): boolean {
  return chosen === undefined ? standard !== undefined : chosen !== 'none';
}

interface SidedWall {
  readonly room: Pick<SelectingRoom, 'slug' | 'measure'>;
  readonly wall: WallMeasure;
}

/** Square feet that two rooms' walls have in common, by a category's convention: over the stretch where they stand against each other as laid
 *  out, the lesser of both sides. Where that is not laid out, how far two walls lie beside each other is not known: where both rooms say that
 *  they do, all of the wall there. */
function sharedNet(here: SidedWall, there: SidedWall, rule: Convention): number {
  const [own, others] = [facing(here, there), facing(there, here)];
  if (own && others) return Math.min(netOver(own, here, rule), netOver(others, there, rule));
  const isBeside =
    besideWall(here.wall, here.room.measure).includes(there.room.slug) &&
    besideWall(there.wall, there.room.measure).includes(here.room.slug);
  return isBeside ? quantityOf(there.wall.id, there.wall.name, there.wall, rule).net : 0;
}

/** The stretches of a wall that stand against another; undefined where that is not laid out. */
function facing({ room, wall }: SidedWall, other: SidedWall): readonly WallStretch[] | undefined {
  return stretchesOf(wall, room.measure)?.filter(
    ({ behind }) => behind?.room === other.room.slug && behind.wall === other.wall.id,
  );
}

function netOver(stretches: readonly WallStretch[], { wall, room }: SidedWall, rule: Convention): number {
  const shape = wallShape(wall);
  return stretches.reduce((sum, { from, to, behind }) => {
    const openings = room.measure.openings.filter((opening) => opening.to === behind?.room);
    const surface = wallWithin(wall, between(shape, feet(from), feet(to)), openings);
    return sum + quantityOf(wall.id, wall.name, surface, rule).net;
  }, 0);
}

/** What of a shape lies between two upright lines. */
function between(shape: Patch, left: number, right: number): readonly Patch[] {
  const { south, north } = bounds(shape.outline);
  const corners = [
    { x: left, y: south },
    { x: right, y: south },
    { x: right, y: north },
    { x: left, y: north },
  ];
  return intersect([shape], patchFrom(corners));
}
