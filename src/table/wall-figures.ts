import type { WallMeasure } from '../core/model/index.js';
import { addingUp, asPrinted, lastDigits, shown } from '../base/units/index.js';

/** A wall as printed, to the house's last digit and in its units: what is taken off it, one by one, and what is left add up to the whole. */
export interface PrintedWall extends Omit<WallMeasure, 'deductions'> {
  readonly printed: number;
  readonly deductions: readonly { readonly what: string; readonly printed: number }[];
  readonly rest: number;
}

export function wallAsPrinted(wall: WallMeasure): PrintedWall {
  const own = (area: number): number => shown(area, 'sq ft').amount;
  const [rest = 0, ...taken] = addingUp([wall.net, ...wall.deductions.map(({ area }) => area)].map(own), lastDigits());
  const whole = asPrinted(own(wall.gross), lastDigits());
  return {
    ...wall,
    printed: whole,
    deductions: wall.deductions.map(({ what }, index) => ({ what, printed: taken[index] ?? 0 })),
    rest,
  };
}
