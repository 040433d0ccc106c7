import type { Book } from '../core/book/index.js';
import { selectionId, type Records, type Room, type Source } from '../core/model/index.js';
import { writeChoices, writeOverride, type NewChoice } from '../core/records/index.js';
import { placeWritten } from '../base/problem/index.js';
import { workingTree } from '../disk/history/index.js';
import type { OpenHouse } from '../disk/load/index.js';
import type { IsoDate } from '../base/units/index.js';
import type { Console } from './console.js';
import { changedOnDisk, tryRecords, writeAllOrNone } from './write-records.js';

/** What is chosen, by the id of the selection: a slug, or `none`. */
export type Choices = ReadonlyMap<string, string>;

interface Recorded {
  /** The records that were written, and the Book with the choices in it. */
  readonly files: readonly string[];
  readonly book: Book;
}

/** Writes choices into the records of the rooms, and of the house for its finish sets: all of them, or none. They are tried first: where the house with them would have an
 *  error, or a record is no longer as it was read, that is told and nothing is written. */
export async function recordChoices(
  open: OpenHouse,
  records: Records,
  choices: Choices,
  { on, by }: { readonly on: IsoDate; readonly by: string },
  console: Console,
): Promise<Recorded | undefined> {
  const written = writtenRecords(records, choices, { on, by });
  const texts = new Map(written.map(({ path, text }) => [path, text]));
  const { book, problems } = tryRecords(open, records, written, on);
  if (!book) {
    console.problems(problems, 'Nothing was chosen.');
    return undefined;
  }
  const own = await uncommitted(open.dir, texts);
  if (own.length > 0) {
    console.error(`Nothing was chosen: not committed yet are changes in ${own.join(', ')}. Commit them first.\n`);
    return undefined;
  }
  const changed = await changedOnDisk(open.dir, records.sources, written);
  if (changed.length > 0) {
    console.error(`Nothing was chosen: ${changed.join(', ')} changed on disk meanwhile. Try again.\n`);
    return undefined;
  }
  await writeAllOrNone(open.dir, records.sources, written);
  return { files: written.map(({ path }) => path), book };
}

interface Made extends NewChoice {
  readonly room: Room;
  readonly at: readonly string[];
  /** Absent: the selection stands in the room's own record. */
  readonly set?: { readonly file: string; readonly key: string };
}

/** The records that are chosen in, with the choices. What all rooms of a finish set choose alike goes into the set; what some of them choose
 *  otherwise, into their own records. */
function writtenRecords(
  { rooms, sources }: Records,
  choices: Choices,
  made: { readonly on: IsoDate; readonly by: string },
): readonly Source[] {
  const texts = new Map(sources.map(({ path, text }) => [path, text]));
  const all = rooms.flatMap((room) => room.selections.map((selection) => madeFor(room, selection, choices, made)));
  const isAlike = ({ set, option }: Made): boolean =>
    all.every((other) => other.set?.key !== set?.key || other.option === option);
  const chosen = all.filter(({ option }) => option !== '');
  const inRecord = chosen.filter((one) => !one.set || isAlike(one));
  const fileOf = ({ set, room }: Made): string => set?.file ?? room.origin.file;
  for (const file of new Set(inRecord.map(fileOf))) {
    const own = inRecord.filter((one) => fileOf(one) === file);
    texts.set(file, writeChoices(texts.get(file) ?? '', once(own)));
  }
  const before = new Map(sources.map(({ path, text }) => [path, text]));
  for (const one of chosen.filter((each) => !inRecord.includes(each))) {
    const { file } = one.room.origin;
    texts.set(file, writeOverride(texts.get(file) ?? '', before.get(one.set?.file ?? '') ?? '', one));
  }
  return sources.flatMap(({ path, text }) => {
    const now = texts.get(path) ?? text;
    return now === text ? [] : [{ path, text: now }];
  });
}

/** What is chosen for a selection, and where it is written; `option` is empty where nothing is. */
function madeFor(
  room: Room,
  selection: Room['selections'][number],
  choices: Choices,
  made: { readonly on: IsoDate; readonly by: string },
): Made {
  const { origin, path } = placeWritten(room.origin, selection.path);
  const isFromSet = selection.finishSet !== undefined;
  return {
    room,
    at: selection.at,
    path,
    option: choices.get(selectionId(room.slug, selection)) ?? '',
    ...made,
    ...(isFromSet && { set: { file: origin.file, key: path.join('.') } }),
  };
}

/** Rooms that have a selection from one set write it once. */
function once(made: readonly Made[]): readonly Made[] {
  return [...new Map(made.map((one) => [one.path.join('.'), one])).values()];
}

/** Records to be written that hold somebody's own changes: these would go into the commit of the choice. */
async function uncommitted(dir: string, written: ReadonlyMap<string, string>): Promise<readonly string[]> {
  const tree = await workingTree(dir);
  if (!tree.ok) return [];
  return [...written.keys()].filter((path) => tree.changed.some((changed) => changed.endsWith(path)));
}
