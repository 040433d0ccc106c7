import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { changesIn, type Change } from './mutate/changes.js';

/** Would the tests notice? Makes small changes to constants and signs where figures are made, one at a time in a copy of the project, and
 *  asks first the tests that compare with the outside, then those of the core. `npm run mutate -- [count] [seed]`. Not part of the test command:
 *  forty changes take about three quarters of an hour. */

const [count = 40, seed = 12] = process.argv.slice(2).map(Number);
const copied = [
  'src',
  'test',
  'schemas',
  'content',
  'types',
  'fonts',
  'package.json',
  'tsconfig.json',
  'vitest.config.ts',
  'eleventy.config.ts',
];
const suites = [
  { name: 'test/outside', folders: ['test/outside'] },
  {
    name: 'tests of the core',
    folders: [
      'test/measure',
      'test/takeoff',
      'test/price',
      'test/geometry',
      'test/feature',
      'test/houses',
      'test/book',
    ],
  },
] as const;

const [timedOut, notFound] = ['timed out', 'NOT FOUND'];
/** Milliseconds for a suite, many times what one takes without a change. */
const longest = 600_000;

const copy = mkdtempSync(join(tmpdir(), 'bookmatch-mutate-'));
process.exitCode = main();

function main(): number {
  try {
    for (const path of copied) cpSync(path, join(copy, path), { recursive: true });
    symlinkSync(join(process.cwd(), 'node_modules'), join(copy, 'node_modules'));
    const broken = suites.filter(({ folders }) => outcomeOf(folders) !== 'passed');
    if (broken.length > 0) {
      console.log(`without any change these fail: ${broken.map(({ name }) => name).join(', ')}`);
      return 1;
    }
    const changes = changesIn(copy);
    const chosen = shuffled(changes, seed).slice(0, count);
    console.log(`${chosen.length} of ${changes.length} changes, seed ${seed}`);
    const found = chosen.map((change, index) => {
      const by = finder(change);
      const { file, line, before, after } = change;
      console.log(`${String(index + 1).padStart(3)}  ${file}:${line}  ${before} → ${after}  ${by}`);
      return by;
    });
    for (const by of [...suites.map(({ name }) => name), timedOut, notFound])
      console.log(`${by}: ${found.filter((one) => one === by).length} of ${chosen.length}`);
    return found.includes(notFound) ? 1 : 0;
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
}

/** The first suite that fails with the change. One that goes on and on has not found it: the next is asked. */
function finder({ file, from, to, after }: Change): string {
  const path = join(copy, file);
  const text = readFileSync(path, 'utf8');
  writeFileSync(path, text.slice(0, from) + after + text.slice(to));
  let by = notFound;
  for (const { name, folders } of suites) {
    const outcome = outcomeOf(folders);
    if (outcome === 'timed out') by = timedOut;
    if (outcome !== 'failed') continue;
    by = name;
    break;
  }
  writeFileSync(path, text);
  return by;
}

function outcomeOf(folders: readonly string[]): 'passed' | 'failed' | 'timed out' {
  const { status } = spawnSync(
    join('node_modules', '.bin', 'vitest'),
    ['run', ...folders, '--bail', '1', '--reporter', 'dot'],
    { cwd: copy, stdio: 'ignore', timeout: longest },
  );
  // What was stopped has no status of its own.
  if (status === null) return 'timed out';
  return status === 0 ? 'passed' : 'failed';
}

/** The same order for the same seed. Source of the numbers: the multiplicative congruential generator of Park and Miller, 1988. */
function shuffled<T>(list: readonly T[], start: number): readonly T[] {
  let state = start;
  const next = (): number => {
    state = (state * 48_271) % 2_147_483_647;
    return state;
  };
  return list
    .map((one) => ({ one, at: next() }))
    .sort((a, b) => a.at - b.at)
    .map(({ one }) => one);
}
