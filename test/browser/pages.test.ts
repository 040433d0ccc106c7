import { rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { buildDemo, buildHostile } from './built-books.js';
import { brokenLinks, invalidHtml } from './page-checks.js';
import { htmlFiles } from './site-files.js';

/** Every page is read, beside the tests that look at one page of each kind in a browser. */
vi.setConfig({ testTimeout: 300_000, hookTimeout: 300_000 });

describe.each([
  { name: 'the demo house', build: buildDemo },
  { name: 'a house with markup in its records', build: buildHostile },
])('$name', ({ build }) => {
  let book: string;
  let pages: string[];
  beforeAll(async () => {
    book = await build();
    pages = htmlFiles(book);
  });
  afterAll(() => rm(dirname(book), { recursive: true, force: true }));

  test('links only to pages and anchors that are there', () => {
    expect(brokenLinks(book, pages)).toEqual([]);
  });

  test('is valid HTML on every page', async () => {
    expect((await invalidHtml(book, pages)).slice(0, 40)).toEqual([]);
  });
});
