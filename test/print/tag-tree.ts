import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Tag } from '../parity/read-tags.js';

export const goldenFolder = join(import.meta.dirname, 'golden');

/** One kind of sheet each: the first heading on it. `RECORD=1 npx vitest run test/print/tag-trees.test.ts test/print/book-pdf.test.ts` writes the trees as
 *  they are now; read the difference before keeping it. */
export const bookSheets = [
  ['summary', 'Where the house stands'],
  ['plan', 'Main level'],
  ['schedule', 'Room finish schedule'],
  ['to-decide', 'To decide on paper'],
  ['sign-off', 'Sign-off'],
] as const;
export const otherSheets = [
  ['change-order', 'Change order 1: Oak in the study'],
  ['handout-card', 'Foreman’s card'],
] as const;

/** The tags of one sheet, a line for each, and those that were read before they were kept. */
export function sheetTags(root: Tag | undefined, kind: string, heading: string): { now: string; kept: string } {
  const lines = sheetFrom(root, heading).flatMap((tag) => linesOf(tag, 0));
  if (lines.length <= 5) throw new Error(`next to nothing stands on ${heading}`);
  const now = `${lines.join('\n')}\n`;
  const path = join(goldenFolder, `${kind}.tags.txt`);
  if (process.env['RECORD'] !== undefined) {
    mkdirSync(goldenFolder, { recursive: true });
    writeFileSync(path, now);
  }
  return { now, kept: readFileSync(path, 'utf8') };
}

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
