import {
  bounds,
  contains,
  counterClockwise,
  distance,
  edges,
  patchFrom,
  patchInFeet,
  planeOf,
  ringInFeet,
  uprightPlane,
  type Patch,
  type Plane,
  type Ring,
  type SpaceFace,
  type Xy,
} from '../../base/geometry/index.js';
import type { FeatureMeasure, RoomMeasure, SwatchRole } from '../model/index.js';
import { facetPlane } from './ceiling-plane.js';
import { wallFrame, type WallFrame } from './wall-frame.js';

/** A flat face of what stands in a room, in the room's own coordinates, for drawings in space. */
export interface SolidFace extends SpaceFace {
  /** Places of selections whose finish it has, by the first of them that has one. */
  readonly places: readonly string[];
  /** Of what is made of several materials: which of them it is. */
  readonly tint?: SwatchRole;
  /** `hollow` is dark within, as a firebox; `cut` is seen only where what is above it is taken away; absent: it has a finish. */
  readonly role?: 'hollow' | 'cut' | 'glass';
}

/** What a kind of feature may know of its room when it is drawn in space, in feet. */
export interface SolidSpace {
  readonly room: RoomMeasure;
  /** South-west corner of the plan: `x` and `y` in a feature's record are from here. */
  readonly corner: Xy;
  /** The room's walls, to stand against. */
  wall(name: string): WallFrame | undefined;
  /** The plane of the ceiling over a place of the plan. */
  ceilingOver(place: Xy): Plane | undefined;
}

export function solidSpace(room: RoomMeasure): SolidSpace {
  const { plan, walls, ceiling } = room;
  const { west, south } = bounds(ringInFeet(plan));
  const facets = ceiling.facets.map((facet) => ({ outline: ringInFeet(facet.plan.outline), plane: facetPlane(facet) }));
  return {
    room,
    corner: { x: west, y: south },
    wall: (name) => {
      const wall = walls.find(({ id }) => id === name);
      return wall && wallFrame({ walls: [{ ...wall, name }] }, name);
    },
    ceilingOver: (place) => facets.find(({ outline }) => contains(outline, place))?.plane,
  };
}

/** The upright sides of an outline in plan between two heights, each with its number from the outline's first edge. */
export function sidesOf(
  outline: Ring,
  from: number,
  to: number,
  places: (edge: number) => readonly string[],
): readonly SolidFace[] {
  return edges(counterClockwise(outline)).map(([a, b], index) => ({
    plane: uprightPlane(a, b, from),
    patches: [box(distance(a, b), to - from)],
    places: places(index),
  }));
}

/** A level face over an outline in plan, seen from above or from under it. */
export function levelFace(outline: Ring, height: number, faces: 'up' | 'down', places: readonly string[]): SolidFace {
  const plane = planeOf({ x: 0, y: 0, z: height }, { x: 1, y: 0, z: 0 }, { x: 0, y: 1, z: 0 });
  return {
    plane: faces === 'up' ? plane : { ...plane, faces: { x: 0, y: 0, z: -1 } },
    patches: [patchFrom(outline)],
    places,
  };
}

/** A prism over an outline in plan: its sides and its top, as what stands on a floor is seen. */
export function standing(outline: Ring, from: number, to: number, places: readonly string[]): readonly SolidFace[] {
  return [...sidesOf(outline, from, to, () => places), levelFace(outline, to, 'up', places)];
}

/** Faces of a feature by the end of its id, as its measure has them: true-size, over the floor that it stands on. */
export function faceNamed({ id, faces }: FeatureMeasure, name: string): readonly Patch[] {
  const found = faces.find((face) => face.id === `${id}/${name}`);
  return (found?.regions ?? []).map(patchInFeet);
}

/** An upright plane before a wall or square to it, between two places given along the wall and out from it. */
export function planeBefore(frame: WallFrame, from: Xy, to: Xy, height: number): SpaceFace['plane'] {
  return uprightPlane(frame.place(from.x, from.y), frame.place(to.x, to.y), height);
}

export function box(width: number, height: number): Patch {
  return patchFrom([
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ]);
}
