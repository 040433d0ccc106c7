import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { makeHandout } from '../../src/handout/index.js';
import { makeBookPdf, makeChangeOrderPdf, makeHandoutPdf } from '../../src/print/index.js';
import { smallBook } from '../book/small-house.js';
import { readTagTree, type Tag } from '../parity/read-tags.js';
import { changedBook } from './changed-book.js';
import { makeFixture } from './fixture.js';
import { putDown } from './tool.js';

vi.setConfig({ hookTimeout: 120_000 });

const folder = join(import.meta.dirname, 'golden');

/** One kind of sheet each: which file it stands in, and the first heading on it. `RECORD=1 npx vitest run test/print/tag-trees.test.ts` writes the trees
 *  as they are now; read the difference before keeping it. */
const sheets = [
  ['summary', 'book', 'Where the house stands'],
  ['plan', 'book', 'Main level'],
  ['schedule', 'book', 'Room finish schedule'],
  ['to-decide', 'book', 'To decide on paper'],
  ['sign-off', 'book', 'Sign-off'],
  ['change-order', 'order', 'Change order 1: Oak in the study'],
  ['handout-card', 'handout', 'Foreman’s card'],
] as const;

describe('tags of', () => {
  const trees = new Map<string, Tag>();
  beforeAll(async () => {
    const [house, changed] = [smallBook(), changedBook()];
    const [trade, order] = [house.trades[0], changed.changeOrders[0]];
    if (!trade || !order) throw new Error('the small house has no trade or no change order');
    const made = {
      book: await makeBookPdf(makeFixture()),
      order: await makeChangeOrderPdf(changed, order),
      handout: await makeHandoutPdf(makeHandout(house, trade)),
    };
    for (const [name, { pdf }] of Object.entries(made)) trees.set(name, readTagTree(putDown(pdf).tags()));
  });

  test.each(sheets)('a sheet of the kind %s are those that were read before they were kept', (kind, file, first) => {
    const lines = sheetFrom(trees.get(file), first).flatMap((tag) => linesOf(tag, 0));
    const text = `${lines.join('\n')}\n`;
    const path = join(folder, `${kind}.tags.txt`);
    if (process.env['RECORD'] !== undefined) {
      mkdirSync(folder, { recursive: true });
      writeFileSync(path, text);
    }
    expect(text).toBe(readFileSync(path, 'utf8'));
    expect(lines.length).toBeGreaterThan(5);
  });
});

test('no tree is kept of a sheet that there is not', () => {
  expect(readdirSync(folder).toSorted()).toEqual(sheets.map(([kind]) => `${kind}.tags.txt`).toSorted());
});

/** What of the document stands from that heading of the first level to the next. */
function sheetFrom(root: Tag | undefined, heading: string): readonly Tag[] {
  const parts = root?.inside[0]?.inside ?? [];
  const from = parts.findIndex((part) => firstHeading(part) === heading);
  if (from < 0) throw new Error(`no sheet begins with ${heading}`);
  const next = parts.findIndex((part, at) => at > from && firstHeading(part) !== undefined);
  return parts.slice(from, next < 0 ? undefined : next);
}

function firstHeading(tag: Tag): string | undefined {
  if (tag.name === 'H1') return textOf(tag);
  for (const inside of tag.inside) {
    const found = firstHeading(inside);
    if (found !== undefined) return found;
  }
  return undefined;
}

const textOf = (tag: Tag): string =>
  (tag.name === '"' ? tag.text : tag.inside.map(textOf).join(' ')).replaceAll(/\s+/gu, ' ').trim();

/** Rows and items that are shown; the others are counted. */
const most = 4;
const longest = 56;

/** A line for each tag, with its words where it holds no more tags; empty groups are left out. */
function linesOf(tag: Tag, depth: number): readonly string[] {
  const inside = tag.inside.filter(({ name, inside: more }) => name !== '"' && (name !== 'Div' || more.length > 0));
  const words = textOf({ ...tag, inside: tag.inside.filter(({ name }) => name === '"') });
  const cut = words.length > longest ? `${words.slice(0, longest)}…` : words;
  const said = [tag.name, tag.scope.toLowerCase(), cut === '' ? '' : `“${cut}”`]
    .filter((part) => part !== '')
    .join(' ');
  const isLong = inside.length > most && ['TBody', 'L', 'TOC'].includes(tag.name);
  return [
    `${'  '.repeat(depth)}${said}`,
    ...(isLong ? inside.slice(0, most) : inside).flatMap((one) => linesOf(one, depth + 1)),
    ...(isLong ? [`${'  '.repeat(depth + 1)}… ${inside.length - most} more`] : []),
  ];
}
