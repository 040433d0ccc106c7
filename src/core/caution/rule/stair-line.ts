import { headings, minus, pointInFeet, type Xy } from '../../../base/geometry/index.js';
import type { Stair } from '../../feature/index.js';
import type { Polygon } from '../../model/index.js';

/** How far along the way up a point of the plan lies from the lowest nosing, in feet. The footprint starts with the corners at the foot. */
export function alongStair({ go }: Stair, [foot]: Polygon, point: Xy): number {
  if (!foot) return 0;
  const off = minus(point, pointInFeet(foot));
  return off.x * headings[go].x + off.y * headings[go].y;
}
