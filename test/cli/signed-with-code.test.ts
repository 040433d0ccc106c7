import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { builder, owner, sign } from '../signoff/signed.js';
import { bookmatch, type Ran } from './command-line.js';
import { HouseUnderGit } from './house-under-git.js';
import { bothSigners, faults, nameSigners } from './signed-house.js';

vi.setConfig({ testTimeout: 180_000, hookTimeout: 180_000 });

/** A house whose book and change order are printed with codes. */
const printed = HouseUnderGit.after(async (made) => {
  made.edit('content/house.md', '---\n', '---\nsite: https://house.example\n');
  nameSigners(made.dir, bothSigners);
  made.commit('A site, and signers');
  await made.run('issue --for sign-off');
  made.edit('content/rooms/study.md', 'chosen: pine', 'chosen: oak');
  made.commit('The owner takes oak');
  await made.run('compare issue-1 HEAD --draft --reason "The sample."');
  await made.run('print-change 1');
});
let house: HouseUnderGit;
beforeEach(async () => {
  house = await printed();
});
afterEach(() => house.remove());

async function verify(bytes: Uint8Array): Promise<Ran & { readonly words: string }> {
  const path = join(house.dir, 'given');
  writeFileSync(path, bytes);
  const ran = await bookmatch(['verify', path, '--house', house.dir], { now: new Date('2026-05-04T09:00:00Z') });
  return { ...ran, words: ran.out.replaceAll(path, 'GIVEN') };
}

const book = 'issued/001.pdf';
const change = 'issued/change-001.pdf';

test.each([
  ['a book', book, 'issue: 1 for sign-off'],
  ['a change order', change, 'change order: 1'],
])('%s with codes is signed, and all of it holds', async (_name, path, named) => {
  const once = await sign(readFileSync(join(house.dir, path)), owner, { field: 'owner-signature' });
  const at = new Date('2026-05-03T08:30:00Z');
  const ran = await verify(await sign(once, builder, { field: 'builder-signature', at }));
  expect(faults(ran)).toEqual([]);
  expect([ran.code, ran.said]).toEqual([0, expect.stringContaining(named)]);
});

/** One page as it is drawn. */
function drawn(path: string, page: number): Uint8Array {
  const only = ['-f', String(page), '-l', String(page), '-singlefile'];
  return execFileSync('pdftoppm', ['-r', '150', '-gray', '-png', ...only, join(house.dir, path)], {
    maxBuffer: 1 << 26,
  });
}

test('a picture of a sheet of the book is told, on the cover and after it, and which trades build otherwise', async () => {
  for (const page of [1, 4]) {
    const { code, words } = await verify(drawn(book, page));
    expect([code, words]).toEqual([
      0,
      expect.stringMatching(/^GIVEN, a sheet of the book: issue 1 for sign-off, 20 April 2026, the current one\./u),
    ]);
    expect(words).toContain('The records say otherwise since, for Carpentry');
  }
  await house.run('approve 1 --by "The owner"');
  await house.run('issue --for sign-off');
  const { code, words } = await verify(drawn(book, 4));
  expect([code, words]).toEqual([1, expect.stringContaining('Superseded by issue 2 for sign-off')]);
  expect(words).toContain('What is built there is another for Carpentry.');
});

test('a picture of a change order is told as it is recorded, by what is decided, and where it was drafted anew; so is its digest', async () => {
  const photo = drawn(change, 2);
  const first = await verify(photo);
  expect([first.code, first.words]).toEqual([
    0,
    'GIVEN, a sheet of a change order: change order 1 as it is recorded, proposed on 20 April 2026.\n' +
      'This is told by the digest on it: that nothing else on it was changed is not proven.\n',
  ]);
  const typed = await bookmatch(['verify', digestOn(change), '--house', house.dir]);
  expect([typed.code, typed.out]).toEqual([0, expect.stringContaining('change order 1 as it is recorded, proposed')]);

  await house.run('decline 1 --by "The owner"');
  expect((await verify(photo)).words).toContain('change order 1 as it is recorded, declined on 20 April 2026.');
  expect((await verify(photo)).code).toBe(1);
  house.edit('content/changes/001.md', 'reason: The sample.', 'reason: Another one.');
  const anew = await verify(photo);
  expect([anew.code, anew.words]).toEqual([
    1,
    expect.stringMatching(/number 1, that Small House does not have so: it was drafted anew since/u),
  ]);
});

/** The digest at the foot of a paper. */
function digestOn(path: string): string {
  const text = execFileSync('pdftotext', [join(house.dir, path), '-'], { encoding: 'utf8' });
  return /[0-9A-F]{4}-[0-9A-F]{4}-[0-9A-F]{4}/u.exec(text)?.[0] ?? '';
}
