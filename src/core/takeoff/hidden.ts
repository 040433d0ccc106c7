import { patchInFeet, regionOf, weld } from '../../base/geometry/index.js';
import type { Convention, Deduction, Region } from '../model/index.js';

/** Does a feature of that kind hide a surface from what is measured so? What is built before the feature lies behind it. */
export function hides({ hiddenBy }: Convention, kind: string): boolean {
  return hiddenBy?.includes(kind) ?? true;
}

export function isHidden({ hidden }: Deduction, rule: Convention): boolean {
  return hidden === undefined || hides(rule, hidden.by);
}

/** What a finish covers of a surface: what is seen of it, and what lies behind features that do not hide it. On a ceiling, of
 *  one facet. */
export function coveredRegions(
  seen: readonly Region[],
  deductions: readonly Deduction[],
  rule: Convention,
  facet?: number,
): readonly Region[] {
  const behind = deductions
    .filter((deduction) => deduction.kind === 'feature' && !isHidden(deduction, rule))
    .flatMap(({ hidden }) => hidden?.pieces ?? [])
    .filter((piece) => piece.facet === facet)
    .map(({ region }) => region);
  return behind.length === 0 ? seen : weld([...seen, ...behind].map(patchInFeet)).map(regionOf);
}
