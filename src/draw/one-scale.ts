import type { Drawing } from './drawing.js';

/** Draws two that are read side by side, as a plan and its ceiling, at one scale: the largest at which both fit. Each is asked for
 *  at a ratio that it may not be larger than. */
export function atOneScale(
  first: (ratio?: number) => Drawing,
  second: (ratio?: number) => Drawing,
): readonly [Drawing, Drawing] {
  const one = first();
  const other = second(one.ratio);
  return other.ratio > one.ratio ? [first(other.ratio), other] : [one, other];
}
