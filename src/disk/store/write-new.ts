import { randomBytes } from 'node:crypto';
import { link, open, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { makeFolder } from './make-folder.js';

/** Writes files that are not there yet (path in the folder with / → content): all of them or none, each whole. `mode` says who may read
 *  them. Rejects when one is there after all or the disk refuses; what was there stays, and nothing new is left. */
export async function writeNew(dir: string, files: ReadonlyMap<string, string>, mode?: number): Promise<void> {
  const done: string[] = [];
  try {
    for (const [path, content] of files) {
      const target = join(dir, ...path.split('/'));
      await makeFolder(dirname(target));
      await writeOne(target, content, mode);
      done.push(target);
    }
  } catch (error) {
    for (const target of done) await rm(target, { force: true });
    throw error;
  }
}

/** Written beside it first; unlike a rename, a link takes no other file's place. */
async function writeOne(target: string, content: string, mode?: number): Promise<void> {
  const temporary = join(dirname(target), `.${basename(target)}.${randomBytes(6).toString('hex')}.tmp`);
  try {
    const file = await open(temporary, 'wx', mode);
    try {
      await file.writeFile(content);
      await file.sync();
    } finally {
      await file.close();
    }
    await link(temporary, target);
  } finally {
    await rm(temporary, { force: true });
  }
}
