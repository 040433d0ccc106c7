/** Whatever form a table is read in, each of its rows says the same in each of its columns. */
import { parse } from 'csv-parse/sync';
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { lookUp } from '../../src/core/book/index.js';
import { loadBook } from '../../src/disk/load/index.js';
import { makeSheetPdf } from '../../src/print/index.js';
import { plainWords, raw, rowsOf, say, tablesOf } from '../../src/sheet/index.js';
import type { Block, HouseCell, Sheet, TableBlock } from '../../src/sheet/index.js';
import { houseSheets } from '../../src/table/index.js';
import { anchorOf, SheetHtml, tableCsv, tableText } from '../../src/write/index.js';
import { putDown } from '../print/tool.js';
import { readHtmlTables } from './read-html.js';
import { readTaggedTables } from './read-tags.js';

const { book } = await loadBook('.', '2026-04-20');
if (!book) throw new Error('the demo house has errors');
const sheets = houseSheets(lookUp(book));

/** What one output says otherwise than the others, by `sheet/table/column`. The list may only become shorter. */
const known: readonly string[] = [];

/** Without spaces and line ends: writers set them where their form needs them. */
const squeeze = (text: string): string => text.replace(/\s+/gu, '');

/** Cells in the order of their columns, each with what all forms must say. */
function saidIn(table: TableBlock, not: 'html' | 'pdf' | 'text'): { column: string; of: (row: Row) => string[] }[] {
  return table.columns
    .filter((column) => !column.not?.includes(not) && column.kind !== 'swing')
    .map(({ key }) => ({ column: key, of: ({ cells }) => linesOf(cells[key] ?? { is: 'nothing' }) }));
}

type Row = ReturnType<typeof rowsOf<HouseCell>>[number];

const linesOf = (cell: HouseCell): string[] =>
  cell.is === 'nothing' ? [] : say(cell).map((line) => squeeze(line.map(({ text }) => text).join('')));

function differences(
  table: TableBlock,
  not: 'html' | 'pdf' | 'text',
  said: (row: Row, at: number) => string,
): string[] {
  return saidIn(table, not).flatMap(({ column, of }) => {
    const wrong = rowsOf(table).filter((row, at) => of(row).some((line) => !said(row, at).includes(line)));
    return wrong.map(({ id }) => `${table.id}/${column} at ${id}`).filter((what) => !known.includes(what));
  });
}

describe.each(sheets.map((sheet) => [sheet.id, sheet] as const))('%s', (_, sheet) => {
  const tables = tablesOf(sheet.blocks);

  test('has tables with unique ids, each row with an id of its own', () => {
    expect(tables.length).toBeGreaterThan(0);
    for (const table of tables) {
      const ids = rowsOf(table).map(({ id }) => anchorOf(table.anchor, id));
      expect(new Set(ids).size, table.id).toBe(ids.length);
      expect(table.columns.map(({ key }) => key)).toContain(table.named);
    }
    expect(new Set(tables.map(({ id }) => id)).size).toBe(tables.length);
  });

  test('says the same on the page', () => {
    const page = readHtmlTables(render(<SheetHtml sheet={sheet} links={() => undefined} />));
    for (const table of tables) {
      const html = page.get(table.id);
      expect(squeeze(html?.caption ?? '')).toBe(squeeze(table.caption));
      const rowOf = ({ id }: Row) => squeeze(html?.rows.get(anchorOf(table.anchor, id))?.join('') ?? '');
      expect(differences(table, 'html', rowOf)).toEqual([]);
    }
  });

  test('says the same in data, to the last digit', () => {
    for (const table of tables) {
      const rows = parse(tableCsv(table), { columns: false }) as string[][];
      const heads = rows[0] ?? [];
      expect(new Set(heads).size, 'heads are told apart').toBe(heads.length);
      const wrong = rowsOf(table).flatMap(({ id, cells }, at) =>
        table.columns.flatMap(({ key, kind }) => {
          if (kind === 'swing') return [];
          const value = String(raw(cells[key]));
          return rows[at + 1]?.some((one) => one.replace(/^'/u, '') === value) ? [] : [`${table.id}/${key} at ${id}`];
        }),
      );
      expect(wrong).toEqual([]);
    }
  });

  test('says the same in a terminal', () => {
    for (const table of tables) {
      // Long words go on in the next line: there one word at a time is asked for.
      const text = tableText(table);
      const wrong = saidIn(table, 'text').flatMap(({ column, of }) =>
        rowsOf(table)
          .filter((row) => of(row).length > 0)
          .filter(({ cells }) => {
            const words = plainWords(cells[column] ?? { is: 'nothing' }).split(/\s+/u);
            return words.some((word) => !text.includes(word));
          })
          .map(({ id }) => `${table.id}/${column} at ${id}`),
      );
      expect(wrong).toEqual([]);
    }
  });

  test('says the same in print, by its tags, with a caption and a head for each row', async () => {
    // Reading tags takes time with the square of a sheet: a few rows of each table stand for all.
    const few = shorten(sheet);
    const { pdf } = await makeSheetPdf(book, few);
    const tagged = readTaggedTables(putDown(pdf).tags());
    for (const table of tablesOf(few.blocks)) {
      const print = tagged.find(({ caption }) => squeeze(caption) === squeeze(table.caption));
      expect(print, table.caption).toBeDefined();
      const lines = (print?.rows ?? []).map(({ cells }) => ({
        head: squeeze(cells.find(({ tag }) => tag === 'TH')?.text ?? ''),
        all: squeeze(cells.map(({ text }) => text).join('')),
      }));
      // Rows come in the table's order; heads of groups stand between them. On paper a row's head is its first cell.
      const [first] = table.columns.filter(({ under, not }) => under === undefined && !not?.includes('pdf'));
      let next = 0;
      const printed = rowsOf(table).map(({ cells }) => {
        const name = linesOf(cells[first?.key ?? ''] ?? { is: 'nothing' }).join('');
        const at = lines.findIndex(({ head, all }, index) => index >= next && head.startsWith(name) && all !== name);
        if (at >= 0) next = at + 1;
        return lines[at]?.all ?? '';
      });
      expect(differences(table, 'pdf', (_, at) => printed[at] ?? '')).toEqual([]);
    }
  }, 60_000);
});

const enough = 3;

function shorten({ blocks, ...rest }: Sheet): Sheet {
  const cut = (block: Block): Block => {
    if (block.block === 'section') return { ...block, of: block.of.map(cut) };
    if (block.block !== 'table') return block;
    return {
      ...block,
      groups: block.groups.slice(0, enough).map((group) => ({ ...group, rows: group.rows.slice(0, enough) })),
    };
  };
  return { ...rest, blocks: blocks.map(cut) };
}
