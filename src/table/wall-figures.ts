import type { WallMeasure } from '../core/model/index.js';
import { addingUp, asPrinted } from '../base/units/index.js';

/** A wall as printed, to a tenth: what is taken off it, one by one, and what is left add up to the whole. */
export interface PrintedWall extends Omit<WallMeasure, 'deductions'> {
  readonly printed: number;
  readonly deductions: readonly { readonly what: string; readonly printed: number }[];
  readonly rest: number;
}

export function wallAsPrinted(wall: WallMeasure): PrintedWall {
  const [rest = 0, ...taken] = addingUp([wall.net, ...wall.deductions.map(({ area }) => area)], 1);
  const whole = asPrinted(wall.gross, 1);
  return {
    ...wall,
    printed: whole,
    deductions: wall.deductions.map(({ what }, index) => ({ what, printed: taken[index] ?? 0 })),
    rest,
  };
}
