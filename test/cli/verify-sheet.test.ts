import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { shortDigest } from '../../src/base/units/index.js';
import { bookmatch, type Ran } from './command-line.js';
import { HouseUnderGit } from './house-under-git.js';

const room = 'content/rooms/study.md';
let house: HouseUnderGit;

const issued = HouseUnderGit.after(async (made) => {
  await made.run('issue --for sign-off');
  await made.run(`handout carpentry --out ${join(made.dir, 'sheets')}`);
});
beforeEach(async () => {
  house = await issued();
});
afterEach(() => house.remove());

const verify = (...words: readonly string[]): Promise<Ran> => bookmatch(['verify', ...words, '--house', house.dir]);
const sheet = (): string => join(house.dir, 'sheets', 'carpentry.pdf');

const digestOf = (number: number): string =>
  /^digest: ([0-9a-f]{64})$/mu.exec(house.read(`content/issues/00${number}.md`))?.[1] ?? '';

test('a sheet is of the issue that counts, by the digest on it or by its first digits, and by its PDF', async () => {
  const digest = digestOf(1);
  for (const typed of [shortDigest(digest), digest.slice(0, 5), digest]) {
    const { code, out } = await verify(typed);
    expect([code, out.includes('issue 1 for sign-off'), out.includes('the current one')], typed).toEqual([
      0,
      true,
      true,
    ]);
    expect(out).toContain('is not proven');
  }
  const paper = await verify(sheet());
  expect(paper.code).toBe(0);
  expect(paper.out).toContain('issue 1 for sign-off');
});

test('a sheet is superseded, and says whether its trade builds otherwise by the issue that counts', async () => {
  const before = digestOf(1);
  house.edit(room, 'chosen: pine', 'chosen: oak');
  house.commit('Oak');
  expect((await verify(before)).out).toContain('The records say otherwise since, for Carpentry');
  await house.run('issue --for sign-off');
  const typed = await verify(shortDigest(before));
  expect(typed.code).toBe(1);
  expect(typed.out).toContain('Superseded by issue 2 for sign-off');
  expect(typed.out).toContain('What is built there is another for Carpentry.');
  const paper = await verify(sheet());
  expect(paper.code).toBe(1);
  expect(paper.out).toContain('What Carpentry builds is another there.');
  expect(JSON.parse((await verify(before, '--json')).out)).toMatchObject({ issue: 1, current: 2 });
});

test('a digest of no issue, and what is neither a file nor a digest, are told', async () => {
  expect((await verify('1234-5678-9ABC')).code).toBe(1);
  expect((await verify('nothing.pdf')).said).toContain('there is no such file');
  expect((await verify('1234')).said).toContain('there is no such file');
});
