import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../src/cli/main.js';
import { smallHouse } from '../records/small-house.js';
import { makeConsole } from './make-console.js';

let house: string;
beforeAll(() => {
  house = mkdtempSync(join(tmpdir(), 'bookmatch-schedule-'));
  for (const [path, text] of Object.entries(smallHouse)) {
    mkdirSync(dirname(join(house, path)), { recursive: true });
    writeFileSync(join(house, path), text);
  }
});
afterAll(() => rmSync(house, { recursive: true }));

async function bookmatch(...words: string[]) {
  const said = { out: '', error: '' };
  const code = await run(
    [...words, '--house', house, '--on', '2026-04-20'],
    makeConsole({ out: (text) => void (said.out += text), error: (text) => void (said.error += text) }),
  );
  return { code, ...said };
}

test('a name a letter off is told which was meant, and which there are', async () => {
  const { code, error } = await bookmatch('schedule', 'door');
  expect(code).toBe(2);
  expect(error).toMatch(/^there is no schedule 'door': did you mean 'doors'\?\nSchedules are .*\bdoors\b/u);
});

test.each([
  ['schedule', 'doors', '--csv', '--json'],
  ['schedule', 'doors', '--csv', '--pdf', 'doors.pdf'],
  ['takeoff', '--csv', '--json'],
  ['calendar', '--ics', '--json'],
])('%s %s: two forms at once are refused', async (...words) => {
  const { code, out } = await bookmatch(...words);
  expect([code, out]).toEqual([2, '']);
});

test('a schedule of nothing is an empty list, and no PDF', async () => {
  const nothing = 'insulation';
  expect(await bookmatch('schedule', nothing, '--json')).toMatchObject({ code: 0, out: '[]\n' });
  expect((await bookmatch('schedule', nothing, '--pdf', join(house, 'none.pdf'))).code).toBe(1);
  expect(readdirSync(house)).not.toContain('none.pdf');
});

test('what the disk refuses is told in a line, and nothing is left behind', async () => {
  mkdirSync(join(house, 'taken.pdf'));
  const { code, error } = await bookmatch('schedule', 'finish', '--pdf', join(house, 'taken.pdf'));
  expect(code).toBe(2);
  expect(error.trim().split('\n').at(-1)).toMatch(/taken\.pdf cannot be written or read: /u);
  expect(readdirSync(house).filter((name) => name.endsWith('.tmp'))).toEqual([]);
});
