import type { Book } from '../../src/core/book/index.js';
import { recordsDigest } from '../../src/disk/load/index.js';
import { packHouse, type PackedHouse } from '../../src/try/index.js';
import { demoBook, demoHouse } from '../demo-house.js';

/** The demo house as its pages carry it on a day, with the Book that it was packed by. */
export async function packedDemo(on: string): Promise<{ readonly book: Book; readonly packed: PackedHouse }> {
  const [book, house] = await Promise.all([demoBook(on), demoHouse()]);
  return { book, packed: packHouse({ ...house, snapshot: recordsDigest(book.sources) }, book) };
}
