import { boardRules, sheetRules, type LayoutInput, type LayoutRules } from '../../../src/core/takeoff/layout/index.js';
import type { Region } from '../../../src/core/model/index.js';
import { fromInches, type Length } from '../../../src/base/units/index.js';

type Pair = readonly [number, number];

/** A region from corners in inches. */
export function region(outline: readonly Pair[], holes: readonly (readonly Pair[])[] = []): Region {
  const ring = (pairs: readonly Pair[]): Region['outline'] =>
    pairs.map(([x, y]) => ({ x: fromInches(x), y: fromInches(y) }));
  return { outline: ring(outline), holes: holes.map(ring) };
}

/** A rectangle in inches with a corner at the origin. */
export function rectangle(width: number, height: number): Region {
  return region([
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ]);
}

export function feetOf(...lengths: readonly number[]): readonly Length[] {
  return lengths.map((length) => fromInches(length * 12));
}

/** Boards of 5 1/8" face along x, from 8', 10', 12' and 16', unless told otherwise. */
export function boards(
  regions: readonly Region[],
  given: Partial<LayoutInput> = {},
  rules: Partial<LayoutRules> = {},
): LayoutInput {
  return {
    regions,
    direction: 0,
    face: fromInches(5.125),
    stock: feetOf(8, 10, 12, 16),
    rules: { ...boardRules, ...rules },
    ...given,
  };
}

/** Sheets 4' wide along x, scored and snapped: no kerf. */
export function sheets(
  regions: readonly Region[],
  given: Partial<LayoutInput> = {},
  rules: Partial<LayoutRules> = {},
): LayoutInput {
  return {
    regions,
    direction: 0,
    face: fromInches(48),
    stock: feetOf(8, 10, 12),
    kerf: 0 as Length,
    rules: { ...sheetRules, ...rules },
    ...given,
  };
}
