import type { FinishGroup, FinishRow as Row, LookUp } from '../../book/index.js';
import { scheduleColumns } from '../../model/index.js';
import { printLength } from '../../units/index.js';

/** Room finish schedule: keys by room, and on the same sheet what each key means. */
export interface FinishSchedule {
  readonly rows: readonly FinishRow[];
  readonly legend: readonly LegendEntry[];
  readonly notes: readonly { readonly key: string; readonly text: string }[];
}

export interface FinishRow {
  readonly slug: string;
  readonly number: string;
  readonly name: string;
  readonly height: string;
  readonly cells: readonly (readonly KeyCell[])[];
  readonly notes: string;
}

/** Keys of places that are finished alike, and which they are where they differ within the room. */
export interface KeyCell {
  readonly keys: readonly { readonly key: string; readonly isOpen: boolean }[];
  readonly at: string;
}

export interface LegendEntry {
  readonly key: string;
  readonly name: string;
  readonly product: string;
  readonly category: string;
}

export function makeFinishSchedule(look: LookUp): FinishSchedule {
  const { legend, rows, notes } = look.book.schedules.finish;
  return {
    rows: rows.map((row) => ({
      slug: row.room,
      number: look.room(row.room)?.number ?? '',
      name: look.roomName(row.room),
      height: heightText(row),
      cells: scheduleColumns.map((column) => row.cells[column].map(keyCell)),
      notes: row.notes.join(', '),
    })),
    legend: legend.map(({ key, name, product, category }) => ({
      key,
      name,
      product,
      category: look.categoryName(category),
    })),
    notes: notes.map(({ number, room, placeText, text }) => ({
      key: String(number),
      text: `${look.room(room)?.number ?? room}, ${placeText.toLowerCase()}: ${text}`,
    })),
  };
}

/** A key in brackets is the standard for now; what has no key says so in a word. */
function keyCell({ at, finishes }: FinishGroup): KeyCell {
  return {
    at,
    keys: finishes.map(({ key, standing }) => {
      if (key === undefined) return { key: standing === 'none' ? 'none' : 'open', isOpen: standing !== 'none' };
      return standing === 'standard' ? { key: `(${key})`, isOpen: true } : { key, isOpen: false };
    }),
  };
}

function heightText({ lowest, highest }: Row): string {
  return lowest === highest ? printLength(highest) : `${printLength(lowest)} to ${printLength(highest)}`;
}
