import { patchContains, type Patch, type Xy } from '../../base/geometry/index.js';
import { fromFeet } from '../../base/units/index.js';
import type { Spot } from '../convex.js';
import type { Sheet } from '../sheet.js';

/** Of a patch in feet, on the sheet. */
export function ringsOn(sheet: Sheet, { outline, holes }: Patch): readonly (readonly Spot[])[] {
  return [outline, ...holes].map((ring) => ring.map((corner) => spotOn(sheet, corner)));
}

export function spotOn(sheet: Sheet, { x, y }: Xy): Spot {
  return sheet.spot({ x: fromFeet(x), y: fromFeet(y) });
}

/** Does a place lie in one of the shapes? */
export function isInAny(patches: readonly Patch[], place: Xy): boolean {
  return patches.some((patch) => patchContains(patch, place));
}

export function pointsInFoot({ perNanometre }: Sheet): number {
  return perNanometre * fromFeet(1);
}
