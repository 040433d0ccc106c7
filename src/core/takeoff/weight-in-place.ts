import { factOf } from '../fact/index.js';
import type { Option } from '../model/index.js';
import type { Unit } from '../../base/units/index.js';

/** What a unit of a product weighs in place, in pounds. */
export interface WeightInPlace {
  readonly per: Unit;
  /** As its option records it. */
  readonly product: number;
  /** Of stone, what it is set in; undefined where that is not recorded. */
  readonly mortar?: number;
  readonly lath?: number;
  readonly pounds: number;
}

/** A product with the mortar and lath that its option records beside it. Undefined without a weight. */
export function weightInPlace(
  option: Pick<Option, 'weight'> & Parameters<typeof factOf>[0],
): WeightInPlace | undefined {
  if (!option.weight) return undefined;
  const { pounds: product, per } = option.weight;
  // Mortar and lath are recorded for an area.
  const [mortar, lath] =
    per === 'sq ft' ? [factOf(option, 'stone', 'mortar-weight'), factOf(option, 'stone', 'lath-weight')] : [];
  return {
    per,
    product,
    ...(mortar !== undefined && { mortar }),
    ...(lath !== undefined && { lath }),
    pounds: product + (mortar ?? 0) + (lath ?? 0),
  };
}
