import {
  plainWords,
  type Block,
  type HouseCell,
  type LaidColumn,
  type TableBlock,
  type Width,
} from '../sheet/index.js';
import { isFigure, pointOf, shownColumns } from './looks.js';

/** `title`: what has just been said, so that a caption does not say it again. */
export function blocksText(blocks: readonly Block[], title = ''): string {
  return blocks
    .map((block) => blockText(block, title))
    .filter((text) => text !== '')
    .join('\n');
}

function blockText(block: Block, title: string): string {
  switch (block.block) {
    case 'section':
      return `${block.title}\n\n${blocksText(block.of, block.title)}`;
    case 'prose':
      return `${lineText(block.of)}\n`;
    case 'body':
      return `${block.text.trim()}\n`;
    case 'table':
      return block.caption === title ? tableText(block) : `${block.caption}\n\n${tableText(block)}`;
    case 'facts':
      return block.facts.map(({ label, cell }) => `${label}: ${plainWords(cell)}\n`).join('');
    case 'list':
      return block.items.map((item, index) => `${block.ordered ? `${index + 1}.` : '-'} ${lineText(item)}\n`).join('');
    case 'note':
      return [block.title, ...block.of].map((line, index) => `${index > 0 ? '  ' : ''}${lineText(line)}\n`).join('');
  }
}

const lineText = (cells: readonly HouseCell[]): string => cells.map(plainWords).join('');

/** Characters of a column of words before it goes on in the next line. */
const widest: Readonly<Record<Width, number>> = { fit: 16, short: 18, words: 30, long: 44 };

interface Column extends LaidColumn {
  readonly point: number;
  readonly right: boolean;
}

/** A table in aligned columns, two spaces between, a rule under the heads; figures stand on their points, long words go on in
 *  the lines below. */
export function tableText(table: TableBlock): string {
  const columns = columnsOf(table);
  const rowOf = (cells: Readonly<Record<string, HouseCell>>) => columns.map((column) => linesOf(cells, column));
  const groups = table.groups.map(({ title, rows }) => ({ title, rows: rows.map(({ cells }) => rowOf(cells)) }));
  const sums = table.sums.map(({ what, why, cells }) =>
    columns.map((column) =>
      column.key === table.named ? wrap(why === undefined ? what : `${what}: ${why}`, column) : linesOf(cells, column),
    ),
  );
  const heads = columns.map(({ head }) => [head]);
  const all = [heads, ...groups.flatMap(({ rows }) => rows), ...sums];
  const widths = columns.map((_, index) => Math.max(...all.flatMap((row) => (row[index] ?? []).map(widthOf))));
  const print = (row: readonly (readonly string[])[]) => printRow(row, widths, columns);
  const rule = print(widths.map((width) => ['-'.repeat(width)]));
  return [
    ...groups.map(({ title, rows }, index) => {
      const named = title === undefined ? '' : `${index > 0 ? '\n' : ''}${title}\n\n`;
      return `${named}${print(heads)}${rule}${rows.map(print).join('')}`;
    }),
    ...(sums.length > 0 ? [rule, ...sums.map(print)] : []),
    ...table.notes.map((note) => `\n${note}\n`),
  ].join('');
}

/** What stands beneath a column elsewhere has a column of its own beside it here. */
function columnsOf(table: TableBlock): readonly Column[] {
  const { columns, beneath } = shownColumns(table, 'text');
  return columns
    .flatMap((column) => [column, ...beneath(column.key)])
    .filter(({ kind }) => kind !== 'swing')
    .map((column) => ({
      ...column,
      right: isFigure(column),
      point: isFigure(column) ? pointOf(table, column.key) : 0,
    }));
}

function linesOf(cells: Readonly<Record<string, HouseCell>>, column: Column): readonly string[] {
  const cell = cells[column.key] ?? { is: 'nothing' };
  if (cell.is === 'nothing') return [''];
  const said = plainWords(cell);
  return column.right ? [onPoint(said, column.point)] : wrap(said, column);
}

/** Words in lines of the column's width. */
function wrap(text: string, { width = 'words' }: LaidColumn): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(last) + 1 + widthOf(word) <= widest[width]) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else lines.push(word);
  }
  return lines;
}

/** A whole amount gets room for the digits that it lacks. */
function onPoint(text: string, point: number): string {
  if (point === 0) return text;
  const at = text.indexOf('.');
  const digits = at < 0 ? 0 : text.length - at - 1;
  return text + ' '.repeat(at < 0 ? point + 1 : Math.max(0, point - digits));
}

function printRow(row: readonly (readonly string[])[], widths: readonly number[], columns: readonly Column[]): string {
  const height = Math.max(...row.map((lines) => lines.length));
  return Array.from({ length: height }, (_, at) => {
    const texts = row.map((lines, index) => {
      const text = lines[at] ?? '';
      const room = ' '.repeat(Math.max(0, (widths[index] ?? 0) - widthOf(text)));
      return columns[index]?.right ? room + text : text + room;
    });
    return `${texts.join('  ').trimEnd()}\n`;
  }).join('');
}

const widthOf = (text: string): number => [...text].length;
