import {
  areaOf,
  intersect,
  nearArea,
  patchArea,
  patchesMayMeet,
  regionOf,
  reversed,
  subtract,
  weld,
  type Patch,
} from '../../base/geometry/index.js';
import type { Deduction, Region, Surface } from '../model/index.js';
import type { Area } from '../../base/units/index.js';

/** Something to take off a surface, in the surface's own plane. */
export interface Cut {
  readonly what: string;
  readonly of: string;
  readonly kind: Deduction['kind'];
  /** Kind of the feature that hides it. */
  readonly by?: string;
  readonly patch: Patch;
}

/** A surface with each cut taken off once: only what lies on the surface, and what no earlier cut has taken. */
export function surfaceOf(id: string, name: string, whole: readonly Patch[], cuts: readonly Cut[] = []): Surface {
  const { taken, rest } = takeOff(whole, cuts);
  const gross = areaOf(whole);
  const deductions = cuts.flatMap(({ what, of, kind, by }, i) => {
    const patches = taken[i] ?? [];
    const area = areaOf(patches);
    const hidden = by === undefined ? {} : { hidden: { by, pieces: regionsOf(patches).map((region) => ({ region })) } };
    return area > nearArea ? [{ what, of, kind, area: area as Area, ...hidden }] : [];
  });
  const net = deductions.reduce((sum, { area }) => sum - area, gross);
  return { id, name, gross: gross as Area, deductions, net: Math.max(0, net) as Area, regions: regionsOf(rest) };
}

/** What each cut takes, and what remains as clean shapes: cuts at the border become notches. */
export function takeOff(
  whole: readonly Patch[],
  cuts: readonly { readonly patch: Patch }[],
): { readonly taken: readonly (readonly Patch[])[]; readonly rest: readonly Patch[] } {
  const taken: (readonly Patch[])[] = [];
  for (const { patch } of cuts) taken.push(takenBy(patch, whole, taken.flat()));
  if (taken.every((patches) => patches.length === 0)) return { taken, rest: whole };
  const away = taken.flat().map(({ outline, holes }) => ({ outline: reversed(outline), holes: holes.map(reversed) }));
  return { taken, rest: weld([...whole, ...away]) };
}

export function regionsOf(patches: readonly Patch[]): readonly Region[] {
  return patches.map(regionOf);
}

function takenBy(patch: Patch, whole: readonly Patch[], earlier: readonly Patch[]): readonly Patch[] {
  const before = earlier.filter((other) => patchesMayMeet(other, patch));
  const pieces = before.reduce<readonly Patch[]>(subtract, intersect(whole, patch));
  // A cut that lies wholly on the surface keeps its own corners, so that whole inches stay whole.
  return Math.abs(areaOf(pieces) - patchArea(patch)) < nearArea ? [patch] : pieces;
}
