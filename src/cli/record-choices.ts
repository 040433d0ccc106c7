import type { Book } from '../core/book/index.js';
import { selectionId, type Records, type Room, type Source } from '../core/model/index.js';
import { onlyChose, writeChoices, writeOverride, type NewChoice } from '../core/records/index.js';
import { placeWritten, type Path } from '../base/problem/index.js';
import { workingTree } from '../disk/history/index.js';
import type { OpenHouse } from '../disk/load/index.js';
import type { IsoDate } from '../base/units/index.js';
import type { Console } from './console.js';
import { tryRecords, writeUnlessChanged } from './write-records.js';

/** What is chosen for a selection, by whom, when, and by which slip. */
export type Choice = Omit<NewChoice, 'path'>;

/** By the id of the selection. */
export type Choices = ReadonlyMap<string, Choice>;

/** Choices as they were tried: records that say them, and the Book of the house with them. */
export interface TriedChoices {
  readonly written: readonly Source[];
  readonly book: Book;
}

/** Writes choices into the text of the rooms' records, and of the house's for its finish sets, and composes the house with them for a day; undefined where it would
 *  have an error, which is told. */
export function tryChoices(
  open: OpenHouse,
  records: Records,
  choices: Choices,
  on: IsoDate,
  console: Console,
): TriedChoices | undefined {
  const written = writtenRecords(records, choices);
  const { book, records: after, problems } = tryRecords(open, records, written, on);
  if (!book || !after) {
    console.problems(problems, 'Nothing was chosen.');
    return undefined;
  }
  checkWritten(records, after, choices);
  return { written, book };
}

/** Throws where records that were written and read again say anything else than the choices, or do not say them: a fault of the program. */
export function checkWritten(before: Records, after: Records, choices: Choices): void {
  const said = new Map(
    after.rooms.flatMap(({ slug, selections }) => selections.map((one) => [selectionId(slug, one), one] as const)),
  );
  const isSaid = [...choices].every(([id, { option, on, by, slip }]) => {
    const { chosen, chosenOn, chosenBy, slip: read } = said.get(id) ?? {};
    const wanted = option === null ? [] : [option, on, by, slip];
    return said.has(id) && [chosen, chosenOn, chosenBy, read].every((value, index) => value === wanted[index]);
  });
  if (!isSaid || !onlyChose(before, after, new Set(choices.keys())))
    throw new Error('a choice was not written as meant; nothing was written');
}

/** Writes the records of choices that were tried: all of them, or none; answers their paths. Where a record is no longer as it was read, or, before a commit, holds
 *  somebody's own changes, that is told and nothing is written. */
export async function writeTried(
  open: OpenHouse,
  { sources }: Pick<Records, 'sources'>,
  { written }: TriedChoices,
  { isCommitted }: { readonly isCommitted: boolean },
  console: Console,
): Promise<readonly string[] | undefined> {
  const paths = written.map(({ path }) => path);
  const own = isCommitted ? await uncommitted(open.dir, paths) : [];
  if (own.length > 0) {
    console.error(`Nothing was chosen: not committed yet are changes in ${own.join(', ')}. Commit them first.\n`);
    return undefined;
  }
  return (await writeUnlessChanged(open.dir, sources, written, 'Nothing was chosen', console)) ? paths : undefined;
}

interface Made {
  readonly room: Room;
  readonly at: readonly string[];
  readonly path: Path;
  /** Absent: nothing is chosen here now. */
  readonly choice?: Choice;
  /** Absent: the selection stands in the room's own record. */
  readonly set?: { readonly file: string; readonly key: string };
}

type Chosen = Made & { readonly choice: Choice };

/** The records that are chosen in, with the choices. What all rooms of a finish set choose alike goes into the set; what some of them choose
 *  otherwise, into their own records. */
function writtenRecords({ rooms, sources }: Records, choices: Choices): readonly Source[] {
  const texts = new Map(sources.map(({ path, text }) => [path, text]));
  const all = rooms.flatMap((room) => room.selections.map((selection) => madeFor(room, selection, choices)));
  const isAlike = ({ set, choice }: Chosen): boolean =>
    all.every((other) => other.set?.key !== set?.key || other.choice?.option === choice.option);
  const chosen = all.filter((one): one is Chosen => one.choice !== undefined);
  const inRecord = chosen.filter((one) => !one.set || isAlike(one));
  const fileOf = ({ set, room }: Chosen): string => set?.file ?? room.origin.file;
  for (const file of new Set(inRecord.map(fileOf))) {
    const own = inRecord.filter((one) => fileOf(one) === file);
    const choicesHere = once(own).map(({ path, choice }) => ({ ...choice, path }));
    texts.set(file, writeChoices(texts.get(file) ?? '', choicesHere));
  }
  const before = new Map(sources.map(({ path, text }) => [path, text]));
  for (const { room, set, at, path, choice } of chosen.filter((each) => !inRecord.includes(each))) {
    const { file } = room.origin;
    const house = before.get(set?.file ?? '') ?? '';
    texts.set(file, writeOverride(texts.get(file) ?? '', house, { ...choice, path, at }));
  }
  return sources.flatMap(({ path, text }) => {
    const now = texts.get(path) ?? text;
    return now === text ? [] : [{ path, text: now }];
  });
}

/** What is chosen for a selection, and where it is written. */
function madeFor(room: Room, selection: Room['selections'][number], choices: Choices): Made {
  const { origin, path } = placeWritten(room.origin, selection.path);
  const isFromSet = selection.finishSet !== undefined;
  const choice = choices.get(selectionId(room.slug, selection));
  return {
    room,
    at: selection.at,
    path,
    ...(choice && { choice }),
    ...(isFromSet && { set: { file: origin.file, key: path.join('.') } }),
  };
}

/** Rooms that have a selection from one set write it once. */
function once(made: readonly Chosen[]): readonly Chosen[] {
  return [...new Map(made.map((one) => [one.path.join('.'), one])).values()];
}

/** Records to be written that hold somebody's own changes: these would go into the commit of the choice. */
async function uncommitted(dir: string, written: readonly string[]): Promise<readonly string[]> {
  const tree = await workingTree(dir);
  if (!tree.ok) return [];
  return written.filter((path) => tree.changed.some((changed) => changed.endsWith(path)));
}
