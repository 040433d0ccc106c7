import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Book } from '../core/book/index.js';
import type { Records, Source } from '../core/model/index.js';
import { errorsIn, type Problem } from '../base/problem/index.js';
import { counted, type IsoDate } from '../base/units/index.js';
import type { OpenHouse } from '../disk/load/index.js';
import { oneAtATime, writeTogether } from '../disk/store/index.js';
import type { Console } from './console.js';

/** The Book and the records of a house with records in it, new ones or in place of its own; without a Book, the errors that there would be. */
export function tryRecords(
  open: OpenHouse,
  { sources }: Pick<Records, 'sources'>,
  written: readonly Source[],
  on: IsoDate,
): { readonly book?: Book; readonly records?: Records; readonly problems: readonly Problem[] } {
  const records = new Map([...sources, ...written].map((source) => [source.path, source]));
  const read = open.read([...records.values()]);
  const { book, problems } = open.compose(read, on);
  return {
    problems: errorsIn(problems),
    ...(book && { book }),
    ...(read.house && { records: read.house.records }),
  };
}

/** Writes records, all or none, unless one of them is no longer as it was read: then that is told, with what became of the command. */
export async function writeUnlessChanged(
  dir: string,
  sources: readonly Source[],
  written: readonly Source[],
  outcome: string,
  console: Console,
): Promise<boolean> {
  const changed = await oneAtATime(dir, async () => {
    const differ = await changedOnDisk(dir, sources, written);
    const files = new Map(written.map(({ path, text }) => [path, text]));
    if (differ.length === 0) await writeTogether(dir, files, { what: recordsWords(written) }, () => Promise.resolve());
    return differ;
  });
  if (changed.length > 0) console.error(`${outcome}: ${changed.join(', ')} changed on disk meanwhile. Try again.\n`);
  return changed.length === 0;
}

function recordsWords(written: readonly Source[]): string {
  const [first] = written;
  return first && written.length === 1 ? first.path : `what was written into ${counted(written.length, 'record')}`;
}

/** Paths among those to be written whose files are no longer as they were read: changed, gone, or there meanwhile. */
async function changedOnDisk(
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
