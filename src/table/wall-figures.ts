import type { WallMeasure } from '../core/model/index.js';
import { asPrinted, digitsToTick, lastDigits, leftByRounding, lower, shown } from '../base/units/index.js';
import { roundingStep } from '../core/takeoff/index.js';

/** A wall as printed, in the house's units and each figure its own rounding: what is taken off it, one by one, and what rounding leaves,
 *  lead from the whole to what is left. */
export interface PrintedWall extends Omit<WallMeasure, 'deductions'> {
  readonly digits: number;
  readonly printed: number;
  readonly deductions: readonly { readonly what: string; readonly printed: number }[];
  readonly rest: number;
}

export function wallAsPrinted(wall: WallMeasure): PrintedWall {
  const own = (area: number): number => shown(area, 'sq ft').amount;
  const [gross, net] = [own(wall.gross), own(wall.net)];
  const taken = wall.deductions.map(({ what, area }) => ({ what, area: own(area) }));
  const leftAt = (digits: number): number => leftByRounding([net, ...taken.map(({ area }) => area)], gross, digits);
  const digits = digitsToTick(lastDigits(), (count) => leftAt(count) === 0);
  const left = leftAt(digits);
  return {
    ...wall,
    digits,
    printed: asPrinted(gross, digits),
    deductions: [
      ...taken.map(({ what, area }) => ({ what, printed: asPrinted(area, digits) })),
      ...(left === 0 ? [] : [{ what: lower(roundingStep.what), printed: left }]),
    ],
    rest: asPrinted(net, digits),
  };
}
