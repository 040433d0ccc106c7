import { cross, direction, distance, minus, type Xy } from './xy.js';

/** Nearer than this, in feet, is the same place. */
const tiny = 1e-6;

/** What two straight edges share when they lie on one line: from and to, in feet along the first. Undefined where they only meet. */
export function sharedStretch(
  [a, b]: readonly [Xy, Xy],
  [c, d]: readonly [Xy, Xy],
): readonly [number, number] | undefined {
  const length = distance(a, b);
  const ahead = direction(a, b);
  if (length < tiny || [c, d].some((point) => Math.abs(cross(ahead, minus(point, a))) > tiny)) return undefined;
  const along = (point: Xy): number => minus(point, a).x * ahead.x + minus(point, a).y * ahead.y;
  const first = Math.max(0, Math.min(along(c), along(d)));
  const last = Math.min(length, Math.max(along(c), along(d)));
  return last - first < tiny ? undefined : [first, last];
}
