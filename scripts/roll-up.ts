import { priceRecords } from '../src/core/book/index.js';
import type { Records, RoomMeasure } from '../src/core/model/index.js';
import { makeLedger } from '../src/core/price/index.js';

/** Milliseconds, best of some runs: the house priced with its ledger, and every option of every place priced with the
 *  whole house around it. */
export function rollUp(
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  runs: number,
): { readonly house: number; readonly choices: number; readonly count: number } {
  const price = priceRecords(records, measures);
  let house = Infinity;
  let choices = Infinity;
  let count = 0;
  for (let run = 0; run < runs; run += 1) {
    const started = performance.now();
    const priced = price();
    makeLedger(priced);
    const middle = performance.now();
    count = 0;
    for (const item of priced.items) {
      for (const option of item.takeoffs.keys()) {
        priced.choices.figure(item, option);
        count += 1;
      }
    }
    house = Math.min(house, middle - started);
    choices = Math.min(choices, performance.now() - middle);
  }
  return { house, choices, count };
}
