import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Book } from '../core/book/index.js';
import { selectionId, type Records, type Source } from '../core/model/index.js';
import { writeChoices, type NewChoice } from '../core/records/index.js';
import { printProblems } from '../base/problem/index.js';
import { workingTree } from '../disk/history/index.js';
import type { OpenHouse } from '../disk/load/index.js';
import type { IsoDate } from '../base/units/index.js';
import type { Console } from './console.js';
import { writeAllOrNone } from './write-all-or-none.js';

/** What is chosen, by the id of the selection: a slug, or `none`. */
export type Choices = ReadonlyMap<string, string>;

interface Recorded {
  /** The records that were written, and the Book with the choices in it. */
  readonly files: readonly string[];
  readonly book: Book;
}

/** Writes choices into the rooms' records: all of them, or none. They are tried first: where the house with them would have an
 *  error, or a record is no longer as it was read, that is told and nothing is written. */
export async function recordChoices(
  open: OpenHouse,
  records: Records,
  choices: Choices,
  { on, by }: { readonly on: IsoDate; readonly by: string },
  console: Console,
): Promise<Recorded | undefined> {
  const written = writtenRooms(records, choices, { on, by });
  const texts = new Map(written.map(({ path, text }) => [path, text]));
  const house = open.read(records.sources.map(({ path, text }) => ({ path, text: texts.get(path) ?? text })));
  const { book, problems } = open.compose(house, on);
  if (!book) {
    const errors = problems.filter(({ severity }) => severity === 'error');
    console.error(printProblems(errors, { color: console.color, outcome: 'Nothing was chosen.' }));
    return undefined;
  }
  const own = await uncommitted(open.dir, texts);
  if (own.length > 0) {
    console.error(`Nothing was chosen: not committed yet are changes in ${own.join(', ')}. Commit them first.\n`);
    return undefined;
  }
  const changed = await changedOnDisk(open.dir, records.sources, texts);
  if (changed.length > 0) {
    console.error(`Nothing was chosen: ${changed.join(', ')} changed on disk meanwhile. Try again.\n`);
    return undefined;
  }
  await writeAllOrNone(open.dir, records.sources, written);
  return { files: written.map(({ path }) => path), book };
}

/** The records of the rooms that are chosen for, with the choices in them. */
function writtenRooms(
  { rooms, sources }: Records,
  choices: Choices,
  made: { readonly on: IsoDate; readonly by: string },
): readonly Source[] {
  const before = new Map(sources.map(({ path, text }) => [path, text]));
  return rooms.flatMap(({ slug, selections, origin: { file } }): readonly Source[] => {
    const own = selections.flatMap((selection): readonly NewChoice[] => {
      const option = choices.get(selectionId(slug, selection));
      return option === undefined ? [] : [{ path: selection.path, option, ...made }];
    });
    const text = before.get(file);
    return own.length === 0 || text === undefined ? [] : [{ path: file, text: writeChoices(text, own) }];
  });
}

/** Records to be written that hold somebody's own changes: these would go into the commit of the choice. */
async function uncommitted(dir: string, written: ReadonlyMap<string, string>): Promise<readonly string[]> {
  const tree = await workingTree(dir);
  if (!tree.ok) return [];
  return [...written.keys()].filter((path) => tree.changed.some((changed) => changed.endsWith(path)));
}

async function changedOnDisk(
  dir: string,
  sources: readonly Source[],
  written: ReadonlyMap<string, string>,
): Promise<readonly string[]> {
  const changed: string[] = [];
  for (const { path, text } of sources)
    if (written.has(path) && (await readFile(join(dir, path), 'utf8')) !== text) changed.push(path);
  return changed;
}
