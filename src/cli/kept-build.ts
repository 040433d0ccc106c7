import process from 'node:process';
import type { Problem } from '../base/problem/index.js';
import { programDigest } from '../disk/program/index.js';
import { gitVersion } from '../disk/history/index.js';
import { keptResults, partsIn, readsAlike, traceReads, treeDigest, type Read } from '../disk/store/index.js';
import type { Console } from './console.js';

export interface BuildOf {
  /** The house folder. */
  readonly dir: string;
  /** The folder that is written to. */
  readonly out: string;
  /** What else the command line says: the day. */
  readonly by: readonly string[];
}

/** What a build writes: files and folders of `out` by their names, and the digest of all that is in them. */
export interface Made {
  readonly names: readonly string[];
  readonly digest: string;
}

/** What was built: all that was read for it, all that it wrote, and what was said meanwhile. */
interface Built extends Made {
  readonly reads: readonly Read[];
  readonly said: readonly Said[];
}

type Said =
  | { readonly how: 'error'; readonly text: string }
  | { readonly how: 'problems'; readonly problems: readonly Problem[]; readonly outcome?: string };

/**
 * Builds, unless the last build of the house was by the same program for the same folder and day, the disk would answer all that it read the same, and
 * what it wrote stands there as it was written: then it says again what was said of the records, and answers that nothing was done. `make` gets the console to
 * speak by, and answers what it put into `out`; undefined where nothing was built. Where anything cannot be kept or read, it builds.
 */
export async function keptBuild(
  of: BuildOf,
  console: Console,
  make: (console: Console) => Promise<Made | undefined>,
): Promise<'built' | 'nothing built' | 'up to date'> {
  const key = await keyOf(of);
  const kept = keptResults(of.dir, 'built');
  const before = key === undefined ? undefined : ((await kept.get(key)) as Built | undefined);
  if (before && (await isUpToDate(of, before))) {
    for (const one of before.said) {
      if (one.how === 'error') console.error(one.text);
      else console.problems(one.problems, one.outcome);
    }
    return 'up to date';
  }
  const said: Said[] = [];
  const { answer: made, reads } = await traceReads(() => make(hearing(console, said)));
  if (!made) return 'nothing built';
  // What was written while it was built may have been read before: then no later run goes by it.
  if (key !== undefined && (await readsAlike(of.dir, reads)))
    await kept.put(key, { ...made, reads, said } satisfies Built);
  return 'built';
}

/** All that was made in a folder, by its names there. */
export async function madeIn(stage: string): Promise<Made> {
  const names = await partsIn(stage);
  return { names, digest: await treeDigest(stage, names) };
}

async function keyOf({ out, by }: BuildOf): Promise<string | undefined> {
  const program = await programDigest();
  if (program === undefined) return undefined;
  const { version, platform, arch } = process;
  return JSON.stringify([program, version, platform, arch, await gitVersion(), out, ...by]);
}

async function isUpToDate({ dir, out }: BuildOf, { reads, names, digest }: Built): Promise<boolean> {
  try {
    return (await treeDigest(out, names)) === digest && (await readsAlike(dir, reads));
  } catch {
    return false;
  }
}

/** A console that hears what is said of the records. */
function hearing(console: Console, said: Said[]): Console {
  return {
    ...console,
    error: (text) => {
      said.push({ how: 'error', text });
      console.error(text);
    },
    problems: (problems, outcome) => {
      said.push({ how: 'problems', problems, ...(outcome !== undefined && { outcome }) });
      console.problems(problems, outcome);
    },
  };
}
