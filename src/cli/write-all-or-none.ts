import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Source } from '../core/model/index.js';
import { writeAtomically } from '../disk/store/index.js';

/** Writes records of a house folder, whose other records are `sources`. Where the disk refuses one of them, those that were written are as
 *  they were before it is told. */
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
      await (text === undefined ? rm(join(dir, path), { force: true }) : writeAtomically(join(dir, path), text));
    }
    throw error;
  }
}
