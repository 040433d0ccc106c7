import { feet } from '../../../base/units/index.js';
import type { Skylight } from './read.js';

/** A shaft on its slope, in feet. Along the slope 0 is the skylight's lower edge, and `length` its upper one. */
export interface Shaft {
  readonly width: number;
  readonly length: number;
  readonly depth: number;
  /** Where its lower and upper sides meet the ceiling, along the slope. */
  readonly from: number;
  readonly to: number;
  /** Lengths of its lower and upper sides from the skylight down to the ceiling. */
  readonly foot: number;
  readonly head: number;
}

/**
 * Source: geometry. On a slope of tan θ, over a depth d, a plumb side goes d·tan θ down the slope and is d/cos θ long; a level one goes
 * d/tan θ up the slope, into the room, and is d/sin θ long. On a flat ceiling plumb is square, and a level side meets it nowhere.
 */
export function shaftOf({ width, length, depth, head, foot }: Skylight, slope: number): Shaft {
  const [deep, long] = [feet(depth), feet(length)];
  const plumb = { down: deep * slope, side: deep * Math.hypot(1, slope) };
  const level = { up: deep / slope, side: (deep * Math.hypot(1, slope)) / slope };
  const upper = { square: [0, deep], plumb: [-plumb.down, plumb.side], level: [level.up, level.side] } as const;
  const lower = { square: [0, deep], plumb: [plumb.down, plumb.side] } as const;
  return {
    width: feet(width),
    length: long,
    depth: deep,
    from: 0 - lower[foot][0],
    to: long + upper[head][0],
    foot: lower[foot][1],
    head: upper[head][1],
  };
}
