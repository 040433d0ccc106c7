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

/** A part of a line, along it: in feet, or in whole nanometres, which stay whole. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What is left of a stretch, in order, when others are taken from it: they may overlap, meet or reach past it. */
export function stretchLess({ from, to }: Stretch, taken: readonly Stretch[]): readonly Stretch[] {
  const left: Stretch[] = [];
  let at = from;
  for (const one of taken.filter((each) => each.to > each.from).toSorted((a, b) => a.from - b.from)) {
    if (one.from > at) left.push({ from: at, to: Math.min(one.from, to) });
    at = Math.max(at, one.to);
    if (at >= to) return left;
  }
  return at < to ? [...left, { from: at, to }] : left;
}

export function lengthOfStretches(stretches: readonly Stretch[]): number {
  return stretches.reduce((sum, { from, to }) => sum + to - from, 0);
}
