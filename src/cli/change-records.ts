import type { Book } from '../core/book/index.js';
import type { Records, Source } from '../core/model/index.js';
import type { Problem } from '../base/problem/index.js';
import { speakAs, type IsoDate } from '../base/units/index.js';
import { bookOf, openHouse } from '../disk/load/index.js';
import type { Console } from './console.js';
import { checkHouseDir, dayOf, reportProblems, type HouseOptions } from './house-options.js';
import { tryRecords, writeUnlessChanged } from './write-records.js';

/** A house whose records are to be written in: its Book of the day, and its records. */
interface Changing {
  readonly dir: string;
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
  const { written, tells, already } = change({ dir: open.dir, book, records, on });
  const changed = written.filter(({ path, text }) => records.sources.find((one) => one.path === path)?.text !== text);
  if (changed.length === 0) {
    console.tell(`${already}\n`);
    return 0;
  }
  const tried = tryRecords(open, records, changed, on);
  if (!tried.book) return refuse(tried.problems);
  if (!(await writeUnlessChanged(open.dir, records.sources, changed, 'Nothing was written', console))) return 1;
  console.tell(`${tells}\n${changed.map(({ path }) => `${path}\n`).join('')}`);
  return 0;
}
