import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Command } from 'commander';
import { handoutProblems } from '../handout/index.js';
import { errorsIn, hasErrors, sortProblems } from '../base/problem/index.js';
import { bookOf, openHouse, type ComposedBook, type LoadedBook, type OpenHouse } from '../disk/load/index.js';
import { counted, joinWords, parseDay, speakAs } from '../base/units/index.js';
import type { Console } from './console.js';
import { UsageError } from './usage-error.js';

export interface HouseOptions {
  readonly house: string;
  readonly on?: string;
}

/** A command on a house, whatever the day is. */
export function withHouse(command: Command): Command {
  return command.option('--house <dir>', 'the house folder: the one that holds content/', '.');
}

/** The two options that most commands on a house take. */
export function withHouseOptions(command: Command): Command {
  return withDay(withHouse(command));
}

/** A command that computes for a day. */
export function withDay(command: Command): Command {
  return command.option('--on <day>', 'compute for this day, YYYY-MM-DD (default: today)');
}

/** A command's house, with the Book that its options ask for. */
export type LoadedFor = LoadedBook & { readonly open: OpenHouse };

/** Loads the Book that the options ask for, marked with what is signed unless told otherwise. A wrong day or a folder that is not there is wrong usage. */
export async function loadFor(
  { house, on }: HouseOptions,
  console: Console,
  wish: { readonly marked?: boolean } = {},
): Promise<LoadedFor> {
  const open = openHouse(checkHouseDir(house));
  console.doing('reading the records');
  const loaded = await bookOf(open, dayOf(on, console), wish);
  if (loaded.book) speakAs(loaded.book.house);
  return { ...loaded, open };
}

/** The house folder's path, if there is such a folder. */
export function checkHouseDir(house: string): string {
  const dir = resolve(house);
  if (!existsSync(dir)) throw new UsageError(`there is no folder ${house}`);
  return dir;
}

/** The day asked for, else today. */
export function dayOf(on: string | undefined, console: Console): string {
  if (on === undefined) return console.today();
  const day = parseDay(on);
  if (!day.ok)
    throw new UsageError(`--on ${on}: ${day.why}; ${day.fix ?? 'write it as YYYY-MM-DD, such as 2026-04-20'}`);
  return day.value;
}

/** Adds what handouts leave out of the records. Of records with a name that no handout may print nothing is made. */
export function withHandoutProblems(loaded: LoadedFor): LoadedFor {
  if (!loaded.book) return loaded;
  const { book, ...rest } = loaded;
  const found = handoutProblems(book);
  const problems = sortProblems([...loaded.problems, ...found]);
  return { ...rest, problems, ...(!hasErrors(found) && { book }) };
}

/** Of a command that is not about problems: what stops it in full, and of the rest how many there are. `check` tells all of them. */
export function reportBriefly({ problems }: Pick<ComposedBook, 'problems'>, outcome: string, console: Console): void {
  const errors = errorsIn(problems);
  reportProblems({ problems: errors }, outcome, console);
  const others = (['warning', 'notice'] as const).flatMap((severity) => {
    const count = problems.filter((problem) => problem.severity === severity).length;
    return count === 0 ? [] : [counted(count, severity)];
  });
  if (others.length > 0) console.error(`${joinWords(others)} in the records: bookmatch check tells them.\n`);
}

/** Writes problems to the error stream, with what became of the command. */
export function reportProblems({ problems }: Pick<ComposedBook, 'problems'>, outcome: string, console: Console): void {
  console.problems(problems, outcome);
}
