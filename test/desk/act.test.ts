import { appendFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { h } from 'preact';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { actOn, type Act } from '../../src/desk/act.js';
import { deskEntry } from '../../src/desk/paths.js';
import type { Said } from '../../src/desk/said.js';
import { watchHouse, type Watched } from '../../src/desk/standing.js';
import { smallHouse } from './small-house.js';

let dir: string;
let house: Watched;

beforeEach(async () => {
  dir = await smallHouse();
  house = await watchHouse(
    dir,
    () => '2026-04-20',
    () => ({ strip: h('p', {}), entry: deskEntry, styles: [], scripts: [] }),
  );
});

afterEach(async () => {
  await house.close();
  await rm(dir, { recursive: true, force: true });
});

/** Acts whose every command writes one line into a record, and says what is given. */
function acts(said: Said): Act {
  return actOn(dir, house, {
    run: async () => {
      await appendFile(join(dir, 'content/rooms/study.md'), '\nOne more line.\n');
      return said;
    },
    commit: () => Promise.resolve(said),
    withFile: (_, use) => use(''),
    slip: () => Promise.resolve(said),
    difference: () => Promise.resolve(undefined),
  });
}

it.each([
  ['new-trade', true, true],
  ['new-trade', false, false],
  ['issue', true, false],
  // A hook of git refused: the record is written, and in no commit.
  ['issue', false, true],
])('%s, done %s: can it be taken back? %s', async (ask, isDone, isOffered) => {
  const act = acts({ isDone, words: '' });
  await act.perform(new URLSearchParams({ ask, for: 'pricing', name: 'Glazing' }));
  expect(act.lastDone() !== undefined).toBe(isOffered);
});

it('does one thing after the other, whatever comes at once', async () => {
  let [running, most] = [0, 0];
  const act = actOn(dir, house, {
    run: async () => {
      running += 1;
      most = Math.max(most, running);
      await new Promise((resolve) => setTimeout(resolve, 60));
      running -= 1;
      return { isDone: true, words: '' };
    },
    commit: () => Promise.resolve({ isDone: true, words: '' }),
    withFile: (_, use) => use(''),
    slip: () => Promise.resolve({ isDone: true, words: '' }),
    difference: () => Promise.resolve(undefined),
  });
  await Promise.all(
    [1, 2, 3, 4].map(() => act.perform(new URLSearchParams({ ask: 'new-trade', name: 'Glazing', contact: 'shop' }))),
  );
  expect(most).toBe(1);
});

it('has ended when all that was begun is done', async () => {
  const act = acts({ isDone: true, words: '' });
  let done = 0;
  for (const name of ['Glazing', 'Roofing'])
    void act.perform(new URLSearchParams({ ask: 'new-trade', name, contact: 'shop' })).then(() => (done += 1));
  await act.ended();
  expect(done).toBe(2);
});
