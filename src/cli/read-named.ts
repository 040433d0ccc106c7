import { createReadStream } from 'node:fs';
import { UsageError } from './usage-error.js';

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'it may not be read',
};

/** Says by the bytes of a file that are read so far why no more of it is to be read; undefined while there may be more. */
type Enough = (soFar: { readonly start: Buffer; readonly length: number }) => string | undefined;

/** A file that was named on the command line; wrong usage when it cannot be read, or when it was `enough`. */
export async function readNamed(path: string, what: string, enough: Enough = () => undefined): Promise<Buffer> {
  const parts: Buffer[] = [];
  let length = 0;
  try {
    for await (const part of createReadStream(path, { highWaterMark: 1 << 20 }) as AsyncIterable<Buffer>) {
      parts.push(part);
      length += part.length;
      const why = enough({ start: parts[0] ?? part, length });
      if (why !== undefined) throw new UsageError(`${what} ${path}: ${why}`);
    }
    return Buffer.concat(parts);
  } catch (error) {
    if (error instanceof UsageError) throw error;
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    throw new UsageError(`${what} ${path}: ${reasons[code] ?? 'it cannot be read'}`);
  }
}
