import { mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { makeFolder } from './make-folder.js';
import { besideFolder } from './replaced.js';
import { OutputRefused } from './write-tree.js';

/** Rejects with OutputRefused, in words that follow its name, for a folder that cannot become a new one: a file, or one that has something in it. */
export async function refuseTaken(dir: string): Promise<void> {
  // An empty path would be the folder that one stands in.
  if (dir.trim() === '') throw new OutputRefused('no folder is named: write its name, or . for this one');
  let names: readonly string[];
  try {
    names = await readdir(resolve(dir));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') return;
    if (code === 'ENOTDIR') throw new OutputRefused(`${dir} is a file, or lies in one: name another folder`);
    throw error;
  }
  if (names.length > 0) throw new OutputRefused(`${dir} is not empty: name another folder`);
}

/** Makes a folder of files (path with / → text), all of them or none: they are written beside it, `finish` does there what is left to do,
 *  and only then does it take its name. A folder that is there and empty stays the same folder, as somebody may stand in it. Rejects as
 *  `refuseTaken` does, and when the disk refuses. */
export async function writeNewFolder(
  dir: string,
  files: ReadonlyMap<string, string>,
  finish: (folder: string) => Promise<void>,
): Promise<void> {
  const target = resolve(dir);
  await refuseTaken(dir);
  const made = await makeFolder(dirname(target));
  const { fresh } = besideFolder(target);
  try {
    await mkdir(fresh);
    for (const [path, text] of files) {
      const full = join(fresh, ...path.split('/'));
      await makeFolder(dirname(full));
      await writeFile(full, text);
    }
    await finish(fresh);
    await takeName(fresh, target);
  } catch (error) {
    await rm(fresh, { recursive: true, force: true });
    if (made !== undefined) await rm(made, { recursive: true, force: true });
    throw error;
  }
}

async function takeName(fresh: string, target: string): Promise<void> {
  const isThere = await readdir(target).then(
    () => true,
    () => false,
  );
  if (!isThere) return rename(fresh, target);
  const moved: string[] = [];
  try {
    for (const name of await readdir(fresh)) {
      await rename(join(fresh, name), join(target, name));
      moved.push(name);
    }
  } catch (error) {
    for (const name of moved) await rm(join(target, name), { recursive: true, force: true });
    throw error;
  }
  await rm(fresh, { recursive: true, force: true });
}
