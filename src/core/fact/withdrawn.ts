import type { Withdrawn } from '../model/index.js';
import { printDay, type IsoDate } from '../../base/units/index.js';

/** May something be chosen on a day that was withdrawn? On the day of its end it still may. */
export function isGone({ on }: Pick<Withdrawn, 'on'>, day: IsoDate): boolean {
  return day > on;
}

/** Why an option can no longer be chosen on a day, as a sentence; undefined where it can. */
export function goneWords({ withdrawn }: { readonly withdrawn?: Withdrawn }, day: IsoDate): string | undefined {
  if (!withdrawn || !isGone(withdrawn, day)) return undefined;
  return `It was withdrawn on ${printDay(withdrawn.on)}: ${withdrawn.why}.`;
}
