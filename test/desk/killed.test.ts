import { spawn } from 'node:child_process';
import { watch } from 'node:fs';
import { readFile, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';
import { readHouseFolder } from '../../src/disk/store/index.js';
import { seeded } from '../signoff/seeded.js';
import { long, savedRecord, savedText } from './saved-text.js';
import { smallHouse } from './small-house.js';

/** Saves until it is killed: once so many were acknowledged, `delay` milliseconds after the disk tells that the next is being written. Answers the number
 *  of the last that was acknowledged. */
function savedUntilKilled(dir: string, { saves, delay }: { saves: number; delay: number }): Promise<number> {
  const words = ['--import', 'tsx', join(import.meta.dirname, 'saver.ts'), dir, '1', '1000'];
  const child = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'inherit'] });
  let told = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (told += text));
  const folder = watch(dirname(join(dir, savedRecord)), () => {
    if (told.split('\n').length - 1 < saves) return;
    if (delay < 1) child.kill('SIGKILL');
    else setTimeout(() => child.kill('SIGKILL'), delay);
  });
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', () => {
      folder.close();
      resolve(Number(told.trim().split('\n').at(-1)));
    });
  });
}

it('tears no record and loses no save that it acknowledged when it is killed, four times in two hundred saves', async () => {
  const random = seeded(20_261_128);
  const kills = Array.from({ length: 4 }, () => ({ saves: long + 5 + Math.floor(random() * 10), delay: random() * 3 }));
  expect(kills.reduce((sum, { saves }) => sum + saves, 0)).toBeGreaterThanOrEqual(180);
  const ends = await Promise.all(
    kills.map(async (kill) => {
      const dir = await smallHouse();
      const last = await savedUntilKilled(dir, kill);
      const text = await readFile(join(dir, savedRecord), 'utf8');
      const { files, problems } = await readHouseFolder(dir);
      await rm(dir, { recursive: true, force: true });
      // The one after the last may be written, and not told yet.
      const whole = [last, last + 1].find((number) => savedText(number) === text);
      return { kill, last, isWhole: whole !== undefined, files: files.length, problems: problems.length };
    }),
  );
  for (const { kill, last, isWhole, files, problems } of ends) {
    expect(last).toBeGreaterThanOrEqual(kill.saves);
    expect({ last, isWhole, problems }).toEqual({ last, isWhole: true, problems: 0 });
    expect(files).toBe(ends[0]?.files);
  }
});
