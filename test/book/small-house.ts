import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Book } from '../../src/core/book/index.js';
import type { Problem } from '../../src/base/problem/index.js';
import { composeHouse } from '../small-house/compose-house.js';

const root = join(import.meta.dirname, '..', 'cases', 'small-house');

/** Replaces text in a record (`{ 'content/house.md': [['$100,000', '$90,000']] }`), adds a record (a string), or takes one
 *  away (null). Throws when a text to replace is not there, so that a test cannot pass by missing its mark. */
export type Edits = Readonly<Record<string, readonly (readonly [string, string])[] | string | null>>;

export function smallFiles(edits: Edits = {}): { path: string; text: string }[] {
  const files = new Map(walk(root).map((path) => [relative(root, path), readFileSync(path, 'utf8')]));
  for (const [path, edit] of Object.entries(edits)) {
    if (edit === null) files.delete(path);
    else if (typeof edit === 'string') files.set(path, edit);
    else
      files.set(
        path,
        edit.reduce((text, [from, to]) => replaceOnce(path, text, from, to), files.get(path) ?? ''),
      );
  }
  return [...files].map(([path, text]) => ({ path, text }));
}

/** The small house's Book on a day, edited; every problem fails the test unless `allow` passes it. */
export function smallBook(
  edits: Edits = {},
  on = '2026-04-20',
  allow: (problem: Problem) => boolean = () => false,
): Book {
  return composeHouse(Object.fromEntries(smallFiles(edits).map(({ path, text }) => [path, text])), on, allow);
}

function walk(dir: string): string[] {
  return readdirSync(dir).flatMap((name) => {
    const path = join(dir, name);
    return statSync(path).isDirectory() ? walk(path) : [path];
  });
}

function replaceOnce(path: string, text: string, from: string, to: string): string {
  if (!text.includes(from)) throw new Error(`${path} has no text: ${from}`);
  return text.replace(from, () => to);
}
