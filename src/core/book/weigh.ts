import type { Option } from '../model/index.js';
import { weightInPlace, type Takeoff } from '../takeoff/index.js';

/** Pounds of an option in place: its weight for each unit of its first part times the quantity of that. Stone weighs by what it covers,
 *  with its corner pieces and with what it is set in, where that is recorded. Timbers of an option without a weight weigh by the density in their own record. Undefined where neither is known. */
export function weigh(option: Option, takeoffs: readonly Takeoff[]): number | undefined {
  const weight = weightInPlace(option);
  if (!weight) return weighTimbers(takeoffs);
  const own = takeoffs.filter(({ part, unit }) => unit === weight.per && part === option.parts[0]?.part);
  return own.reduce((sum, { net, covered }) => sum + (covered ?? net), 0) * weight.pounds;
}

function weighTimbers(takeoffs: readonly Takeoff[]): number | undefined {
  const places = takeoffs.flatMap((takeoff) => takeoff.places);
  const pounds = places.flatMap(({ timber }) => (timber?.pounds === undefined ? [] : [timber.pounds * timber.count]));
  if (pounds.length === 0 || pounds.length < places.length) return undefined;
  return pounds.reduce((sum, each) => sum + each, 0);
}
