import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import type * as Disk from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { oneAtATime } from '../../src/disk/store/index.js';
import { killedAtWork } from './killed-at-work.js';

/** A disk that takes its time, for each operation another, always the same. */
vi.mock('node:fs/promises', async (original) => {
  const disk = await original<typeof Disk>();
  let seed = 7;
  const slowly = async (): Promise<void> => {
    // A linear congruential generator, from memory.
    seed = (Math.imul(seed, 1_103_515_245) + 12_345) & 0x7fffffff;
    await new Promise((resolve) => setTimeout(resolve, (seed >> 16) % 8));
  };
  const slow =
    (work: (...given: never[]) => Promise<unknown>) =>
    async (...given: never[]): Promise<unknown> => {
      await slowly();
      return work(...given);
    };
  const names = ['mkdir', 'lstat', 'readdir', 'rm', 'stat', 'utimes', 'writeFile'] as const;
  return { ...disk, ...Object.fromEntries(names.map((name) => [name, slow(disk[name] as never)])) };
});

let dir = '';
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'bookmatch-slow-'));
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

/** Counts how many are at work at once, at most. */
class Crowd {
  most = 0;
  #now = 0;

  readonly work = async (milliseconds = 10): Promise<void> => {
    this.#now += 1;
    this.most = Math.max(this.most, this.#now);
    await new Promise((resolve) => setTimeout(resolve, milliseconds));
    this.#now -= 1;
  };
}

test('of those who wait for the place of a run that was killed one takes it, and then the next', async () => {
  const own = join(dir, '.bookmatch');
  const left = await killedAtWork(dir);
  expect(left).toHaveLength(1);
  const crowd = new Crowd();
  for (let round = 0; round < 20; round += 1) {
    mkdirSync(own, { recursive: true });
    for (const name of left) writeFileSync(join(own, name), '');
    await Promise.all(Array.from({ length: 8 }, () => oneAtATime(dir, () => crowd.work())));
    expect(readdirSync(own)).toEqual([]);
  }
  expect(crowd.most).toBe(1);
});

const pace = { beat: 100, longest: 1000, patience: 60_000 };

test('who works for long keeps the place for as long as it lives, and takes nobody else’s away', async () => {
  const crowd = new Crowd();
  const at = async (start: number, milliseconds: number): Promise<void> => {
    await new Promise((resolve) => setTimeout(resolve, start));
    await oneAtATime(dir, () => crowd.work(milliseconds), pace);
  };
  await Promise.all([at(0, 3000), at(100, 1500), at(200, 100), at(300, 100)]);
  expect(crowd.most).toBe(1);
});

test('of another machine’s run it is known that it is no more when it shows no life for long, whatever the clocks say', async () => {
  const own = join(dir, '.bookmatch');
  mkdirSync(own);
  const claim = 'writing-zzzzzzzzz-1-00000000-0123456789ab';
  writeFileSync(join(own, claim), '');
  const begun = performance.now();
  await oneAtATime(dir, () => Promise.resolve(), pace);
  expect(performance.now() - begun).toBeGreaterThan(1000);
  expect(readdirSync(own)).toEqual([]);
});

test('who waits in vain for one that lives is told that the disk is busy, and has done nothing', async () => {
  let isDone = false;
  const long = oneAtATime(dir, () => new Promise((resolve) => setTimeout(resolve, 1500)), pace);
  await new Promise((resolve) => setTimeout(resolve, 300));
  const impatient = oneAtATime(dir, () => Promise.resolve((isDone = true)), { ...pace, patience: 500 });
  await expect(impatient).rejects.toMatchObject({ code: 'EBUSY' });
  expect(isDone).toBe(false);
  await long;
});
