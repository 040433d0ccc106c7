import { inches, type Length } from '../../../base/units/index.js';

/** Hinges of one leaf by its height: two up to 60", and one more for each 30" or part of it. Source: ANSI/BHMA A156 practice as the Door
 *  and Hardware Institute (DHI) teaches it, from memory. */
export function hingesFor(height: Length): number {
  return 2 + Math.max(0, Math.ceil((inches(height) - 60) / 30 - 1e-9));
}
