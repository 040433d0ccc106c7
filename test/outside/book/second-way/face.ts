import { sum } from './paper.js';
import type { CeilingPart, Drawn, Side, Spot } from './room.js';

/** Every length of the demo's plans, and every break of its ceilings, is a whole multiple of this in feet: between two of them all
 *  is linear, and what stands over the middle of a strip is exact. */
export const strip = 1 / 8;
/** Nearer than this, in feet, is the same place. */
export const within = 1e-7;

export interface Face {
  readonly gross: number;
  readonly net: number;
  readonly cuts: readonly Cut[];
}

/** Something on a wall or a face, from its left end and the floor. */
export interface Cut {
  readonly of: string;
  readonly by: 'opening' | 'chimney-breast' | 'niche' | 'built-in';
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  /** What lies on the surface, and under no cut before it. */
  readonly area: number;
}

export const noFace: Face = { gross: 0, net: 0, cuts: [] };

export function heightAt({ ceiling }: Drawn, spot: Spot): number {
  const part = ceiling.find(({ over }) => isIn(over, spot));
  if (!part) throw new Error(`no ceiling over ${spot.x}, ${spot.y}`);
  return part.height(spot);
}

export function isIn({ x, y, width, depth }: CeilingPart['over'], spot: Spot): boolean {
  return spot.x > x - within && spot.x < x + width + within && spot.y > y - within && spot.y < y + depth + within;
}

/** The spot at a distance along a side, and out into the room. */
export function spotAt({ from, to, run }: Side, along: number, out: number): Spot {
  const [x, y] = [(to.x - from.x) / run, (to.y - from.y) / run];
  return { x: from.x + x * along + y * out, y: from.y + y * along - x * out };
}

/** A face under a line, in upright strips that no cut ends within: what is cut of a strip is the union of what each cut takes of its
 *  middle. */
export function faceUnder(run: number, top: (along: number) => number, cuts: readonly Omit<Cut, 'area'>[]): Face {
  const even = Array.from({ length: Math.ceil(run / strip - within) }, (_, index) => index * strip);
  const stops = [...even, run, ...cuts.flatMap(({ from, to }) => [from, to])].sort((a, b) => a - b);
  const areas = cuts.map(() => 0);
  let gross = 0;
  for (const [index, to] of stops.entries()) {
    const from = stops[index - 1] ?? 0;
    const [middle, wide] = [(from + to) / 2, to - from];
    if (wide < within) continue;
    const height = top(middle);
    gross += wide * height;
    const taken: (readonly [number, number])[] = [];
    cuts.forEach((cut, which) => {
      if (cut.from > middle || cut.to < middle) return;
      const own = [Math.min(cut.low, height), Math.min(cut.high, height)] as const;
      areas[which] = (areas[which] ?? 0) + wide * (lengthOf([...taken, own]) - lengthOf(taken));
      taken.push(own);
    });
  }
  return { gross, net: gross - sum(areas), cuts: cuts.map((cut, index) => ({ ...cut, area: areas[index] ?? 0 })) };
}

/** Length of the union of stretches. */
function lengthOf(stretches: readonly (readonly [number, number])[]): number {
  let [end, length] = [-Infinity, 0];
  for (const [from, to] of [...stretches].sort((a, b) => a[0] - b[0])) {
    length += Math.max(0, to - Math.max(from, end));
    end = Math.max(end, to);
  }
  return length;
}
