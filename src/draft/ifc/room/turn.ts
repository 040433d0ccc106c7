import { distance, edges, type Ring, type Xy } from '../../../base/geometry/index.js';
import type { Xyz } from '../xyz.js';

/** How the building stands in its model, in degrees counter-clockwise: over −45, up to 45. Records have their walls square to the compass, so
 *  plans are turned back by it. */
export type Turn = number;

/** Directions nearer than this, in degrees, are one. */
const near = 0.1;

/** The direction in which most of the outlines' length runs, by quarter turns. */
export function mainTurn(outlines: readonly Ring[]): Turn {
  const lengths = new Map<number, { length: number; sum: number }>();
  for (const [from, to] of outlines.flatMap(edges)) {
    const length = distance(from, to);
    const angle = quarter((Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI);
    const key = Math.round(angle / near);
    const known = lengths.get(key) ?? { length: 0, sum: 0 };
    lengths.set(key, { length: known.length + length, sum: known.sum + length * angle });
  }
  let best = { length: 0, sum: 0 };
  for (const one of lengths.values()) if (one.length > best.length + 1e-6) best = one;
  const angle = best.length === 0 ? 0 : best.sum / best.length;
  return Math.abs(angle) < 1e-4 ? 0 : angle;
}

/** The same direction by quarter turns, over −45 up to 45 degrees. */
function quarter(degrees: number): number {
  const rest = degrees - Math.floor(degrees / 90) * 90;
  return rest > 45 + 1e-9 ? rest - 90 : rest;
}

/** A place of the model as the turned plan has it. */
export function turnedBack({ x, y }: Xy, turn: Turn): Xy {
  if (turn === 0) return { x, y };
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return { x: x * cos + y * sin, y: y * cos - x * sin };
}

export function turnedBackInSpace(place: Xyz, turn: Turn): Xyz {
  return { ...turnedBack(place, turn), z: place.z };
}
