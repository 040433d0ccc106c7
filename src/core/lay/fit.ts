import { thicknessPlay, type Laying } from './lay-rooms.js';
import { facingPairs, inLinePairs, isUsual, reach, type Pair } from './pair.js';
import { missOf } from './place-rooms.js';

/** How well a house fits together: what its joints miss, in squares of what tapes may miss, less what its walls speak for it. */
export interface Fit {
  readonly score: number;
  /** Every pair of walls within reach of rooms that hold together, also those that do not stand as they should. */
  readonly facing: readonly Pair[];
  readonly inLine: readonly Pair[];
}

/** What a pair that stands as it should speaks for, and what pairs that can't be built speak against, in the same squares. */
const worth = { facing: 16, inLine: 4, thin: -20, through: -80 };

/** A wall between rooms with less than this is none, in feet: a 2x3 stud and nothing on it. */
export const thinnest = 3.5 / 12;

export function fitOf(laying: Laying): Fit {
  const { rooms, at, rows, together } = laying;
  const facing = facingPairs(rooms, at, { tolerance: reach.before - reach.behind, together });
  const inLine = inLinePairs(rooms, at, { facing, together });
  let score = 0;
  for (const row of rows) if ('joint' in row.source) score += (missOf(row, at) / row.sigma) ** 2;
  for (const pair of facing.filter(isUsual)) score -= speaksFor(pair, worth.facing) + speaksAgainst(pair);
  for (const pair of inLine) score -= speaksFor(pair, worth.inLine);
  return { score, facing, inLine };
}

function speaksFor({ gap, should, sigma }: Pair, most: number): number {
  return Math.max(0, most - ((gap - should) / sigma) ** 2);
}

function speaksAgainst({ gap, should }: Pair): number {
  if (gap < -thicknessPlay) return worth.through;
  return gap < thinnest && gap < should - thicknessPlay ? worth.thin : 0;
}
