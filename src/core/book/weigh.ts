import type { Option } from '../model/index.js';
import type { Takeoff } from '../takeoff/index.js';

/** Pounds of an option in place: its weight for each unit of its first part times the quantity of that. Stone weighs by what it covers,
 *  with its corner pieces. Undefined when the option's record gives no weight. */
export function weigh({ weight, parts }: Option, takeoffs: readonly Takeoff[]): number | undefined {
  if (!weight) return undefined;
  const own = takeoffs.filter(({ part, unit }) => unit === weight.per && part === parts[0]?.part);
  return own.reduce((sum, { net, covered }) => sum + (covered ?? net), 0) * weight.pounds;
}
