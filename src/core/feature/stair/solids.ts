import { distance, patchFrom, pointOf, uprightPlane, type Ring, type Xy } from '../../../base/geometry/index.js';
import { feet } from '../../../base/units/index.js';
import type { FeatureMeasure } from '../../model/index.js';
import { footprint } from '../wall-frame.js';
import { box, levelFace, type SolidFace, type SolidSpace } from '../solid.js';
import { flightOf } from './measure.js';
import type { Stair } from './read.js';

/** How far a stringer reaches under the line of the steps' inner corners, in feet. As drawn. */
const waist = 0.6;

/** Treads, risers and the two stringers of a straight flight; its last riser ends at the floor above. */
export function solids(data: Stair, { id }: FeatureMeasure, { corner }: SolidSpace): readonly SolidFace[] {
  const { run, treads } = flightOf(data);
  const [going, width, riser] = [feet(data.going), feet(data.width), feet(data.rise) / data.risers];
  const { ring } = footprint({ corner: pointOf(corner) }, { ...data, run });
  const [leftFoot, rightFoot] = ring as readonly [Xy, Xy, Xy, Xy];
  const up = ahead(leftFoot, rightFoot);
  const place = (start: Xy, by: number): Xy => ({ x: start.x + up.x * by, y: start.y + up.y * by });
  const steps = Array.from({ length: data.risers }, (_, step) => {
    const [left, right] = [place(leftFoot, step * going), place(rightFoot, step * going)];
    const front: SolidFace = {
      plane: uprightPlane(left, right, step * riser),
      patches: [box(width, riser)],
      places: [`${id}/risers`, id],
      tint: 'risers',
    };
    if (step === treads) return [front];
    const tread = [left, right, place(right, going), place(left, going)];
    return [front, { ...levelFace(tread, (step + 1) * riser, 'up', [`${id}/treads`, id]), tint: 'treads' as const }];
  });
  const top = place(rightFoot, feet(run));
  const topLeft = place(leftFoot, feet(run));
  return [
    ...steps.flat(),
    { plane: uprightPlane(rightFoot, top), patches: [stringer(data, false)], places: [id] },
    { plane: uprightPlane(topLeft, leftFoot), patches: [stringer(data, true)], places: [id] },
  ];
}

/** A flight from its side, from its foot at x = 0 and with its way up to the right, in feet: steps over, and as deep under them as stringers are drawn. */
export function flightProfile(data: Pick<Stair, 'rise' | 'risers' | 'going'>): Ring {
  const { treads } = flightOf(data);
  const [going, riser] = [feet(data.going), feet(data.rise) / data.risers];
  const length = treads * going;
  const corners: Xy[] = [{ x: 0, y: 0 }];
  for (let step = 0; step < treads; step += 1)
    corners.push({ x: step * going, y: (step + 1) * riser }, { x: (step + 1) * going, y: (step + 1) * riser });
  const drop = waist * Math.hypot(1, riser / going);
  corners.push({ x: length, y: Math.max(0, length * (riser / going) - drop) });
  const foot = drop * (going / riser);
  if (foot < length) corners.push({ x: foot, y: 0 });
  return corners;
}

/** The stepped side, from its foot at the left, or at the right where it is seen from the other hand. */
function stringer(data: Stair, isTurned: boolean): ReturnType<typeof patchFrom> {
  const length = feet(flightOf(data).run);
  const corners = flightProfile(data);
  return patchFrom(isTurned ? corners.map(({ x, y }) => ({ x: length - x, y })) : corners);
}

/** The way up: square to the foot, to the left of the line from its left to its right corner. */
function ahead(left: Xy, right: Xy): Xy {
  const length = distance(left, right);
  return { x: -(right.y - left.y) / length, y: (right.x - left.x) / length };
}
