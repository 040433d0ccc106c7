import { readFile, realpath } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { noted } from './reads.js';

/** Bytes of a file inside a folder, or undefined when it is not there or a link leads out of the folder. */
export const readFileInside = noted('file', readInside, (bytes) => (bytes ? [bytes] : []));

async function readInside(dir: string, path: string): Promise<Uint8Array | undefined> {
  const root = await realpath(dir).catch(() => undefined);
  const real = await realpath(join(dir, path)).catch(() => undefined);
  if (root === undefined || real === undefined || !real.startsWith(`${root}${sep}`)) return undefined;
  return readFile(real).catch(() => undefined);
}
