import type { TriableHouse } from '../try/index.js';

/** Digits of the records' digest that a slip carries: enough to tell two versions of one house apart. */
const snapshotDigits = 12;

export function snapshotOf({ snapshot }: Pick<TriableHouse, 'snapshot'>): string {
  return snapshot.slice(0, snapshotDigits);
}
