import { frameGrid, type FramePoint, type FrameShape } from './frame.js';

/** A stretch along a course that boards must cover. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** Where the shapes lie within a band across the courses: the longest extent in the band, so that a board at a slanted
 *  edge reaches its far corner and a board at a notch runs past it. Stretches come in order and do not touch. */
export function spansInBand(shapes: readonly FrameShape[], low: number, high: number): readonly Stretch[] {
  return merged(shapes.flatMap((shape) => stretches(shape, low, high)));
}

/** Extents of the trapezoids that the corners' levels cut the band into. */
function stretches(shape: FrameShape, low: number, high: number): Stretch[] {
  const sides = shape.flatMap((ring) =>
    ring
      .map((from, i) => [from, ring[(i + 1) % ring.length] ?? from] as const)
      .filter(
        ([a, b]) => a.across !== b.across && Math.min(a.across, b.across) < high && Math.max(a.across, b.across) > low,
      ),
  );
  const inside = sides.flatMap(([a, b]) => [a.across, b.across]).filter((level) => level > low && level < high);
  const levels = [...new Set([low, ...inside, high])].sort((a, b) => a - b);
  const found: Stretch[] = [];
  for (let i = 1; i < levels.length; i += 1) {
    const [bottom, top] = [levels[i - 1] ?? low, levels[i] ?? high];
    const crossings = sides
      .filter(([a, b]) => Math.min(a.across, b.across) <= bottom && Math.max(a.across, b.across) >= top)
      .map((side) => [alongAt(side, bottom), alongAt(side, top)] as const)
      .sort((a, b) => a[0] + a[1] - (b[0] + b[1]));
    for (let left = 0; left + 1 < crossings.length; left += 2) {
      const [from, to] = [crossings[left], crossings[left + 1]];
      if (from && to) found.push({ start: downToGrid(Math.min(...from)), end: upToGrid(Math.max(...to)) });
    }
  }
  return found;
}

function alongAt([a, b]: readonly [FramePoint, FramePoint], across: number): number {
  if (across === a.across) return a.along;
  if (across === b.across) return b.along;
  return a.along + ((b.along - a.along) * (across - a.across)) / (b.across - a.across);
}

/** A nanometre of slack keeps rounding in the last digit from adding a step. */
function downToGrid(value: number): number {
  return Math.floor((value + 1) / frameGrid) * frameGrid;
}

function upToGrid(value: number): number {
  // Ceilings of what is a little below nothing are -0, which JSON has not.
  return Math.ceil((value - 1) / frameGrid) * frameGrid + 0;
}

function merged(stretches: readonly Stretch[]): readonly Stretch[] {
  const sorted = stretches.filter(({ start, end }) => end > start).sort((a, b) => a.start - b.start);
  const result: Stretch[] = [];
  for (const stretch of sorted) {
    const last = result.at(-1);
    if (!last || stretch.start > last.end) result.push(stretch);
    else if (stretch.end > last.end) result[result.length - 1] = { start: last.start, end: stretch.end };
  }
  return result;
}
