import { dirname, join } from 'node:path/posix';
import { expect, test } from 'vitest';
import { manualTexts } from '../../src/cli/manual.js';
import { manualPages } from '../../src/site/manual.js';

const pages = manualPages(await manualTexts()).map(({ path, render }) => ({ path, html: render((_, text) => text) }));

test('every page of the manual is reached from its first, and no link leads nowhere', () => {
  const paths = new Set(pages.map(({ path }) => path));
  expect(paths.size).toBe(pages.length);
  expect(pages[0]?.path).toBe('index.html');
  for (const { path, html } of pages) {
    const links = [...html.matchAll(/href="([^"#:]+\.html)(?:#([^"]+))?"/gu)];
    expect(links.length, path).toBeGreaterThanOrEqual(pages.length);
    for (const [, to = ''] of links) expect(paths, `${path} → ${to}`).toContain(join(dirname(path), to));
  }
});

test('what stands in angle brackets is text, and comments are left out', () => {
  const room = pages.find(({ path }) => path === 'reference/room.html')?.html ?? '';
  expect(room).toContain('content/rooms/&lt;room&gt;.md');
  expect(room).not.toContain('npm run reference');
  expect(room).toMatch(/aria-label="Table: Opening"/u);
});
