import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { HouseUnderGit } from '../cli/house-under-git.js';

const order = 'content/changes/001.md';
const room = 'content/rooms/study.md';

let house: HouseUnderGit;
beforeAll(async () => {
  house = new HouseUnderGit();
  await house.run('issue --for pricing');
  house.edit(room, 'chosen: pine', 'chosen: oak');
  house.commit('The owner takes oak');
  await house.run('compare issue-1 HEAD --draft --reason "The sample looked better."');
  house.commit('Proposed');
});
afterAll(() => house.remove());

const folder = (): string => join(house.dir, '.bookmatch');
const entries = (): string[] => {
  const dir = join(folder(), 'compared');
  return readdirSync(dir).map((name) => join(dir, name));
};
const draftEntry = (): string => entries().find((path) => readFileSync(path, 'utf8').includes('"money"')) ?? '';

test('check says the same with what it kept, without it, and with what is damaged', async () => {
  const first = await house.run('check');
  expect(first.code).toBe(0);
  expect(entries()).toHaveLength(2);
  expect(house.git('status', '--porcelain')).toBe('');
  expect(await house.run('check')).toEqual(first);
  for (const path of entries()) {
    const whole = readFileSync(path, 'utf8');
    for (const damaged of ['', whole.slice(0, -3), whole.replace(/\d/u, 'x'), '{}', `${whole} `]) {
      writeFileSync(path, damaged);
      expect(await house.run('check')).toEqual(first);
      expect(readFileSync(path, 'utf8')).toBe(whole);
    }
  }
  rmSync(folder(), { recursive: true });
  expect(await house.run('check')).toEqual(first);
  // A file in the place of the folder: nothing can be kept.
  rmSync(folder(), { recursive: true });
  writeFileSync(folder(), 'not a folder');
  expect(await house.run('check')).toEqual(first);
  rmSync(folder(), { recursive: true });
});

test('what was kept is read in place of the history', async () => {
  const said = await house.run('check');
  // Without this text in git the newer version cannot be composed.
  const blob = house.git('rev-parse', `HEAD:${room}`).trim();
  rmSync(join(house.dir, '.git/objects', blob.slice(0, 2), blob.slice(2)));
  expect(await house.run('check')).toEqual(said);
  const kept = readFileSync(draftEntry());
  rmSync(draftEntry());
  expect((await house.run('check')).error).toContain('change-unchecked');
  house.git('hash-object', '-w', room);
  expect(await house.run('check')).toEqual(said);
  expect(readFileSync(draftEntry())).toEqual(kept);
});

test('a line that is edited disagrees with what was kept as with what is computed', async () => {
  await house.run('check');
  const record = house.read(order);
  house.edit(order, 'what: Floor', 'what: The floor');
  const kept = await house.run('check');
  rmSync(folder(), { recursive: true });
  expect(await house.run('check')).toEqual(kept);
  expect(kept).toMatchObject({ code: 1 });
  expect(kept.error).toContain('change-disagrees');
  writeFileSync(join(house.dir, order), record);
});

test('a snapshot that is lost is told although the pair was kept', async () => {
  await house.run('check');
  const path = join(house.dir, 'issued/001.json');
  const bytes = readFileSync(path);
  rmSync(path);
  const lost = await house.run('check');
  expect(lost.error).toContain('change-unchecked');
  mkdirSync(join(house.dir, 'issued'), { recursive: true });
  writeFileSync(path, bytes);
});
