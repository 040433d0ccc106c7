import { spaceDot, type Xyz } from '../../base/geometry/index.js';
import type { Spot } from '../convex.js';

/** From where a room is looked at. */
export interface View {
  /** Degrees in plan, counter-clockwise from east, at which the viewer stands. */
  readonly azimuth: number;
  /** Degrees over the floor. */
  readonly elevation: number;
  /** A sloped ceiling is seen from low, a level one is left away. */
  readonly ceiling: 'seen' | 'away';
}

/** A parallel projection: every plane of the room keeps its straight lines and the ratios along them. */
export interface Axonometry {
  readonly right: Xyz;
  readonly up: Xyz;
  /** Unit vector toward the viewer. */
  readonly toward: Xyz;
  /** Feet on the sheet, x to the right and y down. */
  spot(place: Xyz): Spot;
  /** Feet toward the viewer: what is greater lies in front. */
  depth(place: Xyz): number;
}

export function axonometry({ azimuth, elevation }: View): Axonometry {
  const [turn, lift] = [radians(azimuth), radians(elevation)];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const toward = { x: cos * Math.cos(lift), y: sin * Math.cos(lift), z: Math.sin(lift) };
  const right = { x: -sin, y: cos, z: 0 };
  const up = { x: -cos * Math.sin(lift), y: -sin * Math.sin(lift), z: Math.cos(lift) };
  return {
    right,
    up,
    toward,
    spot: (place) => [spaceDot(place, right), -spaceDot(place, up)],
    depth: (place) => spaceDot(place, toward),
  };
}

export function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
