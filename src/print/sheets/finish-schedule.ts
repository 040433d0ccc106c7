import type { BookRoom, BookSelection } from '../../book/index.js';
import { printLength } from '../../units/index.js';
import type { LookUp } from '../../book/index.js';
import { productText } from './selection-row.js';

/** Room finish schedule: codes by room, and on the same sheet what each code means. */
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
  readonly cells: readonly (readonly CodeCell[])[];
  readonly notes: string;
}

/** A code, and the places it is for where they differ within the room. */
export interface CodeCell {
  readonly code: string;
  readonly at: string;
  readonly isOpen: boolean;
}

export interface LegendEntry {
  readonly code: string;
  readonly name: string;
  readonly product: string;
  readonly category: string;
}

export const scheduleColumns = ['floor', 'base', 'walls', 'ceiling', 'trim'] as const;
type Column = (typeof scheduleColumns)[number];

const letters: Readonly<Record<Column, string>> = { floor: 'F', base: 'B', walls: 'W', ceiling: 'C', trim: 'T' };

export function makeFinishSchedule(look: LookUp): FinishSchedule {
  const codes = giveCodes(look);
  const notes: { key: string; text: string }[] = [];
  const rows = look.book.rooms.map((room) => {
    const scheduled = look.selectionsOf(room).filter((selection) => columnOf(selection, look) !== undefined);
    const keys = scheduled.flatMap(({ note, placeText }) => {
      if (note === undefined) return [];
      notes.push({ key: String(notes.length + 1), text: `${room.number}, ${placeText.toLowerCase()}: ${note}` });
      return [String(notes.length)];
    });
    return {
      slug: room.slug,
      number: room.number,
      name: room.name,
      height: heightText(room),
      cells: scheduleColumns.map((column) => cellsOf(scheduled, column, codes, look)),
      notes: keys.join(', '),
    };
  });
  return { rows, legend: [...codes.values()], notes };
}

/** Codes of every scheduled finish, in the order of the columns, then of the category's work and the option's name. */
function giveCodes(look: LookUp): ReadonlyMap<string, LegendEntry> {
  const used = look.book.selections.flatMap((selection) => {
    const column = columnOf(selection, look);
    const option = look.option(selection.category, selection.chosen);
    return column && option ? [{ column, option, sequence: look.category(selection.category)?.sequence ?? 0 }] : [];
  });
  const legend = new Map<string, LegendEntry>();
  for (const column of scheduleColumns) {
    const own = used.filter((use) => use.column === column);
    own.sort((a, b) => a.sequence - b.sequence || compare(a.option.id, b.option.id));
    const options = [...new Set(own.map(({ option }) => option))];
    options.forEach((option, index) => {
      legend.set(option.id, {
        code: `${letters[column]}-${index + 1}`,
        name: option.name,
        product: productText(option),
        category: look.categoryName(option.category),
      });
    });
  }
  return legend;
}

function cellsOf(
  selections: readonly BookSelection[],
  column: Column,
  codes: ReadonlyMap<string, LegendEntry>,
  look: LookUp,
): readonly CodeCell[] {
  const own = selections.filter((selection) => columnOf(selection, look) === column);
  const plain = new Set([
    'floor',
    'base',
    'walls',
    'ceiling',
    'openings',
    'doors',
    'windows',
    'doors and windows',
    'base of the walls',
  ]);
  return own.map((selection) => {
    const entry = codes.get(`${selection.category}/${selection.chosen ?? ''}`);
    const isWhole = plain.has(selection.placeText.toLowerCase());
    const word = selection.state === 'none' ? 'none' : 'open';
    return {
      code: entry?.code ?? word,
      at: isWhole ? '' : selection.placeText,
      isOpen: selection.state === 'open',
    };
  });
}

function columnOf(selection: BookSelection, look: LookUp): Column | undefined {
  return look.category(selection.category)?.schedule;
}

function heightText({ measure }: BookRoom): string {
  if (measure.lowest === measure.highest) return printLength(measure.highest);
  return `${printLength(measure.lowest)} to ${printLength(measure.highest)}`;
}

function compare(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
