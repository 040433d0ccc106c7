/** Whoever ticks a page has the printed digits and nothing else: every line of 'how this was figured' and every table of the
 *  demo's Book is figured again from them. */
import { describe, expect, test } from 'vitest';
import { lookUp } from '../../src/core/book/index.js';
import { plainWords, tablesOf, type Block, type HouseBlock } from '../../src/sheet/index.js';
import {
  dataTables,
  houseSheets,
  orderTables,
  quantitySheet,
  takeoffBlocks,
  wallAsPrinted,
} from '../../src/table/index.js';
import { asPrinted, printAmount } from '../../src/base/units/index.js';
import { demoBook } from '../demo-house.js';
import { adds, figure, holds, type Figure } from './ticked/figure.js';
import { untrueSteps, type Ticked } from './ticked/steps.js';

const book = await demoBook('2026-04-20');
const look = lookUp(book);

/** Rows of a table as people read them, by key of the column; what is not told is absent. */
function rowsOf({ groups }: HouseBlock): Readonly<Record<string, string>>[] {
  return groups.flatMap(({ rows }) =>
    rows.map(({ cells }) =>
      Object.fromEntries(
        Object.entries(cells).flatMap(([key, cell]) => (cell.is === 'nothing' ? [] : [[key, plainWords(cell)]])),
      ),
    ),
  );
}

const titled = (row: Readonly<Record<string, string>>): string => Object.values(row).join(' | ');

describe('how this was figured', () => {
  const ticked: Ticked = {};
  const notes = (blocks: readonly Block[]): readonly Extract<Block, { block: 'note' }>[] =>
    blocks.flatMap((block) => (block.block === 'section' ? notes(block.of) : block.block === 'note' ? [block] : []));
  const figured = notes(takeoffBlocks(look, { by: 'room', arithmetic: true }));

  test.each(figured.map((note) => [note.title.map(plainWords).join(''), note] as const))('%s', (_, note) => {
    expect(
      untrueSteps(
        note.of.map((cells) => cells.map(plainWords).join('')),
        ticked,
      ),
    ).toEqual([]);
  });

  test('steps of every kind were found', () => {
    expect(Object.keys(ticked).sort()).toEqual(
      [
        'assembly',
        'boardFeet',
        'boards',
        'gallons',
        'layer',
        'net',
        'required',
        'sheets',
        'supply',
        'term',
        'times',
        'transmittance',
        'waste',
      ].sort(),
    );
    const all = book.selections.flatMap(({ takeoff }) => takeoff);
    expect(ticked.required).toBe(all.length);
    expect(ticked.supply).toBe(all.reduce((sum, { supplies = [] }) => sum + supplies.length, 0));
  });
});

describe('tables', () => {
  const quantities = tablesOf([...quantitySheet(look).blocks, ...takeoffBlocks(look, { by: 'room' })]).filter(
    ({ id }) => id.startsWith('quantities'),
  );

  test('gross less what is taken off is the net, or a note says by how much not; and the net with coats and waste what is required', () => {
    const rows = quantities.flatMap((table) => rowsOf(table).map((row) => ({ row, notes: table.notes.join('') })));
    expect(rows.length).toBe(2 * book.selections.reduce((sum, { takeoff }) => sum + takeoff.length, 0));
    const wrong = rows.filter(({ row: { place = '', gross, less, net, times, waste, required, unit }, notes }) => {
      const missed = figure(gross).value - figure(less).value - figure(net).value;
      const isSaid = notes.includes(`; ${place}, `) || notes.includes(`: ${place}, `);
      const product =
        figure(net).value * (times === undefined ? 1 : figure(times).value) * (1 + figure(waste).value / 100);
      const whole = unit === 'each' || unit === 'lump';
      return !(
        (isSaid ? Math.abs(missed) < figure(net).step * 1.000_001 : adds(missed + figure(net).value, figure(net))) &&
        (whole ? Math.ceil(product - 1e-9) === figure(required).value : holds(product, figure(required)))
      );
    });
    expect(wrong.map(({ row }) => titled(row))).toEqual([]);
  });

  test('orders and supplies: packs hold what is ordered, and no less than is required', () => {
    const rows = orderTables(look).flatMap(rowsOf);
    const wrong = rows.filter(({ packs, ordered, required, orderBy }) => {
      // What is laid out and bought by the piece is what lies there: the area with its waste only checks it.
      if (orderBy === 'pieces') return ordered === undefined || figure(ordered).value <= 0;
      const [, count, holdsEach] = /^([\d,]+) .* of ([\d,.]+) /u.exec(packs ?? '') ?? [];
      if (count === undefined) return ordered !== undefined && figure(ordered).value < figure(required).value;
      const bought = figure(count).value * figure(holdsEach).value;
      return ordered === undefined ? bought < figure(required).value - 0.1 : !holds(bought, figure(ordered));
    });
    expect(rows.length).toBe(book.orders.length + book.supplies.length);
    expect(wrong.map(titled)).toEqual([]);
  });

  test('what is ordered is the sum of what its places require, to a tenth', () => {
    for (const { required, shares } of book.orders) {
      const sum = shares.reduce((total, share) => total + figure(printAmount(share.required, 1)).value, 0);
      expect(Math.abs(sum - figure(printAmount(required, 1)).value)).toBeLessThan(0.05 * (shares.length + 1) + 1e-9);
    }
  });

  test('R of the insulation and with the framing', () => {
    const rows = tablesOf(quantitySheet(look).blocks)
      .filter(({ id }) => id.startsWith('resistance'))
      .flatMap(rowsOf);
    expect(rows.length).toBeGreaterThan(10);
    expect(rows.filter(({ u, effective }) => !holds(1 / figure(u, 4).value, figure(effective, 2))).map(titled)).toEqual(
      [],
    );
  });

  test('sums under a table are the sums of its rows', () => {
    const tables = [...houseSheets(look).flatMap(({ blocks }) => tablesOf(blocks)), ...dataTables(look).values()];
    const wrong = tables.flatMap((table) => untrueSums(table));
    expect(wrong).toEqual([]);
  });

  test('walls of every room: what is taken off and what is left', () => {
    for (const { measure } of book.rooms) {
      for (const wall of measure.walls) {
        const { digits, printed, deductions, rest, id } = wallAsPrinted(wall);
        const read = (amount: number): Figure => figure(printAmount(amount, digits));
        const left = deductions.reduce((sum, { printed: taken }) => sum - read(taken).value, read(printed).value);
        expect([measure.room, id, adds(left, read(rest))]).toEqual([measure.room, id, true]);
        // Each is the figure that whoever measures it gets.
        const measured = [wall.gross, wall.net, ...wall.deductions.map(({ area }) => area)];
        const shown = [printed, rest, ...deductions.slice(0, wall.deductions.length).map((one) => one.printed)];
        expect(shown).toEqual(measured.map((area) => asPrinted(area, digits)));
      }
    }
  });
});

/** What is past of all prices is summed there. */
const ofSomeRows = ['quotes'];

/** Sums that name no reason of their own and stand under a column of figures of one kind. */
function untrueSums({ id, groups, sums }: HouseBlock): string[] {
  const [sum] = sums;
  if (!sum || sums.length > 1 || ofSomeRows.includes(id)) return [];
  return Object.entries(sum.cells).flatMap(([key, cell]) => {
    if (cell.is !== 'money' && cell.is !== 'amount' && cell.is !== 'count') return [];
    const rows = groups
      .flatMap(({ rows: own }) => own.map(({ cells }) => cells[key]))
      .filter((one) => one?.is === cell.is);
    const shown = rows.reduce(
      (total, one) => total + (one ? figure(plainWords(one) === '–' ? '0' : plainWords(one)).value : 0),
      0,
    );
    const printed = plainWords(cell) === '–' ? '0' : plainWords(cell);
    return adds(shown, figure(printed, 2)) ? [] : [`${id}: ${sum.what}, ${key}: ${shown} is printed ${printed}`];
  });
}
