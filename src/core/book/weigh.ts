import { factOf } from '../fact/index.js';
import type { Option } from '../model/index.js';
import type { Takeoff } from '../takeoff/index.js';

/** Pounds of an option in place: its weight for each unit times the net quantity in that unit. Corner pieces of stone
 *  weigh as the area that they cover. Undefined when the option's record gives no weight. */
export function weigh(option: Option, takeoffs: readonly Takeoff[]): number | undefined {
  const { weight } = option;
  if (!weight) return undefined;
  const covers = factOf(option, 'stone', 'corner-covers');
  const quantity = takeoffs.reduce((sum, takeoff) => {
    if (takeoff.unit === weight.per) return sum + takeoff.net;
    if (takeoff.part === 'corners' && covers !== undefined && weight.per === 'sq ft') return sum + takeoff.net * covers;
    return sum;
  }, 0);
  return quantity * weight.pounds;
}
