import type { LookUp } from '../core/book/index.js';
import { col, layOut, words, type Cell, type HouseBlock, type Names, type Table } from '../sheet/index.js';
import { statementWords, type Cut, type LaidSurface } from '../core/takeoff/index.js';
import { feet, printLength, type Length } from '../base/units/index.js';
import { namesOf } from './names-of.js';
import { laidLines, type LaidLine, type QuantityLine } from './takeoff-lines.js';

const layouts: Table<LaidLine> = {
  id: 'laid',
  caption: 'Which count is the order, and the least that any layout could buy',
  named: 'finish',
  rowId: ({ selection, part }) => `${selection}-${part}`,
  columns: [
    col.words('finish', 'Finish', ({ name }) => name, { width: 'words' }),
    col.words('place', 'Place', ({ place }) => place, { under: 'finish', width: 'words' }),
    col.count('courses', 'Courses', ({ layout }) => layout.courses),
    col.length('first', 'First', ({ layout }) => layout.firstCourse),
    col.length('last', 'Last', ({ layout }) => layout.lastCourse),
    col.words('order', 'Order by', ({ layout }) => layout.orderBy, { width: 'fit' }),
    col.pieces('buy', 'Pieces', ({ layout }) => layout.stock, { width: 'words' }),
    col.percent('waste', 'True waste, %', ({ layout }) => layout.waste * 100),
    col.amount('bought', 'Bought, ft', ({ layout }) => feet(layout.bought)),
    col.amount('least', 'Least, ft', ({ layout }) => feet(layout.bound)),
    col.percent('over', 'Over it, %', ({ layout }) => layout.gap * 100),
  ],
};

interface SurfaceLine extends LaidLine {
  readonly surface: LaidSurface;
}

const courses: Table<SurfaceLine> = {
  id: 'courses',
  caption: 'Courses, and the line to snap for the first',
  named: 'surface',
  rowId: ({ selection, part, surface }) => `${selection}-${part}-${surface.name}`,
  group: groupOf,
  columns: [
    col.words('surface', 'Surface', ({ surface }) => surface.name, { width: 'words' }),
    col.words('run', 'Courses run', ({ surface }) => surface.run, { width: 'short' }),
    col.count('courses', 'Courses', ({ surface }) => surface.courses),
    col.length('first', 'First', ({ surface }) => surface.firstCourse),
    col.length('last', 'Last', ({ surface }) => surface.lastCourse),
    col.words('starts', 'First course lies at', ({ surface }) => surface.startsAt, { width: 'words' }),
  ],
};

interface CutLine extends LaidLine {
  readonly from: Length;
  readonly count: number;
  readonly cuts: readonly Cut[];
}

const cutList: Table<CutLine> = {
  id: 'cuts',
  caption: 'Cut list',
  named: 'from',
  rowId: ({ selection, part, from }) => `${selection}-${part}-${from}`,
  group: groupOf,
  columns: [
    col.length('from', 'Board or sheet', ({ from }) => from),
    col.count('count', 'Buy', ({ count }) => count),
    col.list('cuts', 'Cut into', ({ cuts }) => cuts.map(pieceOf), { width: 'long' }),
  ],
};

/** Boards and sheets as laid out: what to buy, where courses begin, and what is cut from each length, longest first. Nothing where
 *  nothing is laid out. */
export function layoutTables(lines: readonly QuantityLine[], look: LookUp): readonly HouseBlock[] {
  const laid = laidLines(lines);
  if (laid.length === 0) return [];
  const names = namesOf(look);
  const notes = laid.flatMap(({ name, place, layout: { departures } }) =>
    departures.length === 0 ? [] : [`${name}, ${place}: rules that could not be kept: ${departures.join('; ')}.`],
  );
  return [
    layOut({ ...layouts, notes: () => laid.map(orderNote) }, laid, names),
    layOut(
      courses,
      laid.flatMap((line) => line.layout.surfaces.map((surface) => ({ ...line, surface }))),
      names,
    ),
    layOut({ ...cutList, notes: () => notes }, laid.flatMap(cutLines), names),
  ];
}

/** Beneath the table, where a sentence has the width of the sheet. */
function orderNote({ name, place, statement }: LaidLine): string {
  return `${name}, ${place}: ${statementWords(statement)}`;
}

function groupOf({ name, place, room }: LaidLine, names: Names) {
  return { title: `${names.number(room)} ${place}: ${name}` };
}

function cutLines(line: LaidLine): readonly CutLine[] {
  const { stock, cuts } = line.layout;
  return stock.toReversed().map(({ length, count }) => ({
    ...line,
    from: length,
    count,
    cuts: cuts.filter(({ from }) => from === length),
  }));
}

/** `12 × 4'-3"`; a board that is used as it comes is whole. */
function pieceOf({ length, width, from, count }: Cut): Cell {
  const ripped = width === undefined ? '' : ` ripped to ${printLength(width)}`;
  return words(length === from ? `${count} whole${ripped}` : `${count} × ${printLength(length)}${ripped}`);
}

/** The same in one table, for a sheet of paper. */
const onPaper: Table<LaidLine> = {
  ...layouts,
  caption: 'Courses, what to buy and what is cut from it',
  columns: [
    col.words('finish', 'Finish', ({ name }) => name, { width: 'short' }),
    ...layouts.columns.filter(({ key }) => key === 'place'),
    col.lines('courses', 'How it lies, what to buy, what is cut', ({ layout }) => alike(layout.surfaces), {
      width: 'long',
    }),
    col.words('order', 'Order and check', ({ statement }) => statementWords(statement), { under: 'courses' }),
    col.lines('cuts', 'Cut list', cutsOf, { under: 'courses' }),
    ...layouts.columns.filter(({ key }) => key === 'waste' || key === 'over'),
  ],
};

export function layoutsOnPaper(lines: readonly QuantityLine[], look: LookUp): readonly HouseBlock[] {
  const laid = laidLines(lines);
  return laid.length === 0 ? [] : [layOut(onPaper, laid, namesOf(look))];
}

/** `26 at 14'-0"` and the pieces. */
function cutsOf(line: LaidLine): readonly { readonly cell: Cell }[] {
  return cutLines(line).map(({ from, count, cuts }) => {
    const buy: Cell = { is: 'words', text: `${count} at ${printLength(from)}`, tone: 'strong' };
    const pieces: Cell = { is: 'list', of: cuts.map(pieceOf), parted: ', ' };
    return { cell: { is: 'list', of: [buy, pieces], parted: ' ' } };
  });
}

/** Surfaces that are laid alike in one line: `West slope: 34 courses, north-south; first 4 9/16" at the eave`. */
function alike(surfaces: readonly LaidSurface[]): readonly { readonly at: string; readonly cell: Cell }[] {
  const names = new Map<string, string[]>();
  for (const { name, courses, run, firstCourse, lastCourse, startsAt } of surfaces) {
    const text =
      courses === 1
        ? `1 course, ${run}`
        : `${courses} courses, ${run}; first ${printLength(firstCourse)} at ${startsAt}, last ${printLength(lastCourse)}`;
    names.set(text, [...(names.get(text) ?? []), name]);
  }
  return [...names].map(([text, of]) => ({ at: `${of.join(', ')}:`, cell: words(text) }));
}
