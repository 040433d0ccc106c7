import { errorsIn } from '../../base/problem/index.js';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Command } from 'commander';
import type { Records, Source } from '../../core/model/index.js';
import { speakAs } from '../../base/units/index.js';
import { openHouse, type OpenHouse } from '../../disk/load/index.js';
import { makeLibrary, type Library } from '../../draft/index.js';
import { typed, type Console } from '../console.js';
import { demoRecords } from '../demo-records.js';
import { checkHouseDir, withHouse } from '../house-options.js';
import { shellWord } from '../shell-word.js';
import { UsageError } from '../usage-error.js';
import { tryRecords, writeUnlessChanged } from '../write-records.js';

/** A house to which records are added. */
export interface Adding {
  readonly open: OpenHouse;
  readonly records: Records;
  /** ` --house DIR` as it was written, for the next command. */
  readonly house: string;
}

/** A command that adds to a house. */
export function addingCommand(name: string): Command {
  return withHouse(new Command(name));
}

/** Opens the house and puts its locale in force; undefined, and told, where its records have errors. */
export async function openToAdd(dir: string, what: string, console: Console): Promise<Adding | undefined> {
  const path = checkHouseDir(dir);
  if (!existsSync(join(path, 'content', 'house.md'))) {
    throw new UsageError(
      `there is no house in ${dir}` +
        typed(
          `: name its folder with --house DIR, or begin one with bookmatch new DIR; a folder named ${what} is written ./${what}`,
          console,
        ),
    );
  }
  const open = openHouse(path);
  const { house, problems } = await open.current();
  if (!house) {
    const errors = errorsIn(problems);
    console.problems(errors);
    return undefined;
  }
  speakAs(house.records.house);
  return { open, records: house.records, house: dir === '.' ? '' : ` --house ${shellWord(dir)}` };
}

/** The conventions that come with the program, in the units in force. */
export async function openLibrary(): Promise<Library> {
  return makeLibrary(await demoRecords());
}

/** Writes records, new ones or in place of others, once it is known that the house with them has no error. False, and told, where it has. */
export async function addRecords(
  { open, records }: Adding,
  written: readonly Source[],
  console: Console,
): Promise<boolean> {
  const { book, problems } = tryRecords(open, records, written, console.today());
  if (!book) {
    console.problems(problems);
    return false;
  }
  return writeUnlessChanged(open.dir, records.sources, written, 'Nothing was written', console);
}
