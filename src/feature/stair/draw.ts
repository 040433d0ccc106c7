import { pointOf } from '../../geometry/index.js';
import type { Xy } from '../../geometry/index.js';
import type { FeatureMeasure } from '../../model/index.js';
import type { SvgNode } from '../../svg/index.js';
import { feet } from '../../units/index.js';
import type { RoomSpace } from '../kind.js';
import { footprint } from '../place.js';
import { drawFootprint, path } from '../plan-symbol.js';
import { flightOf } from './measure.js';
import type { Stair } from './read.js';

/** Outline, a line at each nosing, and an arrow that points up. */
export function drawPlan(data: Stair, measure: FeatureMeasure, space: RoomSpace): readonly SvgNode[] {
  const { treads, run } = flightOf(data);
  const { start, ahead, left } = footprint(space, { ...data, run });
  const half = feet(data.width) / 2;
  const at = (along: number, side: number): ReturnType<typeof pointOf> =>
    pointOf(offset(start, ahead, left, along, side));
  const nosings = Array.from({ length: treads - 1 }, (_, i) => {
    const along = feet(data.going) * (i + 1);
    return path([at(along, -half), at(along, half)], 'feature stair-nosing');
  });
  const [tip, barb] = [feet(run) - feet(data.going) / 2, Math.min(half, feet(data.going)) / 2];
  const shaft = path([at(feet(data.going) / 2, 0), at(tip, 0)], 'feature stair-up');
  const head = path([at(tip - barb, barb), at(tip, 0), at(tip - barb, -barb)], 'feature stair-up');
  return [...drawFootprint(measure), ...nosings, shaft, head];
}

function offset(start: Xy, ahead: Xy, left: Xy, along: number, side: number): Xy {
  return { x: start.x + ahead.x * along + left.x * side, y: start.y + ahead.y * along + left.y * side };
}
