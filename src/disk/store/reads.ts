import { AsyncLocalStorage } from 'node:async_hooks';
import { createHash } from 'node:crypto';
import type { ReadBefore } from './read-folder.js';

/** What was asked of a folder on disk, and what the disk answered, as SHA-256. */
export interface Read {
  readonly how: string;
  /** Below the folder; empty: the folder itself. */
  readonly path: string;
  readonly digest: string;
}

/** `before` is what was read earlier and is read again only if it was written since: it changes no answer. */
type Reader<Answer> = (dir: string, path: string, before?: ReadBefore) => Promise<Answer>;

const digesters = new Map<string, (dir: string, path: string) => Promise<string>>();
const traces = new AsyncLocalStorage<Map<string, Read>>();

/** A way to read from a house's folder, known by its name. While reads are traced each is noted with its answer, of which `says` tells all, so that there is
 *  no second list of what a command reads. */
export function noted<Answer>(
  how: string,
  read: Reader<Answer>,
  says: (answer: Answer) => readonly (string | Uint8Array)[],
): Reader<Answer> {
  const digestOf = (answer: Answer): string => {
    const hash = createHash('sha256');
    for (const part of says(answer)) hash.update(`${Buffer.byteLength(part)} `).update(part);
    return hash.digest('hex');
  };
  digesters.set(how, async (dir, path) => digestOf(await read(dir, path)));
  return async (dir, path, before) => {
    const answer = await read(dir, path, before);
    const trace = traces.getStore();
    if (trace) note(trace, { how, path, digest: digestOf(answer) });
    return answer;
  };
}

/** What was answered in two ways has no digest that an answer can have. */
function note(trace: Map<string, Read>, read: Read): void {
  const name = `${read.how} ${read.path}`;
  const before = trace.get(name);
  trace.set(name, before && before.digest !== read.digest ? { ...read, digest: '' } : read);
}

/** Notes what is read meanwhile, in order. */
export async function traceReads<T>(
  run: () => Promise<T>,
): Promise<{ readonly answer: T; readonly reads: readonly Read[] }> {
  const trace = new Map<string, Read>();
  const answer = await traces.run(trace, run);
  return { answer, reads: [...trace.values()] };
}

/** Would the disk answer all of it the same now? */
export async function readsAlike(dir: string, reads: readonly Read[]): Promise<boolean> {
  for (const { how, path, digest } of reads) if ((await digesters.get(how)?.(dir, path)) !== digest) return false;
  return true;
}
