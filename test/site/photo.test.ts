import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { readPhoto } from '../../src/photo/index.js';
import { writeSite } from '../../src/site/index.js';
import { jpeg } from '../photo/samples.js';
import { fixtureBook } from './fixture.js';

let out: string;
beforeAll(async () => {
  out = await mkdtemp(join(tmpdir(), 'bookmatch-photo-'));
});
afterAll(() => rm(out, { recursive: true, force: true }));

const photo = { file: 'first-1.jpg', shows: 'Boards & a "knot"', width: 12, height: 8 };
const book: Book = { ...fixtureBook, options: fixtureBook.options.map((option) => ({ ...option, photo })) };
const [first] = book.options;
const page = `options/${first?.id ?? ''}.html`;
const pageOf = (): Promise<string> => readFile(join(out, 'book', page), 'utf8');

it('lies beside the pages that show it, with its size and what it shows; one that may not be shown is left out', async () => {
  const taken = readPhoto(jpeg);
  if (!taken.ok || !first) throw new Error('no photograph');
  await writeSite(book, out, { photos: new Map([[first.id, taken.value]]) });
  const src = `photos/${first.category}/first-1.jpg`;
  expect(await pageOf()).toContain(
    `src="../../${src}" alt="Boards &amp; a &quot;knot&quot;" width="12" height="8" loading="lazy"`,
  );
  expect(new Uint8Array(await readFile(join(out, 'book', src)))).toEqual(jpeg);
  await writeSite(book, out, { photos: new Map() });
  expect(await pageOf()).not.toContain('<figure class="photo');
});
