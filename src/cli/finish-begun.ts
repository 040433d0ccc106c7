import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { joinWords } from '../base/units/index.js';
import type { Begun } from '../disk/store/index.js';
import type { Console } from './console.js';

/** Folders in which a command may find what an earlier run was killed at: its house, the site in that, and the folder that it writes to. */
interface Folders {
  readonly house?: unknown;
  readonly out?: unknown;
}

/** Finishes there what runs that were interrupted had begun to put in place, or clears away what they had only made, and says so in a sentence each. */
export async function finishInterrupted({ house, out }: Folders, console: Pick<Console, 'error'>): Promise<void> {
  const named = [house, typeof house === 'string' ? join(house, '_site') : undefined, out];
  const folders = new Set(named.flatMap((one) => (typeof one === 'string' && one !== '' ? [resolve(one)] : [])));
  for (const folder of folders) if (existsSync(join(folder, '.bookmatch'))) await finishIn(folder, console);
  if (typeof house === 'string') await finishReplacedIn(join(house, '_site', 'handout'), undefined, console);
  if (typeof out === 'string') await finishReplacedIn(dirname(resolve(out)), basename(resolve(out)), console);
}

/** A folder is made beside the one whose place it takes. */
async function finishReplacedIn(
  folder: string,
  name: string | undefined,
  console: Pick<Console, 'error'>,
): Promise<void> {
  // Nearly always there is nothing, and to know more is to read most of the program.
  if (!namesIn(folder).some((one) => /^\..+\.(?:new|old)$/u.test(one))) return;
  const { finishReplaced } = await import('../disk/store/index.js');
  for (const { dir, isFinished } of await finishReplaced(folder, name))
    console.error(isFinished ? finishedWords(dir) : nothingWords);
}

/** None where there is no folder, or none that may be listed. */
function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

const why = 'An earlier run was interrupted';
const nothingWords = `${why} before anything was written: what it had prepared is cleared away.\n`;
const finishedWords = (what: string): string => `${why}, and what it had begun is now finished: ${what}.\n`;

async function finishIn(folder: string, console: Pick<Console, 'error'>): Promise<void> {
  const { finishBegun } = await import('../disk/store/index.js');
  const begun = await finishBegun(folder, async ({ paths, message }) => {
    const { commitFiles, isCommitted } = await import('../disk/history/index.js');
    if (await isCommitted(folder, paths)) return;
    const committed = await commitFiles(folder, paths, message);
    if (!committed.ok)
      console.error(`git would not commit ${paths.join(', ')}: ${committed.why}. Commit them yourself.\n`);
  });
  if (begun === undefined) return;
  if (begun === 'nothing') console.error(nothingWords);
  else if (begun === 'elsewhere')
    console.error(`${why} while it wrote into a shared folder: do what it did once more.\n`);
  else if (!begun.isProven) console.error(`${why}. ${unprovenWords(begun)}\n`);
  else console.error(finishedWords(begun.what));
}

/** What the note of somebody else's run says of itself is not told. */
function unprovenWords({ moves, commit }: Begun): string {
  const placed = `What it had made is now in its place: ${joinWords(moves.map(({ to }) => to))}`;
  return commit
    ? `${placed}. Nothing shows that it was you who ran it: look at that, and commit it yourself.`
    : `${placed}.`;
}
