import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Source } from '../core/model/index.js';
import { writeAtomically } from '../disk/store/index.js';

/** Paths among those to be written whose files are no longer as they were read: changed, gone, or there meanwhile. */
export async function changedOnDisk(
  dir: string,
  sources: readonly Source[],
  written: readonly Source[],
): Promise<readonly string[]> {
  const before = new Map(sources.map(({ path, text }) => [path, text]));
  const changed: string[] = [];
  for (const { path } of written)
    if ((await readFile(join(dir, path), 'utf8').catch(() => undefined)) !== before.get(path)) changed.push(path);
  return changed;
}

/** Where the disk refuses one of them, those that were written are as they were before it is told; new ones are gone again. */
export async function writeAllOrNone(
  dir: string,
  sources: readonly Source[],
  written: readonly Source[],
): Promise<void> {
  const before = new Map(sources.map(({ path, text }) => [path, text]));
  const done: string[] = [];
  try {
    for (const { path, text } of written) {
      await writeAtomically(join(dir, path), text);
      done.push(path);
    }
  } catch (error) {
    for (const path of done) {
      const text = before.get(path);
      await (text === undefined ? rm(join(dir, path)) : writeAtomically(join(dir, path), text));
    }
    throw error;
  }
}
