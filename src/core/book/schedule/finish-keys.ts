import { makerText } from '../../fact/index.js';
import { byText } from '../../../base/units/index.js';
import type { ScheduleColumn } from '../../model/index.js';
import type { BookCategory } from '../book.js';
import type { FinishKey } from './schedule.js';
import { standingId } from './scheduled.js';
import type { Unscheduled } from './unscheduled.js';

/** Letters where the category gives none; `place` is for what shows in several columns. */
const letters: Readonly<Record<ScheduleColumn | 'place', string>> = {
  floor: 'F',
  base: 'B',
  walls: 'W',
  ceiling: 'C',
  trim: 'T',
  place: 'M',
};

/** A key for each option that stands somewhere in the room finish schedule: its category's letters and a number. Numbers
 *  run through all categories of the same letters, so that no key means two things. In order of letters, then number. */
export function finishKeys(look: Unscheduled): readonly FinishKey[] {
  const { options, selections } = look.book;
  const standing = new Set(selections.map(standingId));
  const counts = new Map<string, number>();
  const keys = options.flatMap((option): readonly (FinishKey & { readonly letters: string })[] => {
    const category = look.category(option.category);
    const own = category && lettersOf(category);
    if (own === undefined || !standing.has(option.id)) return [];
    const number = (counts.get(own) ?? 0) + 1;
    counts.set(own, number);
    return [
      {
        letters: own,
        key: `${own}${number}`,
        option: option.id,
        name: option.name,
        product: makerText(option),
        category: option.category,
        section: option.section ?? category?.section ?? '',
      },
    ];
  });
  // Numbers already run up within the letters, and the sort keeps them so.
  keys.sort((a, b) => byText(a.letters, b.letters));
  return keys.map(({ letters: _, ...key }) => key);
}

function lettersOf({ schedule, key }: BookCategory): string | undefined {
  return schedule === undefined ? undefined : (key ?? letters[schedule]);
}
