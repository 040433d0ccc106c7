import type { Xy } from './xy.js';

const half = Math.SQRT1_2;

/** Unit vectors of the eight bearings: x east, y north. */
export const headings = {
  north: { x: 0, y: 1 },
  'north-east': { x: half, y: half },
  east: { x: 1, y: 0 },
  'south-east': { x: half, y: -half },
  south: { x: 0, y: -1 },
  'south-west': { x: -half, y: -half },
  west: { x: -1, y: 0 },
  'north-west': { x: -half, y: half },
} as const satisfies Readonly<Record<string, Xy>>;

/** The bearing nearest to a direction. */
export function nearestHeading(toward: Xy): keyof typeof headings {
  let [best, most]: [keyof typeof headings, number] = ['north', -Infinity];
  for (const name of Object.keys(headings) as (keyof typeof headings)[]) {
    const likeness = headings[name].x * toward.x + headings[name].y * toward.y;
    if (likeness > most + nearTie) [best, most] = [name, likeness];
  }
  return best;
}

const nearTie = 1e-9;
