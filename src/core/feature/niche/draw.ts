import { fromInches, type Length } from '../../../base/units/index.js';
import { boxOf, type FaceMark, type PlanMark } from '../mark.js';
import type { Niche } from './read.js';

export function plan({ wall, at, width, depth }: Niche): readonly PlanMark[] {
  return [{ role: 'recess', wall, from: at, to: (at + width) as Length, depth }];
}

/** Its edge, and the edge of its back an inch inside. */
export function face({ at, width, sill, height }: Niche): readonly FaceMark[] {
  const [right, head, edge] = [at + width, sill + height, fromInches(1)];
  return [
    { role: 'body', outlines: [boxOf(at, sill, right, head)] },
    { role: 'inset', outline: boxOf(at + edge, sill + edge, right - edge, head - edge) },
  ];
}
