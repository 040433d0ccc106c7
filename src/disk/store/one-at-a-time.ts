import { readFile, rm, stat, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { setTimeout as wait } from 'node:timers/promises';
import { isFolder, makeFolder, ownFolder, ownFolderName } from './make-folder.js';
import { runs } from './runs.js';

/** A write takes a few milliseconds: who holds the place for so long, in milliseconds, is no more. */
const longest = 10_000;

/** Does something in a house folder while no other run of the program does: what it looks at on the disk is still so when it writes. Where the
 *  folder takes no file nobody waits, and the write itself says why it cannot be. */
export async function oneAtATime<T>(houseDir: string, work: () => Promise<T>): Promise<T> {
  const place = join(houseDir, ownFolderName, 'writing');
  const isTaken = await take(houseDir, place);
  try {
    return await work();
  } finally {
    if (isTaken) await clear(place);
  }
}

/** Whatever lies there. */
function clear(place: string): Promise<void> {
  return rm(place, { recursive: true, force: true });
}

/** Who holds the place: a program of a machine, as several may work in one folder. */
const holder = (pid: number): string => `${pid} ${hostname()}`;

/** Was the place left by a program of this machine that was killed? */
async function isLeft(place: string): Promise<boolean> {
  const written = await readFile(place, 'utf8').catch(() => '');
  const pid = Number.parseInt(written, 10);
  return pid > 0 && written === holder(pid) && !runs(pid);
}

async function take(houseDir: string, place: string): Promise<boolean> {
  // A house that is gone is not begun anew.
  if (!(await isFolder(houseDir))) return false;
  const isThere = await ownFolder(houseDir)
    .then(makeFolder)
    .then(
      () => true,
      () => false,
    );
  if (!isThere) return false;
  for (const begun = Date.now(); Date.now() - begun < 2 * longest; await wait(5)) {
    const why = await writeFile(place, holder(process.pid), { flag: 'wx' }).then(
      () => undefined,
      (error: NodeJS.ErrnoException) => error.code ?? '',
    );
    if (why === undefined) return true;
    if (why !== 'EEXIST') return false;
    if (await isLeft(place)) await clear(place);
    const since = await stat(place).catch(() => undefined);
    if (since && Date.now() - since.mtimeMs > longest) await clear(place);
  }
  return false;
}
