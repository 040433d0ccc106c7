import { existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import type * as Disk from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { commitTogether } from '../../src/cli/commit-together.js';
import { killWhen, until } from '../store/killed-at.js';
import type { Console } from '../../src/cli/console.js';
import { finishInterrupted } from '../../src/cli/finish-begun.js';
import { HouseUnderGit } from './house-under-git.js';
import { makeConsole } from './make-console.js';

vi.mock('node:fs/promises', async (original) => {
  const { mortalDisk } = await import('../store/killed-at.js');
  return mortalDisk(await original<typeof Disk>());
});

let house: HouseUnderGit;
beforeEach(() => {
  house = new HouseUnderGit();
});
afterEach(() => house.remove());

/** A program that was killed holds its place no longer; here it lives on. */
function letGo(): void {
  const own = join(house.dir, '.bookmatch');
  const names = existsSync(own) ? readdirSync(own) : [];
  for (const name of names.filter((one) => one.startsWith('writing'))) rmSync(join(own, name));
}

const silent: Console = {
  ...makeConsole({ out: () => undefined, error: () => undefined }),
  tell: () => undefined,
  problems: () => undefined,
};
const room = 'content/rooms/study.md';

test('what is written and committed together is so, or not at all, after a kill at one operation in three and one more run', async () => {
  // Each operation by itself is tried without git, in test/store.
  for (let at = 2; ; at += 3) {
    const head = house.git('rev-parse', 'HEAD');
    const text = `${house.read(room)}\nA remark ${at}.\n`;
    const files = new Map([
      [`issued/${at}.json`, '{}'],
      [room, text],
    ]);
    const how = await until(at, 'killed', () => commitTogether(house.dir, files, `Remark ${at}`, '', silent));
    letGo();
    const said: string[] = [];
    await finishInterrupted({ house: house.dir }, { error: (words) => said.push(words) });
    const isIn = house.read(room) === text;
    expect({ at, isIn: existsSync(join(house.dir, `issued/${at}.json`)) }).toEqual({ at, isIn });
    expect(house.git('status', '--porcelain', 'content', 'issued')).toBe('');
    expect(house.git('log', '-1', '--format=%s').trim() === `Remark ${at}`).toBe(isIn);
    if (!isIn) expect(house.git('rev-parse', 'HEAD')).toBe(head);
    expect(said.length).toBeLessThanOrEqual(1);
    if (how === 'done') break;
  }
  expect(readdirSync(join(house.dir, '.bookmatch')).filter((name) => /^(new-|begun|writing)/u.test(name))).toEqual([]);
});

test('an issue that was cut off while its files took their places is finished by the next run, which says so', async () => {
  const end = await killWhen(
    (name, path) => name === 'rename' && path.endsWith('/issued/001.pdf'),
    () => house.run('issue --for pricing'),
  );
  expect(end).toBe('killed');
  letGo();
  const said = await house.run('check');
  expect(said.error).toContain(
    'An earlier run was interrupted, and what it had begun is now finished: Issue 1 for pricing.\n',
  );
  expect(house.git('log', '-1', '--format=%s').trim()).toBe('Issue 1 for pricing');
  expect(house.git('status', '--porcelain', 'content', 'issued')).toBe('');
});

test('what a house brought along is not committed in the name of who opens it', async () => {
  const head = house.git('rev-parse', 'HEAD');
  const stage = '.bookmatch/new-999999-01234567-0123456789ab';
  const moves = [{ from: `${stage}/0`, to: 'content/rooms/den.md' }];
  const note = { what: 'Change order 1 approved', moves, commit: { paths: ['content'], message: 'Approved' } };
  mkdirSync(join(house.dir, stage), { recursive: true });
  house.write(`${stage}/0`, house.read(room).replace('name: Study', 'name: Den'));
  house.write('.bookmatch/begun.json', JSON.stringify({ ...note, code: '0'.repeat(64) }));
  const said = await house.run('check');
  expect(said.error).toContain(
    'An earlier run was interrupted. What it had made is now in its place: content/rooms/den.md. ' +
      'Nothing shows that it was you who ran it: look at that, and commit it yourself.\n',
  );
  expect(said.error).not.toContain('approved');
  expect(house.git('rev-parse', 'HEAD')).toBe(head);
});

const order = 'content/changes/001.md';

const proposed = HouseUnderGit.after(async (one) => {
  one.edit(room, 'chosen: pine', 'chosen: oak');
  one.commit('The owner takes oak');
  await one.run('compare HEAD~1 HEAD --draft --reason "The sample looked better."');
  one.commit('Proposed');
  await one.run('print-change 1');
});

test.each([
  ['approve 1 --by owner', 'Change order 1 approved', 1],
  ['decline 1 --by owner', 'Change order 1 declined', 5],
  ['void 1 --by owner --why Wrong', 'Change order 1 voided', 5],
])('%s is done with its commit, or not at all, whenever it is killed, and says so', async (line, words, step) => {
  const start = await proposed();
  const before = { record: start.read(order), head: start.git('rev-parse', 'HEAD') };
  start.remove();
  const ends = new Set<string>();
  for (let at = 1; ; at += step) {
    house.remove();
    house = await proposed();
    const how = await until(at, 'killed', () => house.run(line));
    letGo();
    const said: string[] = [];
    await finishInterrupted({ house: house.dir }, { error: (text) => said.push(text) });
    const isDone = house.read(order) !== before.record;
    // With it goes the paper that was printed to be signed.
    const changed = isDone ? `${order}\nissued/change-001.pdf\n` : '';
    expect({ at, changed: house.git('diff', '--name-only', before.head.trim(), 'HEAD') }).toEqual({ at, changed });
    expect(house.git('log', '-1', '--format=%s').trim()).toBe(isDone ? words : 'Proposed');
    expect(house.git('status', '--porcelain', 'content')).toBe('');
    expect(said.length).toBeLessThanOrEqual(1);
    if (isDone && said.length === 1) expect(said[0]).toContain(`is now finished: ${words}.\n`);
    ends.add(`${isDone ? 'done' : 'not done'}, ${said.length} said`);
    const left = existsSync(join(house.dir, '.bookmatch')) ? readdirSync(join(house.dir, '.bookmatch')) : [];
    expect(left.filter((name) => /^(new-|begun|writing)/u.test(name))).toEqual([]);
    expect(readdirSync(join(house.dir, 'content/changes'))).toEqual(['001.md']);
    if (how === 'done') break;
  }
  if (step === 1)
    expect([...ends].sort()).toEqual(['done, 0 said', 'done, 1 said', 'not done, 0 said', 'not done, 1 said']);
});

test('a handout that was cut off while it took the place of an older one is finished by the next command that writes there', async () => {
  const out = join(house.dir, 'for the carpenter');
  const line = `handout carpentry --out "${out}"`;
  expect(await house.run(line)).toMatchObject({ code: 0 });
  rmSync(join(out, 'index.html'));
  const end = await killWhen(
    (name, path) => name === 'rename' && path === out,
    () => house.run(line),
  );
  expect([end, existsSync(out)]).toEqual(['killed', false]);
  const said = await house.run(`handout nobody --out "${out}"`);
  expect(said).toMatchObject({ code: 2 });
  expect(said.error).toContain(
    'An earlier run was interrupted, and what it had begun is now finished: HOUSE/for the carpenter.\n',
  );
  expect(existsSync(join(out, 'index.html'))).toBe(true);
  expect(readdirSync(house.dir).filter((name) => /\.(?:new|old)$/u.test(name))).toEqual([]);
});
