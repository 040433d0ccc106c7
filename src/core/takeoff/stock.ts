import type { Length } from '../../base/units/index.js';
import type { StockCount } from './takeoff.js';

/** Pieces to buy of each length, shortest first. */
export function stockOf(lengths: readonly Length[]): readonly StockCount[] {
  return sumStock(lengths.map((length) => ({ length, count: 1 })));
}

/** Several counts as one, shortest first. */
export function sumStock(counts: readonly StockCount[]): readonly StockCount[] {
  const byLength = new Map<Length, number>();
  for (const { length, count } of counts) byLength.set(length, (byLength.get(length) ?? 0) + count);
  return [...byLength].sort(([a], [b]) => a - b).map(([length, count]) => ({ length, count }));
}
