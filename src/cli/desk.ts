import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import process from 'node:process';
import { Command } from 'commander';
import type { IsoDate } from '../base/units/index.js';
import type { Comparison } from '../core/compare/index.js';
import { commitFiles } from '../disk/history/index.js';
import { loadComparison, onDisk, openHouse, type LoadedHouse } from '../disk/load/index.js';
import { keptResults, type KeptResults } from '../disk/store/index.js';
import type { Said, TakingIn } from '../desk/index.js';
import { besideDesk } from './beside-desk.js';
import { slipTrailer } from './choose/commit-choices.js';
import type { Console, Terminal } from './console.js';
import { checkHouseDir, dayOf, withHouseOptions, type HouseOptions } from './house-options.js';
import { shellWord } from './shell-word.js';
import { UsageError } from './usage-error.js';

interface DeskOptions extends HouseOptions {
  readonly port?: string;
}

/** One command line, run with what it writes taken down. */
type RunIn = (words: readonly string[], terminal: Terminal) => Promise<number>;

/** `bookmatch desk`: the book of a house in the browser, written where it stands. Ends when it is interrupted. */
export function makeDesk(run: RunIn) {
  return (console: Console, done: (code: number) => void): Command =>
    withHouseOptions(new Command('desk'))
      .option(
        '--port <number>',
        'the port of 127.0.0.1 that it answers at (default: the last one of the house where that is free)',
      )
      .action(async ({ house, port, on }: DeskOptions) => {
        const dir = checkHouseDir(house);
        if (port !== undefined && (!/^\d{1,5}$/u.test(port) || Number(port) > 65_535))
          throw new UsageError(`--port ${port} is no port: 0 to 65535`);
        console.doing('reading the records');
        const today = () => dayOf(on, console);
        const at = { dir, today, ...(port !== undefined && { port: Number(port) }), ...(on !== undefined && { on }) };
        const desk = await openDesk(at, run, console).catch((error: unknown) => {
          throw isTaken(error) ? new UsageError(`--port ${port ?? 0} is taken: name another, or none`) : error;
        });
        console.out(`${desk.address}\n`);
        console.tell(
          'Open this address in a browser. It is for this machine alone, and has its key. Ctrl-C ends the desk.\n',
        );
        await new Promise<void>((resolve) => {
          for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
        });
        await desk.close();
        done(0);
      });
}

function isTaken(error: unknown): boolean {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  return code === 'EADDRINUSE' || code === 'EACCES';
}

export interface OpenDesk {
  readonly address: string;
  readonly close: () => Promise<void>;
}

interface At {
  readonly dir: string;
  /** 0 takes one that is free; without it the one that the house had last is taken where that is free, so that its open pages go on. */
  readonly port?: number;
  readonly today: () => IsoDate;
  /** The day that was asked for. */
  readonly on?: string;
}

/** A desk that answers until it is closed. */
export async function openDesk({ dir, port, today, on }: At, run: RunIn, console: Console): Promise<OpenDesk> {
  const { actOn, deskOn, newStart, serveDesk, watchHouse } = await import('../desk/index.js');
  const again = ['bookmatch desk --house', shellWord(dir), ...(on === undefined ? [] : ['--on', on])].join(' ');
  const start = newStart(dir, again);
  const watched = await watchHouse(dir, today, (page, standing) => deskOn(page, standing, start));
  const runHere = (words: readonly string[]): Promise<Said> => runIn({ dir, today }, words, run, console);
  const act = actOn(dir, watched, {
    run: runHere,
    commit: async (files, sentence) => {
      const committed = await commitFiles(dir, files, [sentence, ...(await slipParagraph(dir))].join('\n\n'));
      return committed.ok
        ? { isDone: true, words: `Recorded: ${sentence}` }
        : { isDone: false, words: `git would not record it: ${committed.why}` };
    },
    withFile: (bytes, use) => withFile(bytes, use),
    slip: (text, how) =>
      withFile(text, async (file) => {
        const { words, ...said } = await runHere(['choose', ...flagsOf(how), file]);
        return { ...said, words: words.replaceAll(file, 'as pasted') };
      }),
    difference: async (from) => {
      const loaded = await loadComparison(openHouse(dir), from, onDisk, today());
      return loaded.ok ? loaded.comparison : undefined;
    },
  });
  const beside = besideDesk(dir, today, { ...console, doing: () => undefined, problems: () => undefined });
  const kept = keptResults(dir, 'desk');
  const served = await serveDesk({ dir, watched, act, beside, start }, await portsOf(port, kept));
  await kept.put(portKey, Number(new URL(served.address).port));
  return served;
}

/** Slips that handed over what the records choose now and the last version did not, as the end of a commit's message. */
async function slipParagraph(dir: string): Promise<readonly string[]> {
  const open = openHouse(dir);
  const before = await open.version('HEAD');
  const [old, now] = [before.ok ? slipsIn(before.house) : new Set<string>(), slipsIn(await open.current())];
  const fresh = [...now].filter((slip) => !old.has(slip));
  return fresh.length === 0 ? [] : [fresh.map(slipTrailer).join('\n')];
}

function slipsIn({ house }: LoadedHouse): ReadonlySet<string> {
  const selections = house?.records.rooms.flatMap((room) => room.selections) ?? [];
  return new Set(selections.flatMap(({ slip }) => slip ?? []));
}

const portKey = 'port';

/** The port that is asked for; else the last one of the house, or any. */
async function portsOf(port: number | undefined, kept: KeptResults): Promise<readonly number[]> {
  if (port !== undefined) return [port];
  const last = await kept.get(portKey);
  return typeof last === 'number' ? [last, 0] : [0];
}

function flagsOf({ what, isWritten }: TakingIn): readonly string[] {
  return [...(what === 'rest' ? ['--except-conflicts'] : []), ...(isWritten ? [] : ['--dry-run'])];
}

/** Runs a command as if it were typed in the house folder on the desk's day. */
async function runIn(
  { dir, today }: Pick<At, 'dir' | 'today'>,
  [name = '', ...words]: readonly string[],
  run: RunIn,
  console: Console,
): Promise<Said> {
  let text = '';
  let difference: Comparison | undefined;
  const take = (said: string): void => {
    text += said;
  };
  const terminal: Terminal = {
    ...console,
    out: take,
    error: take,
    today,
    takesCommands: false,
    compared: (comparison) => {
      difference = comparison;
    },
    doing: () => undefined,
    asker: () => undefined,
    color: false,
  };
  const at = words.indexOf('--');
  const before = at < 0 ? words : words.slice(0, at);
  const code = await run([name, ...before, `--house=${dir}`, ...(at < 0 ? [] : words.slice(at))], terminal);
  // Files are told by where they are in the house.
  const said = text.replaceAll(`${dir}${sep}`, '').trim();
  return { isDone: code === 0, words: said, ...(difference !== undefined && { difference }) };
}

async function withFile<T>(content: string | Uint8Array, use: (path: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'bookmatch-desk-'));
  try {
    const path = join(folder, 'sent');
    await writeFile(path, content, { mode: 0o600 });
    return await use(path);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
