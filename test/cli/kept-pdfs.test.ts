import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keptPdfs } from '../../src/cli/kept-pdfs.js';
import { makeBookPdf, type BookPdf } from '../../src/print/index.js';
import { smallBook } from '../book/small-house.js';

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'bookmatch-kept-'));
});
afterEach(() => vi.unstubAllEnvs());
afterEach(() => rm(dir, { recursive: true, force: true }));

const undrawn = [{ field: 'note', text: 'a glyph' }] as unknown as BookPdf['undrawn'];
const oneHouse = { house: 'one' };
const pdfOf = (text: string): BookPdf => ({ pdf: new TextEncoder().encode(text), undrawn });

test('what was printed is answered as it was, for as long as it would be printed from the same', async () => {
  let made = 0;
  const make = (text: string) => (): Promise<BookPdf> => {
    made += 1;
    return Promise.resolve(pdfOf(text));
  };
  expect(await keptPdfs(dir)('book', oneHouse, make('first'))).toEqual(pdfOf('first'));
  // Another run of the program.
  expect(await keptPdfs(dir)('book', oneHouse, make('not asked for'))).toEqual(pdfOf('first'));
  expect(made).toBe(1);
  expect(await keptPdfs(dir)('handout-tile', oneHouse, make('another'))).toEqual(pdfOf('another'));
  expect(await keptPdfs(dir)('book', { house: 'changed' }, make('second'))).toEqual(pdfOf('second'));
  expect(await keptPdfs(dir)('book', oneHouse, make('third'))).toEqual(pdfOf('third'));
  expect(made).toBe(4);
});

test('what was damaged where it is kept is printed anew', async () => {
  await keptPdfs(dir)('book', oneHouse, () => Promise.resolve(pdfOf('first')));
  const file = join(dir, '.bookmatch', 'printed-book.json');
  const text = await readFile(file, 'utf8');
  await writeFile(file, text.replace('"pdf":"', '"pdf":"AAAA'));
  expect(await keptPdfs(dir)('book', oneHouse, () => Promise.resolve(pdfOf('anew')))).toEqual(pdfOf('anew'));
});

test('what somebody else printed into a house that is handed over is printed anew', async () => {
  vi.stubEnv('XDG_STATE_HOME', join(dir, 'somebody-else'));
  await keptPdfs(dir)('book', oneHouse, () => Promise.resolve(pdfOf('forged')));
  vi.unstubAllEnvs();
  expect(await keptPdfs(dir)('book', oneHouse, () => Promise.resolve(pdfOf('anew')))).toEqual(pdfOf('anew'));
});

test('a book that is kept has the bytes of one that is printed', async () => {
  const book = smallBook();
  const printed = await makeBookPdf(book);
  await keptPdfs(dir)('book', book, () => makeBookPdf(book));
  const kept = await keptPdfs(dir)('book', book, () => Promise.reject(new Error('it is kept')));
  expect(Buffer.compare(kept.pdf, printed.pdf)).toBe(0);
  expect(kept.undrawn).toEqual(printed.undrawn);
});
