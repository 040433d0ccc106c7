import { lookUp } from '../../book/index.js';
import type { Book, FinishRow } from '../../book/index.js';
import { scheduleColumns } from '../../model/index.js';
import { lengthText } from './text.js';

/** One line for each room; in a cell finishes in working order, and walls told apart where they differ. A key in
 *  brackets is the standard for now. */
export function finishRows(book: Book): readonly object[] {
  const look = lookUp(book);
  const { rows, notes } = book.schedules.finish;
  return rows.map((row) => ({
    room: look.room(row.room)?.number ?? '',
    name: look.roomName(row.room),
    ...Object.fromEntries(scheduleColumns.map((column) => [column, cellText(row.cells[column])])),
    lowest: lengthText(row.lowest),
    highest: lengthText(row.highest),
    remarks: row.notes.map((number) => notes[number - 1]?.text ?? '').join(' / '),
  }));
}

export function finishKeyRows({ schedules, categories }: Book): readonly object[] {
  const names = new Map(categories.map(({ slug, name }) => [slug, name]));
  return schedules.finish.legend.map(({ key, name, product, category, section }) => ({
    key,
    finish: name,
    product,
    kind: names.get(category) ?? category,
    section,
  }));
}

function cellText(groups: FinishRow['cells']['floor']): string {
  return groups
    .map(({ at, finishes }) => {
      const keys = finishes.map(({ key, standing }) =>
        key === undefined ? standing : standing === 'standard' ? `(${key})` : key,
      );
      return [at === '' ? '' : `${at}:`, keys.join(' ')].filter((part) => part !== '').join(' ');
    })
    .join('; ');
}
