import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { study, visitedDesk } from './small-house.js';

const at = visitedDesk();
const { ask, textOf } = at;

it('makes a trade its handout when somebody asks for it, of the records as they are, with no money in it', async () => {
  const trades = (await ask('GET', '/trades.html')).text;
  const [, slug = ''] = /href="handout\/([\w-]+)\/index\.html"/u.exec(trades) ?? [];
  expect(slug).not.toBe('');
  const before = await textOf();
  const page = `/handout/${slug}/rooms/study.html`;
  const first = await ask('GET', page);
  expect([first.status, first.headers['content-type']]).toEqual([200, 'text/html; charset=utf-8']);
  expect(first.text).not.toContain('$');
  expect((await ask('GET', `/handout/${slug}/assets/style.css`)).status).toBe(200);
  await writeFile(join(at.dir, study), before.replace('name: Study', 'name: Den'));
  expect((await ask('GET', page)).text).toContain('Den');
  await writeFile(join(at.dir, study), before);
  const sheet = await ask('GET', `/handout/${slug}/${slug}.pdf`);
  expect([sheet.status, sheet.headers['content-type'], sheet.text.slice(0, 5)]).toEqual([
    200,
    'application/pdf',
    '%PDF-',
  ]);
});

it('prints the book', async () => {
  const { status, text } = await ask('GET', '/book.pdf');
  expect([status, text.slice(0, 5)]).toEqual([200, '%PDF-']);
});

it('makes nothing of a trade or a change order that is not there, and says why where a handout may not be made', async () => {
  for (const path of ['/handout/baker/index.html', '/handout/../content/house.md', '/change-orders/009.pdf'])
    expect((await ask('GET', path)).status, path).toBeGreaterThanOrEqual(400);
  const before = await textOf();
  await writeFile(join(at.dir, study), before.replace('name: Study', 'name: The $4,000 study'));
  const [, slug = ''] = /href="handout\/([\w-]+)\//u.exec((await ask('GET', '/trades.html')).text) ?? [];
  const { status, text } = await ask('GET', `/handout/${slug}/index.html`);
  expect(status).toBe(409);
  expect(text).toContain('name-money');
  await writeFile(join(at.dir, study), before);
});
