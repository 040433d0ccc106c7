import { randomBytes } from 'node:crypto';
import { open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { makeFolder } from './make-folder.js';

/** Has a disk keep what a folder holds, once the files in it are kept. Where folders are not opened, as on Windows, the disk sees to that itself. */
export async function syncFolder(path: string): Promise<void> {
  const folder = await open(path, 'r').catch(() => undefined);
  await folder?.sync().catch(() => undefined);
  await folder?.close();
}

/** Writes a file whole or not at all: a reader sees the old bytes or the new, never a part. Makes the folder. Rejects when the
 *  disk refuses; what was there stays, and nothing is left beside it. */
export async function writeAtomically(path: string, bytes: Uint8Array | string): Promise<void> {
  const folder = dirname(path);
  await makeFolder(folder);
  const temporary = join(folder, `.${basename(path)}.${randomBytes(6).toString('hex')}.tmp`);
  try {
    const file = await open(temporary, 'wx');
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(temporary, path);
    await syncFolder(folder);
  } catch (error) {
    await rm(temporary, { force: true });
    throw error;
  }
}
