import type { Milestone } from '../model/index.js';
import type { IsoDate } from '../../base/units/index.js';
import type { WorkingDays } from './working-days.js';

/** Working days by which a milestone may come later without moving the last day of the job; those with none drive it. What
 *  is done has no float: it cannot come later, nor does what hangs on it move through it. */
export function floatOf(
  milestones: readonly Milestone[],
  dates: ReadonlyMap<string, IsoDate>,
  calendar: WorkingDays,
): ReadonlyMap<string, number> {
  const open = new Map(milestones.filter(({ doneOn }) => doneOn === undefined).map((each) => [each.id, each]));
  // The latest day among a milestone and all that hang on it.
  const latest = new Map<string, IsoDate>();
  for (const { id } of open.values()) {
    const date = dates.get(id);
    if (date === undefined) continue;
    let up: Milestone | undefined = open.get(id);
    while (up && (latest.get(up.id) ?? '') < date) {
      latest.set(up.id, date);
      up = up.when.by === 'after' ? open.get(up.when.after) : undefined;
    }
  }
  const last = [...dates.values()].reduce((a, b) => (a > b ? a : b), '');
  return new Map([...latest].map(([id, date]) => [id, calendar.between(date, last)]));
}
