/** What every form of a table must say, and how each form is asked for it. */
import { parse } from 'csv-parse/sync';
import {
  plainWords,
  raw,
  rowsOf,
  say,
  tablesOf,
  type Block,
  type HouseCell,
  type Sheet,
  type TableBlock,
} from '../../src/sheet/index.js';
import { anchorOf, tableCsv, tableText } from '../../src/write/index.js';
import { putDown } from '../print/tool.js';
import type { HtmlTable } from './read-html.js';
import { readTaggedTables, type TaggedTable } from './read-tags.js';

type Row = ReturnType<typeof rowsOf<HouseCell>>[number];
type Form = 'html' | 'pdf' | 'text';

const nothing: HouseCell = { is: 'nothing' };

/** Without spaces and line ends: writers set them where their form needs them. */
const squeeze = (text: string): string => text.replace(/\s+/gu, '');

const linesOf = (cell: HouseCell): string[] =>
  cell.is === 'nothing' ? [] : say(cell).map((line) => squeeze(line.map(({ text }) => text).join('')));

/** `table/column at row` where a form leaves out a line of what the cell says. */
function differences(table: TableBlock, not: Form, said: (row: Row, at: number) => string): readonly string[] {
  return table.columns
    .filter((column) => !column.not?.includes(not) && column.kind !== 'swing')
    .flatMap(({ key }) =>
      rowsOf(table)
        .filter((row, at) => linesOf(row.cells[key] ?? nothing).some((line) => !said(row, at).includes(line)))
        .map(({ id }) => `${table.id}/${key} at ${id}`),
    );
}

/** What a page says otherwise: of rows by their anchors, of the caption, of the heads of groups and of the sums. */
export function wrongOnPage(table: TableBlock, html: HtmlTable | undefined): readonly string[] {
  if (!html) return [`${table.id} is not there`];
  const rowOf = ({ id }: Row) => squeeze(html.rows.get(anchorOf(table.anchor, id))?.join('') ?? '');
  return [
    ...(squeeze(html.caption) === squeeze(table.caption) ? [] : [`${table.id}: caption`]),
    ...differences(table, 'html', rowOf),
    ...besideRows(table, 'html', html.others.map(squeeze)),
  ];
}

/** Titles of groups and sums, each in one row. */
function besideRows(table: TableBlock, not: Form, rows: readonly string[]): readonly string[] {
  const shown = new Set(table.columns.filter((column) => !column.not?.includes(not)).map(({ key }) => String(key)));
  const wanted = [
    ...table.groups.flatMap(({ title, why }) => (title === undefined ? [] : [[title, why ?? '']])),
    ...table.sums.map(({ what, why = '', cells }) => [
      what,
      why,
      ...Object.entries(cells).flatMap(([key, cell]) => (shown.has(key) ? linesOf(cell) : [])),
    ]),
  ].map((texts) => texts.map(squeeze));
  return wanted
    .filter((texts) => !rows.some((row) => texts.every((text) => row.includes(text))))
    .map(([what]) => `${table.id}: ${what ?? ''}`);
}

/** What a file of data says otherwise, to the last digit. */
export function wrongInData(table: TableBlock): readonly string[] {
  const [heads = [], ...rows] = parse(tableCsv(table), { columns: false }) as string[][];
  return [
    ...(new Set(heads).size === heads.length ? [] : [`${table.id}: heads are not told apart`]),
    ...rowsOf(table).flatMap(({ id, cells }, at) =>
      table.columns
        .filter(({ kind }) => kind !== 'swing')
        .filter(({ key }) => !rows[at]?.some((one) => one.replace(/^'/u, '') === String(raw(cells[key]))))
        .map(({ key }) => `${table.id}/${key} at ${id}`),
    ),
  ];
}

/** What a terminal says otherwise. Long words go on in the next line: one word at a time is asked for. */
export function wrongInText(table: TableBlock): readonly string[] {
  const text = tableText(table);
  return table.columns
    .filter((column) => !column.not?.includes('text') && column.kind !== 'swing')
    .flatMap(({ key }) =>
      rowsOf(table)
        .filter(({ cells }) => linesOf(cells[key] ?? nothing).length > 0)
        .filter(({ cells }) =>
          plainWords(cells[key] ?? nothing)
            .split(/\s+/u)
            .some((word) => !text.includes(word)),
        )
        .map(({ id }) => `${table.id}/${key} at ${id}`),
    );
}

/** The tables of a PDF. */
export const tagged = (pdf: Uint8Array): readonly TaggedTable[] => readTaggedTables(putDown(pdf).tags());

/** What paper says otherwise, by the tags. */
export function wrongInPrint(table: TableBlock, tables: readonly TaggedTable[]): readonly string[] {
  const print = tables.find(({ caption }) => squeeze(caption) === squeeze(table.caption));
  if (!print) return [`${table.id} is not there, or has another caption`];
  const lines = print.rows.map(({ cells }) => ({
    head: squeeze(cells.find(({ tag }) => tag === 'TH')?.text ?? ''),
    all: squeeze(cells.map(({ text }) => text).join('')),
    cells: cells.length,
  }));
  // Rows come in the table's order; heads of groups stand between them. On paper a row's head is its first cell.
  const [first] = table.columns.filter(({ under, not }) => under === undefined && !not?.includes('pdf'));
  let next = 0;
  const printed = rowsOf(table).map(({ cells }) => {
    const name = linesOf(cells[first?.key ?? ''] ?? nothing).join('');
    const at = lines.findIndex((line, index) => index >= next && line.head.startsWith(name) && line.cells > 1);
    if (at >= 0) next = at + 1;
    return lines[at]?.all ?? '';
  });
  return [
    ...differences(table, 'pdf', (_, at) => printed[at] ?? ''),
    ...besideRows(
      table,
      'pdf',
      lines.map(({ all }) => all),
    ),
  ];
}

/** The first rows of the first groups of a table. Reading tags takes time with the square of a sheet. */
export function fewRows<T extends TableBlock>(table: T, most: number): T {
  const groups = table.groups.slice(0, 2).map((group) => ({ ...group, rows: group.rows.slice(0, most) }));
  return { ...table, groups };
}

/** A sheet with few rows, in parts of few blocks each; of tables with the same columns the first two stand for all. */
export function inParts({ blocks, ...rest }: Sheet): readonly Sheet[] {
  const seen = new Map<string, number>();
  const cut = (block: Block): readonly Block[] => {
    if (block.block === 'section') return [{ ...block, of: block.of.flatMap(cut) }];
    if (block.block !== 'table') return [block];
    const shape = JSON.stringify(block.columns);
    const times = seen.get(shape) ?? 0;
    seen.set(shape, times + 1);
    return times < 2 ? [fewRows(block, 2)] : [];
  };
  const size = 3;
  const kept = blocks.flatMap(cut).filter((block) => block.block !== 'section' || tablesOf([block]).length > 0);
  return Array.from({ length: Math.ceil(kept.length / size) }, (_, at) => ({
    ...rest,
    blocks: kept.slice(at * size, (at + 1) * size),
  }));
}
