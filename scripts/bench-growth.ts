import { execFileSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import { writeTree } from '../src/disk/store/index.js';
import { grownHouse, selectionsOfApartment } from '../test/houses/grown-house.js';

export interface Growth {
  readonly what: string;
  /** p where what grows takes the p-th power of the selections: what is taken at the start is set apart by three sizes. */
  readonly exponent: number;
  /** By size. */
  readonly runs: readonly Run[];
}

interface Run {
  readonly selections: number;
  /** Of the processor, in all threads. */
  readonly seconds: number;
  readonly peakMegabytes: number;
}

const apartments = [1, 10, 100];

/** What a house of ten and of a hundred times the selections takes, each in a process of its own. `scratch` is a folder to write into. */
export async function* timeGrowth(scratch: string, on: string): AsyncIterable<Growth> {
  const folder = await mkdtemp(join(scratch, 'grown-'));
  const houses: string[] = [];
  for (const count of apartments) {
    const house = join(folder, String(count));
    await writeTree(house, await grownHouse(count));
    houses.push(house);
  }
  const ways = {
    'bookmatch check': (house: string) => ['dist/bookmatch.js', 'check', '--house', house, '--on', on],
    'bookmatch build --json': (house: string) => ['dist/bookmatch.js', 'build', '--json', '--house', house, '--on', on],
    'the pages of the book and of the handouts': (house: string) => [
      '--import',
      'tsx',
      'scripts/grown-pages.ts',
      house,
      on,
    ],
  };
  for (const [what, words] of Object.entries(ways)) {
    const runs: Run[] = [];
    for (const [index, house] of houses.entries()) {
      await rm(join(house, '.bookmatch'), { recursive: true, force: true });
      runs.push({ selections: (apartments[index] ?? 0) * selectionsOfApartment, ...timeProcess(words(house)) });
    }
    yield { what, exponent: exponentOf(runs), runs };
  }
}

/** Of sizes that each are ten times the one before: (t3 - t2) / (t2 - t1) is the p-th power of ten, whatever the start takes. */
function exponentOf(runs: readonly Run[]): number {
  const [small = NaN, middle = NaN, large = NaN] = runs.map(({ seconds }) => seconds);
  return Math.log10((large - middle) / (middle - small));
}

/** Said by a process of itself when it ends. */
const mark = 'taken:';
const says = `process.on('exit',()=>{const u=process.resourceUsage();require('fs').writeSync(2,'\\n${mark} '+JSON.stringify([u.userCPUTime+u.systemCPUTime,u.maxRSS])+'\\n')})`;

function timeProcess(words: readonly string[]): Pick<Run, 'seconds' | 'peakMegabytes'> {
  const preload = `data:text/javascript,import{createRequire}from'node:module';const require=createRequire('/');${encodeURIComponent(says)}`;
  const said = execFileSync(
    'sh',
    ['-c', 'exec "$@" 2>&1 >/dev/null', 'sh', process.execPath, '--import', preload, ...words],
    {
      encoding: 'utf8',
      maxBuffer: 1 << 28,
    },
  );
  const [microseconds = NaN, kilobytes = NaN] = JSON.parse(
    said.slice(said.lastIndexOf(mark) + mark.length),
  ) as number[];
  return { seconds: microseconds / 1e6, peakMegabytes: kilobytes / 1000 };
}
