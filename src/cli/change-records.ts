import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Book } from '../core/book/index.js';
import type { Records, Source } from '../core/model/index.js';
import type { Problem } from '../base/problem/index.js';
import { speakAs, type IsoDate } from '../base/units/index.js';
import { bookOf, openHouse } from '../disk/load/index.js';
import { liesInside, readFileInside, writeAtomically } from '../disk/store/index.js';
import type { Console } from './console.js';
import { checkHouseDir, dayOf, reportProblems, type HouseOptions } from './house-options.js';
import { UsageError } from './usage-error.js';
import { tryRecords, writeUnlessChanged } from './write-records.js';

/** A house whose records are to be written in: its Book of the day, and its records. */
interface Changing {
  readonly book: Book;
  readonly records: Records;
  readonly on: IsoDate;
}

/** Records with what is to be said, and how that is told. */
export interface Change {
  readonly written: readonly Source[];
  /** Before the paths that were written. */
  readonly tells: string;
  /** Where all of it is said already. */
  readonly already: string;
  /** Files that the records name: those that come are there before the records are, those that go are taken away behind them. Paths are of the house. */
  readonly files?: { readonly come: ReadonlyMap<string, Uint8Array>; readonly go: readonly string[] };
}

/** Writes records in which a command says something, all or none, once it is known that the house with them has no error; answers the exit
 *  code. `change` may refuse by a UsageError. */
export async function changeRecords(
  options: HouseOptions,
  console: Console,
  change: (house: Changing) => Change,
): Promise<number> {
  const open = openHouse(checkHouseDir(options.house));
  const on = dayOf(options.on, console);
  const { book, problems } = await bookOf(open, on);
  const { house } = await open.current();
  const refuse = (found: readonly Problem[]): number => {
    reportProblems({ problems: found }, 'Nothing was written.', console);
    return 1;
  };
  if (!book || !house) return refuse(problems);
  const { records } = house;
  speakAs(records.house);
  const { written, tells, already, files } = change({ book, records, on });
  const changed = written.filter(({ path, text }) => records.sources.find((one) => one.path === path)?.text !== text);
  if (changed.length === 0) {
    console.tell(`${already}\n`);
    return 0;
  }
  const tried = tryRecords(open, records, changed, on);
  if (!tried.book) return refuse(tried.problems);
  const isWritten = await withFiles(open.dir, files?.come ?? new Map(), () =>
    writeUnlessChanged(open.dir, records.sources, changed, 'Nothing was written', console),
  );
  if (!isWritten) return 1;
  for (const path of files?.go ?? []) await rm(join(open.dir, path), { force: true });
  console.tell(`${tells}\n${changed.map(({ path }) => `${path}\n`).join('')}`);
  return 0;
}

/** Writes files, then does what needs them; where that is not done, those that were not there before are gone again. */
async function withFiles(
  dir: string,
  files: ReadonlyMap<string, Uint8Array>,
  write: () => Promise<boolean>,
): Promise<boolean> {
  const fresh: string[] = [];
  let isDone = false;
  try {
    for (const [path, bytes] of files) {
      if (!(await liesInside(dir, path)))
        throw new UsageError(`${path} would lie outside of the house, by a link on its way. Nothing was written.`);
      if ((await readFileInside(dir, path)) === undefined) fresh.push(path);
      await writeAtomically(join(dir, path), bytes);
    }
    isDone = await write();
  } finally {
    if (!isDone) for (const path of fresh) await rm(join(dir, path), { force: true });
  }
  return isDone;
}
