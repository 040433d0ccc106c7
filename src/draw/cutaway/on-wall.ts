import { intersect, rectangle, subtract, type Patch } from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import type { RoomMeasure } from '../../core/model/index.js';
import type { Decal, Facet } from './facet.js';
import type { Looks } from './look.js';
import { trimOn } from './opening.js';

/** What lies flat on a facet: of a wall its base and the trim around its openings, by the widths of what is chosen. */
export function decalsOf({ side, patches, decals = [] }: Facet, measure: RoomMeasure, looks: Looks): readonly Decal[] {
  if (!side) return decals;
  const trim = trimOn(side, measure, (mark) => looks.as('trim', mark)?.face);
  return [...baseOn(patches, side.wall.id, trim, looks), ...trim];
}

/** Along the foot of a wall, between casings. */
function baseOn(patches: readonly Patch[], wall: string, trim: readonly Decal[], looks: Looks): readonly Decal[] {
  const height = looks.as('base', wall)?.face;
  if (height === undefined) return [];
  const far = 1e3;
  const strip = intersect(patches, rectangle(-far, 0, 2 * far, feet(height)));
  const free = trim.flatMap((one) => one.patches).reduce<readonly Patch[]>(subtract, strip);
  return free.length > 0 ? [{ patches: free, role: 'base', place: wall }] : [];
}
