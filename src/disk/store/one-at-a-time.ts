import { mkdir, readdir, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { constants } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { ownFolder } from './make-folder.js';
import { newTag, tagForm, whose } from './run-tag.js';

/** In milliseconds. */
interface Pace {
  /** How often who works shows that it lives. */
  readonly beat: number;
  /** Who was not seen to live for so long is no more, or is of another machine that is gone. */
  readonly longest: number;
  /** How long one waits for who lives: a commit may ask its user for a passphrase. */
  readonly patience: number;
}

const usual: Pace = { beat: 1000, longest: 10_000, patience: 60_000 };

/** Does something in a house folder while no other run of the program does: what it looks at on the disk is still so when it writes. Where the
 *  folder takes no file nobody waits, and the write itself says why it cannot be. Rejects as a disk that is busy where another run works for longer than a minute. */
export async function oneAtATime<T>(houseDir: string, work: () => Promise<T>, pace = usual): Promise<T> {
  const giveBack = await take(houseDir, pace);
  try {
    return await work();
  } finally {
    await giveBack?.();
  }
}

/** `writing-`, when it was asked for, and whose it is. A claim is a file without content: it is there as a whole, or not. */
const form = new RegExp(`^writing-[0-9a-z]{9}-(${tagForm})$`, 'u');

/** Claims of this run. Another by its number is of one that was killed, in a container that counts from the same number again. */
const own = new Set<string>();

/** Whoever puts a claim and then sees no other has the place: of two, the one who put later sees the other's. Of those who see each other all but the one who asked first take theirs
 *  back. No name comes twice, so that a claim that is taken away, by who put it or because who put it is no more, is never somebody else's. */
async function take(houseDir: string, pace: Pace): Promise<(() => Promise<void>) | undefined> {
  const since = Date.now().toString(36).padStart(9, '0');
  const begun = performance.now();
  const look = looking(pace);
  for (let turn = 0; ; turn += 1) {
    const folder = await folderIn(houseDir);
    if (folder === undefined) return undefined;
    let [before] = await look(folder);
    if (before === undefined) {
      const mine = `writing-${since}-${newTag()}`;
      const put = await putClaim(join(folder, mine), mine, pace);
      if (put === 'no folder') continue;
      if (put === 'refused') return undefined;
      do {
        const claims = await look(folder);
        if (claims.length === 1 && claims[0] === mine) return put;
        // Gone is one whose run was stopped for so long that it was taken for one that is no more.
        before = claims.includes(mine) ? claims[0] : undefined;
      } while (before === mine && performance.now() - begun <= pace.patience && (await wait(5, true)));
      await put();
    }
    if (performance.now() - begun > pace.patience) throw busy(join(folder, before ?? ''));
    await wait(Math.min(5 + turn, 25));
  }
}

/** The program's own folder in a house, made where it is not there; undefined where the disk refuses, and in a house that is gone, which is not begun anew. */
async function folderIn(houseDir: string): Promise<string | undefined> {
  try {
    const folder = await ownFolder(houseDir);
    await mkdir(folder).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== 'EEXIST') throw error;
    });
    return folder;
  } catch {
    return undefined;
  }
}

/** Puts a claim that shows that it lives; answers what takes it away. There is no folder where who was done took it away, which was empty. */
async function putClaim(
  path: string,
  name: string,
  { beat }: Pace,
): Promise<(() => Promise<void>) | 'no folder' | 'refused'> {
  // Known before it can be seen.
  own.add(name);
  try {
    await writeFile(path, '', { flag: 'wx' });
  } catch (error) {
    own.delete(name);
    return (error as NodeJS.ErrnoException).code === 'ENOENT' ? 'no folder' : 'refused';
  }
  const timer = setInterval(() => {
    const now = new Date();
    void utimes(path, now, now).catch(() => undefined);
  }, beat);
  timer.unref();
  return async () => {
    clearInterval(timer);
    await takeAway(path);
    own.delete(name);
  };
}

function takeAway(path: string): Promise<void> {
  return rm(path, { recursive: true, force: true });
}

/** Asks for the claims that live, in order; those of who is no more are taken away. By the asker's own clock: machines that share a folder need not agree on the time. */
function looking({ longest }: Pace): (folder: string) => Promise<readonly string[]> {
  const seen = new Map<string, { readonly changed: number; readonly at: number }>();
  const isStill = async (path: string, name: string): Promise<boolean> => {
    const changed = await stat(path).then(
      ({ mtimeMs }) => mtimeMs,
      () => 0,
    );
    const before = seen.get(name);
    if (before?.changed === changed) return performance.now() - before.at > longest;
    seen.set(name, { changed, at: performance.now() });
    return false;
  };
  return async (folder) => {
    const living: string[] = [];
    for (const name of await readdir(folder).catch(() => [])) {
      if (!form.test(name)) continue;
      const path = join(folder, name);
      if (isKilled(name) || (!own.has(name) && (await isStill(path, name)))) await takeAway(path);
      else living.push(name);
    }
    return living.sort();
  };
}

/** Was it put by a program of this machine that was killed? */
function isKilled(name: string): boolean {
  const owner = whose(form.exec(name)?.[1] ?? '');
  return owner === 'this' ? !own.has(name) : owner === 'killed';
}

function busy(path: string): Error {
  return Object.assign(new Error(`EBUSY: resource busy or locked, '${path}'`), {
    code: 'EBUSY',
    errno: -constants.errno.EBUSY,
    syscall: 'open',
    path,
  });
}
