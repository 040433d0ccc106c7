import {
  say,
  type Block,
  type HouseCell,
  type LaidSum,
  type Line,
  type Place,
  type Sheet,
  type Status,
  type TableBlock,
  type Width,
} from '../sheet/index.js';
import { anchorOf } from './anchor.js';
import { readProse, type Block as Prose } from './read-prose.js';
import { isFigure, pointOf, shownColumns } from './looks.js';
import { signs, strokeOf } from './signs.js';

/** What `sheet.typ` sets: words made, looks left to its theme. Plain JSON. */
export interface PrintSheet {
  readonly title: string;
  readonly landscape: boolean;
  readonly blocks: readonly PrintBlock[];
}

type PrintBlock =
  | PrintTable
  | { readonly block: 'section'; readonly id: string; readonly title: string; readonly of: readonly PrintBlock[] }
  | { readonly block: 'prose'; readonly tone: string; readonly line: readonly PrintRun[] }
  | { readonly block: 'body'; readonly prose: readonly Prose[] }
  | {
      readonly block: 'facts';
      readonly facts: readonly { readonly label: string; readonly line: readonly PrintRun[] }[];
    }
  | { readonly block: 'list'; readonly ordered: boolean; readonly items: readonly (readonly PrintRun[])[] }
  | {
      readonly block: 'note';
      readonly tone: string;
      readonly title: readonly PrintRun[];
      readonly lines: readonly (readonly PrintRun[])[];
    };

/** A piece of text. `rest` is what stands after the point of a figure; `to` a label of the document. */
interface PrintRun {
  readonly text: string;
  readonly rest: string;
  readonly tone: string;
  readonly isFigure: boolean;
  readonly sign: string;
  readonly to: string;
}

interface PrintCell {
  readonly lines: readonly (readonly PrintRun[])[];
  readonly under: readonly (readonly PrintRun[])[];
  /** Taller than a page could be: may break. */
  readonly long: boolean;
}

export interface PrintTable {
  readonly block: 'table';
  readonly caption: string;
  readonly together: boolean;
  readonly columns: readonly {
    readonly head: string;
    readonly width: Width;
    readonly right: boolean;
    readonly point: number;
    readonly named: boolean;
    readonly kind: string;
  }[];
  readonly groups: readonly {
    readonly title: string;
    readonly why: string;
    readonly rows: readonly {
      readonly label: string;
      readonly strong: boolean;
      readonly cells: readonly PrintCell[];
    }[];
  }[];
  readonly sums: readonly { readonly strong: boolean; readonly cells: readonly PrintCell[] }[];
  readonly notes: readonly string[];
}

/** Labels of the document that words may point to; undefined for what has none. */
export type Labels = (place: Place) => string | undefined;

export const printSheet = (sheet: Sheet, labels: Labels): PrintSheet => ({
  title: sheet.title,
  landscape: sheet.paper === 'landscape',
  blocks: printBlocks(sheet.blocks, labels),
});

const printBlocks = (blocks: readonly Block[], labels: Labels): readonly PrintBlock[] =>
  blocks.map((block) => printBlock(block, labels));

function printBlock(block: Block, labels: Labels): PrintBlock {
  switch (block.block) {
    case 'section':
      return { block: 'section', id: block.id, title: block.title, of: printBlocks(block.of, labels) };
    case 'prose':
      return { block: 'prose', tone: block.tone, line: printLine(block.of, labels) };
    case 'body':
      return { block: 'body', prose: readProse(block.text) };
    case 'table':
      return printTable(block, labels);
    case 'facts':
      return {
        block: 'facts',
        facts: block.facts.map(({ label, cell }) => ({ label, line: printLine([cell], labels) })),
      };
    case 'list':
      return { block: 'list', ordered: block.ordered, items: block.items.map((item) => printLine(item, labels)) };
    case 'note':
      return {
        block: 'note',
        tone: block.tone,
        title: printLine(block.title, labels),
        lines: block.of.map((line) => printLine(line, labels)),
      };
  }
}

/** Characters that surely fit a page, however narrow the column. */
const longest = 900;
/** Small print longer than this is words: beneath a figure it is given its share of the sheet, else it would take it from what stands beside. */
const figureLength = 20;

const lengthOf = (line: readonly PrintRun[]): number => line.reduce((sum, { text }) => sum + text.length, 0);

export function printTable(table: TableBlock, labels: Labels): PrintTable {
  const { columns, beneath } = shownColumns(table, 'pdf');
  const shown = columns.filter(({ kind }) => kind !== 'swing');
  const cellOf = (cells: Readonly<Record<string, HouseCell>>, key: string, isWords: boolean): PrintCell => {
    const own = cells[key] ?? { is: 'nothing' };
    const under = beneath(key)
      .flatMap((column) => cells[column.key] ?? [])
      .filter(({ is }) => is !== 'nothing' && is !== 'swing')
      .flatMap((cell) => linesOf(cell, labels));
    const lines = own.is === 'nothing' && (isWords || under.length > 0) ? [] : linesOf(own, labels);
    return { lines, under, long: lengthOf([...lines, ...under].flat()) > longest };
  };
  const groups = table.groups.map(({ title = '', why = '', rows }) => ({
    title,
    why,
    rows: rows.map(({ id, strong = false, cells }) => ({
      label: anchorOf(table.anchor, id),
      strong,
      cells: shown.map((column) => cellOf(cells, column.key, !isFigure(column))),
    })),
  }));
  const isWordy = (at: number): boolean =>
    groups.some(({ rows }) => rows.some(({ cells }) => cells[at]?.under.some((line) => lengthOf(line) > figureLength)));
  return {
    block: 'table',
    caption: table.caption,
    together: table.together ?? false,
    columns: shown.map((column, at) => ({
      head: column.head,
      width: column.width ?? (isWordy(at) ? 'words' : 'fit'),
      right: isFigure(column),
      point: isFigure(column) ? pointOf(table, column.key) : 0,
      named: column.key === table.named,
      kind: column.kind,
    })),
    groups,
    sums: table.sums.map((sum) => ({
      strong: sum.strong ?? false,
      cells: shown.map(({ key }) => (key === table.named ? sumName(sum) : cellOf(sum.cells, key, true))),
    })),
    notes: table.notes,
  };
}

function sumName({ what, why }: LaidSum<HouseCell>): PrintCell {
  const line = (text: string) => [{ text, rest: '', tone: 'plain', isFigure: false, sign: '', to: '' }];
  return { lines: [line(what)], under: why === undefined ? [] : [line(why)], long: false };
}

const linesOf = (cell: HouseCell, labels: Labels): readonly (readonly PrintRun[])[] =>
  say(cell).map((line) => runsOf(line, labels));

/** Cells in one running line. */
export const printLine = (cells: readonly HouseCell[], labels: Labels): readonly PrintRun[] =>
  cells.flatMap((cell) => linesOf(cell, labels).flat());

function runsOf(line: Line, labels: Labels): readonly PrintRun[] {
  return line.map(({ text, tone = 'plain', place, figure, sign }) => {
    const point = figure !== undefined && figure > 0 ? text.indexOf('.') : -1;
    return {
      text: point < 0 ? text : text.slice(0, point),
      rest: point < 0 ? '' : text.slice(point),
      tone,
      isFigure: figure !== undefined,
      sign: sign ?? '',
      to: (place && labels(place)) ?? '',
    };
  });
}

/** Each sign as a drawing, for the theme. */
export const printSigns: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(signs).map(([name, { path, filled }]) => [name, signSvg(path, filled, name as Status)]),
);

function signSvg(path: string, filled: boolean, name: Status): string {
  const ink = '#1f2724';
  const paint = filled
    ? `fill="${ink}" fill-rule="evenodd"`
    : `fill="none" stroke="${ink}" stroke-width="${strokeOf(name)}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="12" height="12" viewBox="0 0 12 12"><path d="${path}" ${paint}/></svg>`;
}
