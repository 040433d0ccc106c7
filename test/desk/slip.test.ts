import { execFileSync } from 'node:child_process';
import { mkdir, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { render } from 'preact-render-to-string';
import { h } from 'preact';
import { expect, it } from 'vitest';
import { openDesk } from '../../src/cli/desk.js';
import { plainConsole } from '../../src/cli/plain-console.js';
import { Linked } from '../../src/desk/linked.js';
import { paperWords } from '../../src/desk/papers.js';
import { personNamed } from '../../src/signoff/index.js';
import { encodeSlip } from '../../src/slip/index.js';
import { makeConsole } from '../cli/make-console.js';
import { study, visitedDesk } from './small-house.js';
import { plain, visit } from './visit.js';

const at = visitedDesk();
const { ask, formOf, send, textOf } = at;

const slip = `Hello\n\n${encodeSlip({
  house: '1',
  snapshot: '',
  by: 'owner',
  on: '2026-04-18',
  choices: [
    { selection: 'study/floor/floor', was: 'pine', now: 'oak' },
    { selection: 'study/ceiling-board/ceiling', was: null, now: 'fir-tg-1x6' },
  ],
})}\n`;

it('takes a slip in whole, once it was held against the records', async () => {
  const before = await textOf();
  const held = await send(await formOf('/desk/slip.html', 'slip'), { slip, do: 'hold' });
  expect(held.status).toBe(200);
  expect(plain(held.text)).toContain('It can be taken in. Nothing is written yet.');
  expect(plain(held.text)).toContain('as pasted: 2 choices by The owner, 18 April 2026');
  expect(held.text).toContain('<button name="do" value="all">');
  // What it comes to is shown as the desk shows any difference.
  const [said = ''] = held.text.split('<label for="slip">');
  expect(said).toMatch(/class="desk-difference">.*<table/su);
  expect(plain(said)).not.toMatch(/ {6}/u);
  expect(await textOf()).toBe(before);
  await send(await formOf('/desk/slip.html', 'slip'), { slip, do: 'all' });
  expect(await textOf()).toContain('chosen: oak');
  expect(await textOf()).toContain('chosen: fir-tg-1x6');
  const { text } = await ask('GET', '/desk/slip.html');
  expect(text).toMatch(/is-done.*class="desk-difference">.*<table/su);
  expect(plain(text)).not.toMatch(/git commit|(?<!-)--[a-z]|\/tmp\//u);
  await writeFile(join(at.dir, study), before);
});

it('says what of a slip is in conflict, and takes the rest where that is asked for', async () => {
  const before = await textOf();
  const chosen = before.replace(/(category: ceiling-board\n)/u, '$1    chosen: pine-shiplap-1x8\n');
  expect(chosen).not.toBe(before);
  await writeFile(join(at.dir, study), chosen);
  const held = await send(await formOf('/desk/slip.html', 'slip'), { slip, do: 'hold' });
  expect(held.status).toBe(200);
  expect(plain(held.text)).toContain('Not all of it can be taken in. Nothing is written yet.');
  expect(plain(held.text)).toContain('These cannot be taken');
  expect(held.text).toContain('<button name="do" value="rest">');
  expect(held.text).not.toContain('value="all"');
  expect(plain(held.text)).not.toContain('--except');
  expect((await send(await formOf('/desk/slip.html', 'slip'), { slip, do: 'all' })).status).toBe(409);
  expect(await textOf()).toBe(chosen);
  await send(await formOf('/desk/slip.html', 'slip'), { slip, do: 'rest' });
  const after = await textOf();
  expect(after).toContain('chosen: oak');
  expect(after).toContain('chosen: pine-shiplap-1x8');
  expect(after).not.toContain('chosen: fir-tg-1x6');
  await writeFile(join(at.dir, study), before);
});

it('offers nothing to write of what is no slip', async () => {
  const { status, text } = await send(await formOf('/desk/slip.html', 'slip'), { slip: 'no slip', do: 'hold' });
  expect(status).toBe(409);
  expect(text).not.toMatch(/value="(?:all|rest)"/u);
});

it('says of a text that was saved with errors that it has them', async () => {
  const before = await textOf();
  const form = await formOf(`/desk/record.html?path=${study}`, 'save');
  const { headers } = await send(form, { text: before.replace(/^level: .*$/mu, 'level: nowhere') });
  const { text } = await ask('GET', String(headers['location']));
  expect(plain(text)).toContain('Saved, with 1 error. The book shows the records as they were before.');
  expect(text.split('class="desk-fix"').length, 'the error stands there once').toBe(2);
  await writeFile(join(at.dir, study), before);
});

it('runs commands on the day of the desk, and for nobody who types', async () => {
  const seen: unknown[] = [];
  const console = plainConsole(
    makeConsole({ out: () => undefined, error: () => undefined, today: () => '2031-01-01' }),
  );
  const desk = await openDesk(
    { dir: at.dir, port: 0, today: () => '2026-04-21' },
    (words, { today, takesCommands, out }) => {
      seen.push([words[0], today(), takesCommands]);
      out(`${at.dir}/content/rooms/study.md\n`);
      return Promise.resolve(0);
    },
    { ...console, tell: () => undefined },
  );
  const own = await visit(desk.address);
  const { text } = await own.send(await own.formOf('/desk/slip.html', 'slip'), { slip, do: 'hold' });
  await desk.close();
  expect(seen).toEqual([['choose', '2026-04-21', false]]);
  expect(plain(text)).toContain('Write these choicescontent/rooms/study.md');
});

it('shows papers that were issued, and nothing else of their folder', async () => {
  await mkdir(join(at.dir, 'issued'), { recursive: true });
  await writeFile(join(at.dir, 'issued/001.pdf'), '%PDF-1.7\n');
  await writeFile(join(at.dir, 'issued/001.json'), '{}');
  const paper = await ask('GET', '/issued/001.pdf');
  expect([paper.status, paper.headers['content-type'], paper.text]).toEqual([200, 'application/pdf', '%PDF-1.7\n']);
  for (const path of ['/issued/001.json', '/issued/002.pdf', '/content/issued/001.pdf'])
    expect((await ask('GET', path)).status, path).toBe(404);
  expect((await ask('GET', '/desk/agree.html')).text).toContain('<a href="../issued/001.pdf">Issue 1</a>');
  expect(paperWords('issued/change-004-signed-owner-builder.pdf')).toBe('Change order 4, signed by owner and builder');
});

it('has what choices are tried with, and the pages for it', async () => {
  for (const path of ['/try.html', '/slips.html', '/assets/try-start.js'])
    expect((await ask('GET', path)).status, path).toBe(200);
  const data = await ask('GET', '/assets/try-data.js');
  expect(data.text).toContain('bookmatch/house-to-try/1');
  const script = await ask('GET', '/assets/try.js');
  expect([script.status, script.headers['content-type']]).toEqual([200, 'text/javascript; charset=utf-8']);
  expect(script.text.length).toBeGreaterThan(10_000);
});

it.each([
  ['change order 3 waits: bookmatch approve 3 --by "…"', 'change order 3 waits: ', '', '/desk/agree.html'],
  [
    'draft it with bookmatch compare issue-2 HEAD --draft --reason "…"; or',
    'draft it with ',
    '; or',
    '/desk/agree.html',
  ],
  ['content/house.md:3: wrong', '', ':3: wrong', '/desk/record.html?path=content%2Fhouse.md'],
  ['issued/change-001.pdf  to sign', '', '  to sign', '/issued/change-001.pdf'],
])('leads from %s to what does it', (words, before, after, href) => {
  const html = render(h(Linked, { words }));
  expect(html.replaceAll('&quot;', '"')).toMatch(
    new RegExp(`^${before}<a href="${href.replaceAll('?', '\\?')}">[^<]+</a>${after}$`, 'u'),
  );
});

it('leaves a command that the desk has no form for as it is', () => {
  expect(render(h(Linked, { words: 'see bookmatch verify x.pdf' }))).toBe('see bookmatch verify x.pdf');
});

it('asks which of two owners is meant', () => {
  const [one, other] = ['A. Owner', 'B. Owner'].map((name) => ({ name, role: 'owner' }));
  const people = [one!, other!];
  expect(personNamed(people, 'owner')).toEqual({
    ok: false,
    why: "A. Owner and B. Owner are each 'owner': say which of them",
  });
  expect(personNamed(people, 'b. owner')).toEqual({ ok: true, name: 'B. Owner' });
  expect(personNamed([one!, { ...one!, role: 'builder' }], 'A. Owner')).toEqual({ ok: true, name: 'A. Owner' });
});

it('stands still after a record was added', async () => {
  const { text: added } = await ask(
    'GET',
    String(
      (
        await send(await formOf('/desk/add.html', 'new-trade'), {
          name: 'Glazing',
          contact: 'shop',
        })
      ).headers['location'],
    ),
  );
  const number = /data-standing="(\d+)"/u.exec(added)?.[1];
  expect(number).toBeDefined();
  for (const path of ['/desk/index.html', '/rooms/study.html', '/desk/add.html'])
    expect((await ask('GET', path)).text, path).toContain(`data-standing="${number}"`);
  await rm(join(at.dir, 'content/trades/glazing.md'));
});

it('gives out no file that only has the name of a paper', async () => {
  await writeFile(join(at.dir, 'owner.p12'), 'a key');
  await symlink('../owner.p12', join(at.dir, 'issued/cert.pdf'));
  await writeFile(join(at.dir, 'issued/words.pdf'), 'no PDF');
  for (const path of ['/issued/cert.pdf', '/issued/words.pdf']) expect((await ask('GET', path)).status, path).toBe(404);
});

it('takes an amount as it is typed into a form', async () => {
  const form = await formOf('/desk/add.html', 'new-allowance');
  const { headers } = await send(form, { name: 'Glass', amount: '5000', covers: 'material', categories: 'floor' });
  const { text } = await ask('GET', String(headers['location']));
  expect(plain(text)).toContain('allowance glass');
  expect(await textOf('content/house.md')).toMatch(/id: glass[\s\S]*\$5,000/u);
});

it('records the version of what a slip handed over so that git finds it by the slip', async () => {
  const git = (...words: readonly string[]): string => execFileSync('git', words, { cwd: at.dir, encoding: 'utf8' });
  const before = await textOf();
  git('init', '--quiet');
  git('config', 'user.name', 'Project manager');
  git('config', 'user.email', 'pm@example.org');
  git('add', 'content');
  git('commit', '--quiet', '--message', 'As it was');
  await send(await formOf('/desk/slip.html', 'slip'), { slip, do: 'all' });
  await send(await formOf('/desk/agree.html', 'version'), { sentence: 'The owner chose' });
  const [, digest = ''] = /slip: (\S+)/u.exec(await textOf()) ?? [];
  expect(digest).not.toBe('');
  expect(git('log', '--format=%B', '--grep', 'Choice-slip').trim()).toBe(`The owner chose\n\nChoice-slip: ${digest}`);
  await writeFile(join(at.dir, study), `${await textOf()}\nA word more.\n`);
  await send(await formOf('/desk/agree.html', 'version'), { sentence: 'A word more' });
  expect(git('log', '-1', '--format=%B').trim()).toBe('A word more');
  await rm(join(at.dir, '.git'), { recursive: true });
  await writeFile(join(at.dir, study), before);
});
