import { execFileSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { loadBook } from '../../src/disk/load/index.js';
import { HouseUnderGit } from './house-under-git.js';

const room = 'content/rooms/study.md';
const chooseBoards = [
  'considering: [pine-shiplap-1x8, fir-tg-1x6]',
  'considering: [pine-shiplap-1x8, fir-tg-1x6]\n    chosen: fir-tg-1x6',
] as const;
/** What both signatures of an issue look like once accepted. */
const signatures = `signatures:
  - { role: owner, name: The owner, on: 2026-04-21, how: hand, file: issued/001-signed.pdf, digest: ${'a'.repeat(64)} }
  - { role: builder, name: The builder, on: 2026-04-21, how: hand, file: issued/001-signed.pdf, digest: ${'a'.repeat(64)} }
---`;

let house: HouseUnderGit;
beforeEach(() => {
  house = new HouseUnderGit();
});
afterEach(() => house.remove());

describe('bookmatch issue', () => {
  test('keeps record, snapshot and PDF under git, and each proves the other', async () => {
    const head = house.git('rev-parse', 'HEAD').trim();
    const said = await house.run('issue --for pricing');
    expect(said).toMatchObject({ code: 0, error: '' });
    const record = house.read('content/issues/001.md');
    const digest = /^digest: ([0-9a-f]{64})$/m.exec(record)?.[1] ?? '';
    expect(record).toContain(`commit: ${head}\n`);
    // The system's own program is the witness, not ours.
    const sha = (file: string): string => execFileSync('sha256sum', [file], { encoding: 'utf8' }).slice(0, 64);
    expect(sha(join(house.dir, 'issued/001.json'))).toBe(digest);
    execFileSync('pdfdetach', ['-save', '1', '-o', join(house.dir, 'out.json'), join(house.dir, 'issued/001.pdf')]);
    expect(sha(join(house.dir, 'out.json'))).toBe(digest);
    const short = digest.slice(0, 12).toUpperCase().match(/.{4}/g)?.join('-') ?? '';
    expect(said.out).toContain(`Issue 1 for pricing, 20 April 2026, digest ${short}`);
    const text = execFileSync('pdftotext', ['-layout', join(house.dir, 'issued/001.pdf'), '-'], { encoding: 'utf8' });
    const pages = text.split('\f').slice(1, -1);
    expect(pages.length).toBeGreaterThan(3);
    for (const page of pages) expect(page).toMatch(new RegExp(`Issue 1, pricing +${short}`));
    expect(house.git('log', '--format=%s').split('\n')[0]).toBe('Issue 1 for pricing');
    expect(house.git('show', '--name-only', '--format=').trim().split('\n').sort()).toEqual([
      'content/issues/001.md',
      'issued/001.json',
      'issued/001.pdf',
    ]);
  });

  test('numbers go on, and the next snapshot holds the record of the one before', async () => {
    await house.run('issue --for pricing');
    expect((await house.run('issue --for sign-off')).out).toContain('Issue 2 for sign-off');
    const book = JSON.parse(house.read('issued/002.json')) as Book;
    expect(book.issues.map(({ number, purpose }) => [number, purpose])).toEqual([[1, 'pricing']]);
  });

  test('refuses what is not committed, and says what', async () => {
    house.edit(room, ...chooseBoards);
    const said = await house.run('issue --for pricing');
    expect(said).toMatchObject({ code: 1, out: '' });
    expect(said.error).toContain(room);
    expect(house.git('log', '--format=%s').trim()).toBe('Records as of the contract');
  });

  test('refuses records with errors', async () => {
    house.edit(room, 'chosen: pine', 'chosen: pin');
    house.commit('A slip');
    const said = await house.run('issue --for pricing');
    expect(said.code).toBe(1);
    expect(said.error).toContain("Did you mean 'pine'?".replace('Did', 'did'));
  });

  test('construction waits for choices that are due and for change orders', async () => {
    const said = await house.run('issue --for construction', '2026-08-20');
    expect(said.code).toBe(1);
    expect(said.error).toMatch(/study\.md:\d+: 101 Study, Ceiling: ceiling-board is open and was to be decided by/);
    expect(said.error).toMatch(/of change is not covered by an approved change order/);
  });

  test('wrong usage: no purpose, an unknown one, no git', async () => {
    expect((await house.run('issue')).code).toBe(2);
    expect((await house.run('issue --for fun')).error).toMatch(/pricing, sign-off, construction/);
    rmSync(join(house.dir, '.git'), { recursive: true });
    expect(await house.run('issue --for pricing')).toMatchObject({ code: 2, out: '' });
  });
});

describe('what an issue proves later', () => {
  test('a signed issue marks what is signed and what changed since', async () => {
    await house.run('issue --for sign-off');
    house.edit('content/issues/001.md', '---\nIssued', `${signatures}\nIssued`);
    const signed = (await loadBook(house.dir, '2026-05-01')).book;
    const floor = (book = signed) => book?.selections.find(({ category }) => category === 'floor')?.signed;
    expect(floor()).toEqual({ issue: 1, state: 'signed', what: [] });
    expect(signed?.selections.find(({ state }) => state === 'open')?.signed?.state).toBe('new');
    expect(signed?.rooms[0]?.signed).toEqual({ issue: 1, state: 'signed', what: [] });
    house.edit(room, 'chosen: pine', 'chosen: oak');
    const changed = (await loadBook(house.dir, '2026-05-01')).book;
    expect(floor(changed)).toEqual({ issue: 1, state: 'changed', what: ['choice'] });
    expect(changed?.rooms[0]?.signed).toMatchObject({ state: 'changed', what: ['Floor'] });
  });

  test('compare tells all that changed since in one list, with what to tell and what to initial again', async () => {
    await house.run('issue --for sign-off');
    house.edit('content/issues/001.md', '---\nIssued', `${signatures}\nIssued`);
    house.edit(room, 'chosen: pine', 'chosen: oak');
    const { out } = await house.run('compare issue-1');
    expect(out).toContain('Since you signed, 21 April 2026');
    expect(out).toMatch(/Was +Now +Money +Trade to tell +Page to initial again/);
    expect(out).toMatch(/101 +Study +Floor, floor +Pine strip +Oak strip +\+\$882\.00 .*Carpentry +101 Study/);
    expect(out).toMatch(/Difference +\+\$882\.00/);
    expect((await house.run('compare HEAD')).out).toContain('Changes to agree on');
  });

  test('a share of a pack that another room opens is no change in a room that was signed', async () => {
    const den = `---\nname: Den\nnumber: "102"\nlevel: main\nuse: study\nsize: 9'-0" x 9'-0"\nceiling: flat 9'-0"\nopenings: []\nselections:\n  - at: floor\n    category: floor\n    standard: oak\n    considering: [oak, pine]\n    chosen: pine\n---\n`;
    writeFileSync(join(house.dir, 'content/rooms/den.md'), den);
    house.commit('A den');
    await house.run('issue --for sign-off');
    house.edit('content/issues/001.md', '---\nIssued', `${signatures}\nIssued`);
    const before = (await loadBook(house.dir, '2026-05-01')).book;
    house.edit('content/rooms/den.md', 'chosen: pine', 'chosen: oak');
    const after = (await loadBook(house.dir, '2026-05-01')).book;
    const study = (book = after) => book?.rooms.find(({ slug }) => slug === 'study');
    // The study's share of whole cartons moved, so its own figure did.
    expect(study(after)?.change).not.toBe(study(before)?.change);
    expect(study()?.signed).toEqual({ issue: 1, state: 'signed', what: [] });
    expect(after?.rooms.find(({ slug }) => slug === 'den')?.signed?.state).toBe('changed');
    // A supplier's price is another thing.
    house.edit('content/options/floor/pine.md', 'material: $4.00', 'material: $5.00');
    expect(study((await loadBook(house.dir, '2026-05-01')).book)?.signed?.state).toBe('changed');
  });

  test('one signature of two is not a signed issue', async () => {
    await house.run('issue --for sign-off');
    house.edit('content/issues/001.md', '---\nIssued', `${signatures.replace(/.*builder.*\n/, '')}\nIssued`);
    expect((await loadBook(house.dir, '2026-05-01')).book?.rooms[0]?.signed).toBeUndefined();
  });

  test('compare reads an issue from its snapshot, even when its commit is gone', async () => {
    await house.run('issue --for sign-off');
    house.edit(
      'content/issues/001.md',
      /^commit: .*$/m.exec(house.read('content/issues/001.md'))?.[0] ?? '',
      `commit: ${'ab'.repeat(20)}`,
    );
    house.edit(room, ...chooseBoards);
    expect((await house.run('compare issue-1')).out).toContain(
      'Ceiling, ceiling board: open → Fir tongue and groove 1x6',
    );
    expect((await house.run('compare issue-2')).error).toContain("no version 'issue-2'");
  });

  test('a snapshot that was altered or lost is told, and marks nothing', async () => {
    await house.run('issue --for sign-off');
    const path = join(house.dir, 'issued/001.json');
    writeFileSync(path, house.read('issued/001.json').replace('"Study"', '"Studio"'));
    const altered = await loadBook(house.dir, '2026-05-01');
    expect(altered.since).toBeUndefined();
    expect(altered.problems.map(({ code, severity }) => [code, severity])).toEqual([['snapshot-missing', 'warning']]);
    expect(altered.problems[0]?.message).toContain('is not what issue 1 issued');
    rmSync(path);
    expect((await loadBook(house.dir, '2026-05-01')).problems[0]?.message).toContain('is not in the house folder');
  });
});
