import { feet, fromFeet, type Length } from '../units/index.js';
import { patchFrom } from './patch.js';
import type { Patch, Ring, Xy } from './xy.js';

interface LengthPoint {
  readonly x: Length;
  readonly y: Length;
}

/** Feet as whole nanometres, never -0. */
export function lengthOf(value: number): Length {
  return (fromFeet(value) + 0) as Length;
}

export function pointInFeet(point: LengthPoint): Xy {
  return { x: feet(point.x), y: feet(point.y) };
}

export function pointOf(xy: Xy): LengthPoint {
  return { x: lengthOf(xy.x), y: lengthOf(xy.y) };
}

export function ringInFeet(points: readonly LengthPoint[]): Ring {
  return points.map(pointInFeet);
}

export function pointsOf(ring: Ring): readonly LengthPoint[] {
  return ring.map(pointOf);
}

interface LengthRegion {
  readonly outline: readonly LengthPoint[];
  readonly holes: readonly (readonly LengthPoint[])[];
}

export function patchInFeet({ outline, holes }: LengthRegion): Patch {
  return patchFrom(ringInFeet(outline), holes.map(ringInFeet));
}

/** A patch as points in whole nanometres, keeping the turn of its rings. */
export function regionOf(patch: Patch): LengthRegion {
  return { outline: pointsOf(patch.outline), holes: patch.holes.map(pointsOf) };
}
