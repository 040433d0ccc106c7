import type { BookOption } from '../book/index.js';
import type { View } from './view.js';

export const scheduleColumns = ['floor', 'base', 'walls', 'ceiling', 'trim'] as const;
export type ScheduleColumn = (typeof scheduleColumns)[number];

const letters: Readonly<Record<ScheduleColumn, string>> = {
  floor: 'F',
  base: 'B',
  walls: 'W',
  ceiling: 'C',
  trim: 'T',
};

export interface FinishKey {
  readonly key: string;
  readonly column: ScheduleColumn;
  readonly option: BookOption;
}

/** A key for each option that a room finish schedule shows: a letter for its column and a number, in the order of the
 *  options in the Book. Letters differ by column, so that no key means two things. */
export function finishKeys(view: View): ReadonlyMap<string, FinishKey> {
  const keys = new Map<string, FinishKey>();
  for (const column of scheduleColumns) {
    let number = 0;
    for (const option of view.book.options) {
      if (view.category(option.category)?.schedule !== column) continue;
      if (view.uses(option).counted.length === 0) continue;
      number += 1;
      keys.set(option.id, { key: `${letters[column]}${number}`, column, option });
    }
  }
  return keys;
}
