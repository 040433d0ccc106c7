import { join } from 'node:path';
import { printProblems } from '../src/base/problem/index.js';
import { keepBy, type IsoDate } from '../src/base/units/index.js';
import type { Book } from '../src/core/book/index.js';
import type { Source } from '../src/core/model/index.js';
import { bookOf, openHouse, type ComposedBook, type LoadedHouse } from '../src/disk/load/index.js';

/** The demo house as it lies in this repository, opened once for all test files that a worker runs. They look at what is made of
 *  it, and change copies. */
const open = openHouse(join(import.meta.dirname, '..'));

/** The demo house's Book on a day, with the problems of its records. */
export const loadDemo = keepBy(
  (on: IsoDate) => on,
  (on) => bookOf(open, on),
);

export async function demoBook(on: IsoDate): Promise<Book> {
  const { book, problems } = await loadDemo(on);
  if (!book) throw new Error(`the demo house has errors:\n${printProblems(problems, { color: false, outcome: '' })}`);
  return book;
}

/** The demo house's records, read and measured. */
export async function demoHouse(): Promise<NonNullable<LoadedHouse['house']>> {
  const { house, problems } = await open.current();
  if (!house) throw new Error(`the demo house has errors:\n${printProblems(problems, { color: false, outcome: '' })}`);
  return house;
}

/** The Book of records of the demo house of which some were edited. */
export function demoOf(sources: readonly Source[], on: IsoDate): ComposedBook {
  return open.compose(open.read(sources), on);
}
