import type { FeatureMeasure } from '../../model/index.js';
import { boxOf, type BesideWall, type FaceMark, type PlanMark } from '../mark.js';
import type { ChimneyBreast } from './read.js';

/** How much of the breast's depth the firebox goes in, and how much narrower its back is than its opening. As drawn. */
export const firebox = { depth: 0.72, back: 0.68 };

/** Hearth on the floor, the breast cut through, the firebox in it. */
export function plan({ wall, at, width, depth, hearth, ...rest }: ChimneyBreast): readonly PlanMark[] {
  const middle = at + width / 2;
  const half = (rest.firebox?.width ?? 0) / 2;
  const back = depth * (1 - firebox.depth);
  const breast = across(at, at + width, 0, depth);
  return [
    ...(hearth
      ? [
          {
            role: 'slab' as const,
            wall,
            outline: across(middle - hearth.width / 2, middle + hearth.width / 2, depth, depth + hearth.depth),
          },
        ]
      : []),
    { role: 'mass', wall, outline: breast },
    ...(rest.firebox
      ? [
          {
            role: 'hollow' as const,
            wall,
            outline: [
              { along: middle - half, out: depth },
              { along: middle - half * firebox.back, out: back },
              { along: middle + half * firebox.back, out: back },
              { along: middle + half, out: depth },
            ],
          },
        ]
      : []),
  ];
}

/** The front under the ceiling, the opening in it, the hearth before it. */
export function face(
  { at, width, hearth, firebox: opening }: ChimneyBreast,
  { faces }: FeatureMeasure,
): readonly FaceMark[] {
  const middle = at + width / 2;
  const regions = faces.find(({ id }) => id.endsWith('/front'))?.regions ?? [];
  const left = Math.min(...regions.flatMap(({ outline }) => outline.map(({ x }) => x)));
  const outlines = regions.map(({ outline }) => outline.map(({ x, y }) => ({ x: at + x - left, y })));
  const half = (opening?.width ?? 0) / 2;
  return [
    { role: 'mass', outlines },
    ...(opening
      ? [
          {
            role: 'opening' as const,
            outline: boxOf(middle - half, opening.sill, middle + half, opening.sill + opening.height),
          },
        ]
      : []),
    ...(hearth ? hearthMarks(hearth, middle) : []),
  ];
}

function hearthMarks(hearth: NonNullable<ChimneyBreast['hearth']>, middle: number): readonly FaceMark[] {
  const { width, height, thickness } = hearth;
  const [left, right] = [middle - width / 2, middle + width / 2];
  if (height <= 0) return [];
  const plinth = { role: 'plinth', outline: boxOf(left, 0, right, height) } as const;
  if (thickness <= 0 || thickness >= height) return [plinth];
  return [plinth, { role: 'slab', outline: boxOf(left, height - thickness, right, height) }];
}

function across(left: number, right: number, near: number, far: number): readonly BesideWall[] {
  return [
    { along: left, out: near },
    { along: right, out: near },
    { along: right, out: far },
    { along: left, out: far },
  ];
}
