import { readFile } from 'node:fs/promises';
import { UsageError } from './usage-error.js';

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'it may not be read',
};

/** A file that was named on the command line; wrong usage when it cannot be read. */
export async function readNamed(path: string, what: string): Promise<Buffer> {
  try {
    return await readFile(path);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    throw new UsageError(`${what} ${path}: ${reasons[code] ?? 'it cannot be read'}`);
  }
}
