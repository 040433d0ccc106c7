import { mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { makeFolder } from './make-folder.js';
import { besideFolder } from './replaced.js';

/** A folder that is not written to, in words for the person who named it. */
export class OutputRefused extends Error {}

/** Left in every folder that this program wrote, so that it never clears away one that somebody else filled. */
export const outputMark = '.bookmatch-output';

/** What the mark says to whoever opens it. */
export const outputWords = 'Made by bookmatch: the whole folder is replaced by the next build.\n';

/** A file of a folder, by its path with `/`, and what is in it. */
export type TreeFile = readonly [path: string, content: Uint8Array | string];

/** Replaces a folder by `files`, all of them or none; those that are made one after the other are not held together. Rejects with OutputRefused for a
 *  folder that holds other things, and for a path that leads out of it; otherwise when the disk refuses. */
export async function writeTree(dir: string, files: Iterable<TreeFile> | AsyncIterable<TreeFile>): Promise<void> {
  await replaceFolder(dir, async (fresh) => {
    for await (const [path, content] of files) {
      if (!isInside(path)) throw new OutputRefused(`'${path}' leads out of ${dir}`);
      const full = join(fresh, ...path.split('/'));
      await makeFolder(dirname(full));
      await writeFile(full, content);
    }
  });
}

/** Replaces a folder by what `fill` writes into a new one beside it: only when all is there does the new folder take the old one's place.
 *  Answers what `fill` does; rejects as `writeTree` does, and when `fill` does. */
export async function replaceFolder<T>(dir: string, fill: (fresh: string) => Promise<T>): Promise<T> {
  const target = resolve(dir);
  await refuseForeign(dir);
  await makeFolder(dirname(target));
  const { fresh, former } = besideFolder(target);
  try {
    await mkdir(fresh);
    await writeFile(join(fresh, outputMark), outputWords);
    const filled = await fill(fresh);
    const had = await moveAway(target, former);
    try {
      await rename(fresh, target);
    } catch (error) {
      if (had) await rename(former, target);
      throw error;
    }
    await rm(former, { recursive: true, force: true });
    return filled;
  } catch (error) {
    await rm(fresh, { recursive: true, force: true });
    throw error;
  }
}

/** Was there a folder to move? */
async function moveAway(target: string, former: string): Promise<boolean> {
  try {
    await rename(target, former);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false;
    throw error;
  }
}

/** Rejects with OutputRefused for a folder that holds what this program did not write. */
export async function refuseForeign(dir: string): Promise<void> {
  let names: string[];
  try {
    names = await readdir(resolve(dir));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') return;
    if (code === 'ENOTDIR') throw new OutputRefused(`${dir} is a file, not a folder`);
    throw error;
  }
  if (names.length === 0 || names.includes(outputMark)) return;
  throw new OutputRefused(`${dir} holds files that this program did not write: name another folder, or empty it`);
}

/** Plain names with / between them. */
function isInside(path: string): boolean {
  const parts = path.split('/');
  return (
    !path.includes('\\') && !path.includes('\0') && parts.every((part) => part !== '' && part !== '.' && part !== '..')
  );
}
