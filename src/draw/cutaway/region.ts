import { patchFrom, ringInFeet, type Patch } from '../../base/geometry/index.js';
import type { Region } from '../../core/model/index.js';

export function patchOf({ outline, holes }: Region): Patch {
  return patchFrom(ringInFeet(outline), holes.map(ringInFeet));
}
