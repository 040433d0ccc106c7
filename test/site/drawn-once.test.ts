import { join } from 'node:path';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { lookUp, type Book } from '../../src/core/book/index.js';
import type * as DrawnSheet from '../../src/draw/drawn-sheet.js';
import { printPalette, screenPalette } from '../../src/draw/index.js';
import { makeHandout } from '../../src/handout/index.js';
import { loadBook } from '../../src/disk/load/index.js';
import { printRoom } from '../../src/print/drawings.js';
import { roomDrawings } from '../../src/print/handout/drawings.js';
import { drawRoom } from '../../src/site/drawings.js';
import { drawHandoutRoom } from '../../src/site/handout/drawings.js';
import { makeView } from '../../src/site/view.js';
import { svgText } from '../../src/base/svg/index.js';
import type { IsoDate } from '../../src/base/units/index.js';

/** Every sheet that was drawn, by view, feature, scale and what it shows; `shows` tells the rooms apart by number. */
const made = vi.hoisted((): string[] => []);

vi.mock('../../src/draw/drawn-sheet.js', async (load) => {
  const { sheetsOf, ...rest } = await load<typeof DrawnSheet>();
  const plain = (_key: string, value: unknown): unknown => (value instanceof Map ? Object.fromEntries(value) : value);
  const counted: typeof sheetsOf = (subject) =>
    sheetsOf({
      ...subject,
      draw(sheet) {
        const { id = '' } = subject.of as { readonly id?: string };
        made.push(`${subject.view} ${id}, ${sheet.scale.name}: ${JSON.stringify(subject.shows, plain)}`);
        return subject.draw(sheet);
      },
    });
  return { ...rest, sheetsOf: counted };
});

const slugs = ['great-room', 'primary-bath', 'gallery', 'upper-hall'];
let book: Book;

beforeAll(async () => {
  const loaded = await loadBook(join(import.meta.dirname, '../..'), '2026-04-20' as IsoDate);
  if (!loaded.book) throw new Error('the demo house has errors');
  book = loaded.book;
});

/** Everything that pages, printed book and handouts draw of a few rooms. */
function drawAll(): void {
  for (const room of book.rooms.filter(({ slug }) => slugs.includes(slug))) {
    drawRoom(room, makeView(book));
    printRoom(room, lookUp(book));
  }
  for (const handout of book.trades.map((trade) => makeHandout(book, trade, {})))
    for (const room of handout.rooms.filter(({ slug }) => slugs.includes(slug))) {
      drawHandoutRoom(room, handout);
      roomDrawings(room, handout);
    }
}

describe('what pages, printed book and handouts draw of a room', () => {
  test('is drawn once for each scale and what it shows', () => {
    drawAll();
    expect(made.length).toBeGreaterThan(20);
    expect(made.filter((sheet, index) => made.indexOf(sheet) !== index)).toEqual([]);
    const drawn = made.length;
    drawAll();
    expect(made).toHaveLength(drawn);
  });

  test('has a plan of its own only where boards are laid on the floor: no option of one trade makes another', () => {
    drawAll();
    const tiled = book.rooms.find(({ slug }) => slug === 'primary-bath');
    const plans = made.filter((sheet) => sheet.startsWith('plan ') && sheet.includes(`"number":"${tiled?.number}"`));
    const scales = plans.map((sheet) => sheet.split(':')[0]);
    expect(scales).not.toEqual([]);
    expect(scales).toEqual([...new Set(scales)]);
  });
});

describe('one sheet issued twice', () => {
  test('has the ids and colours that were asked for each time, and is else the same', () => {
    const [room] = book.rooms;
    if (!room) throw new Error('no room');
    const { plan } = drawRoom(room, makeView(book));
    const printed = printRoom(room, lookUp(book)).plan;
    expect(svgText(plan.svg)).toContain(screenPalette.poche);
    expect(printed.svg).not.toContain('var(');
    expect(printed.svg).toContain(printPalette.tone);
    expect(svgText(plan.svg)).toContain('id="draw-plan-title"');
    expect(printed.svg).toContain(`id="${room.slug}-plan-title"`);
    expect(svgText(drawRoom(room, makeView(book)).plan.svg)).toBe(svgText(plan.svg));
  });
});
