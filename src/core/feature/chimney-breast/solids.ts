import {
  along,
  bounds,
  edges,
  faceThrough,
  placeOn,
  topOf,
  type Patch,
  type SpacePlane,
} from '../../../base/geometry/index.js';
import { feet } from '../../../base/units/index.js';
import type { FeatureMeasure } from '../../model/index.js';
import { faceNamed, levelFace, planeBefore, sidesOf, type SolidFace, type SolidSpace } from '../solid.js';
import { firebox as inside } from './draw.js';
import type { ChimneyBreast } from './read.js';

/** Front and sides up to their tops, what is cut where the ceiling is away, the firebox in it and the hearth before it. */
export function solids(data: ChimneyBreast, measure: FeatureMeasure, space: SolidSpace): readonly SolidFace[] {
  const frame = space.wall(data.wall);
  if (!frame) return [];
  const floor = feet(measure.floor ?? (0 as typeof data.at));
  const [at, width, depth] = [feet(data.at), feet(data.width), feet(data.depth)];
  const plane = (x1: number, y1: number, x2: number, y2: number): SpacePlane =>
    planeBefore(frame, { x: x1, y: y1 }, { x: x2, y: y2 }, floor);
  const [front, left] = [faceNamed(measure, 'front'), faceNamed(measure, 'left')];
  const forward = plane(at, depth, at + width, depth);
  const places = (name: string): readonly string[] => [`${measure.id}/${name}`, measure.id];
  return [
    { plane: forward, patches: front, places: places('front') },
    { plane: plane(at, 0, at, depth), patches: left, places: places('left') },
    { plane: plane(at + width, depth, at + width, 0), patches: faceNamed(measure, 'right'), places: places('right') },
    ...topsOf(front, left, forward, depth),
    ...fireboxOf(data, forward),
    ...hearthOf(data, measure, (x, y) => frame.place(at + width / 2 + x, depth + y), floor),
  ];
}

/** What a cut shows under the ceiling: from each stretch of the front's top to the wall behind it. */
function topsOf(
  front: readonly Patch[],
  [left]: readonly Patch[],
  forward: SpacePlane,
  depth: number,
): readonly SolidFace[] {
  if (!left) return [];
  const { west, east } = bounds(left.outline);
  const rise = topOf(left.outline, west) - topOf(left.outline, east);
  // Counter-clockwise, what is walked to the left has the shape below it.
  const tops = front.flatMap(({ outline }) => edges(outline).filter(([a, b]) => b.x - a.x < -1e-6));
  const back = (place: { readonly x: number; readonly y: number }) =>
    along(placeOn(forward, { x: place.x, y: place.y + rise }), forward.faces, -depth);
  return tops.flatMap(([a, b]) => {
    const face = faceThrough([placeOn(forward, b), placeOn(forward, a), back(a), back(b)]);
    return face ? [{ ...face, places: [], role: 'cut' as const }] : [];
  });
}

/** Its back, floor, head and two sides that draw in, in the middle of the breast. */
function fireboxOf({ firebox, width, depth }: ChimneyBreast, forward: SpacePlane): readonly SolidFace[] {
  if (!firebox) return [];
  const [wide, low, high, deep] = [
    feet(firebox.width),
    feet(firebox.sill),
    feet(firebox.height),
    feet(depth) * inside.depth,
  ];
  const corner = (share: number, height: number, back: number) =>
    along(placeOn(forward, { x: feet(width) / 2 + share * wide, y: height }), forward.faces, -back);
  const narrow = inside.back / 2;
  const ring = (height: number) =>
    [
      corner(-0.5, height, 0),
      corner(0.5, height, 0),
      corner(narrow, height, deep),
      corner(-narrow, height, deep),
    ] as const;
  const [floor, head] = [ring(low), ring(low + high)];
  const faces = [
    faceThrough([floor[3], floor[2], head[2], head[3]]),
    faceThrough(floor),
    faceThrough([...head].reverse()),
    faceThrough([floor[0], floor[3], head[3], head[0]]),
    faceThrough([floor[2], floor[1], head[1], head[2]]),
  ];
  return faces.flatMap((face) => (face ? [{ ...face, places: [], role: 'hollow' as const }] : []));
}

/** A slab on its riser, or on the floor; `place` goes along the front from its middle and out from it. */
function hearthOf(
  { hearth }: ChimneyBreast,
  { id }: FeatureMeasure,
  place: (x: number, y: number) => { readonly x: number; readonly y: number },
  floor: number,
): readonly SolidFace[] {
  if (!hearth) return [];
  const [half, deep] = [feet(hearth.width) / 2, feet(hearth.depth)];
  const ring = [place(-half, 0), place(half, 0), place(half, deep), place(-half, deep)];
  const [top, thick] = [floor + Math.max(feet(hearth.height), 0), feet(hearth.thickness)];
  const slab = Math.max(floor, top - thick);
  const places = [`${id}/hearth`];
  return [
    ...(slab > floor ? sidesOf(ring, floor, slab, () => [`${id}/hearth-riser`, id]) : []),
    ...(top > slab ? sidesOf(ring, slab, top, () => places) : []),
    levelFace(ring, top, 'up', places),
  ];
}
