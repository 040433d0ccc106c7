import { Command } from 'commander';
import { lookUp } from '../core/book/index.js';
import { selectionId } from '../core/model/index.js';
import { bookOf, openHouse } from '../disk/load/index.js';
import { choiceText } from '../table/index.js';
import { speakAs } from '../base/units/index.js';
import { nameChoice } from './choose/name-choice.js';
import { considerWhere } from './consider.js';
import type { Console } from './console.js';
import { checkHouseDir, dayOf, reportProblems, withHouseOptions, type HouseOptions } from './house-options.js';
import { UsageError } from './usage-error.js';
import { tryRecords, writeUnlessChanged } from './write-records.js';

/** `bookmatch consider ROOM PLACE OPTION`: one more option to choose from in a place, by names as pages print them. What is chosen there stays chosen. */
export function considerMore(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('consider'))
    .argument('<room>', 'the room')
    .argument('<place>', 'its category, its place or both, as a page prints them')
    .argument('<option>', 'the option of the category that is to be considered there, too')
    .addHelpText('after', "\nFor example:\n  bookmatch consider 'Great room' 'Stone facing' 'Cast ledge'\n")
    .action(async (room: string, place: string, option: string, options: HouseOptions) =>
      done(await considerNamed([room, place, option], options, console)),
    );
}

async function considerNamed(
  words: readonly [string, string, string],
  options: HouseOptions,
  console: Console,
): Promise<number> {
  const open = openHouse(checkHouseDir(options.house));
  const on = dayOf(options.on, console);
  const { book, problems } = await bookOf(open, on);
  const { house } = await open.current();
  const refuse = (found: typeof problems): number => {
    reportProblems({ problems: found }, 'Nothing was written.', console);
    return 1;
  };
  if (!book || !house) return refuse(problems);
  const { records } = house;
  speakAs(records.house);
  const { selection: id, now } = nameChoice(book, words);
  if (now === null || now === 'none') throw new UsageError(`'${words[2]}' is no option: nothing was written`);
  const where = choiceText(id, lookUp(book));
  const written = considerWhere([now], (room, selection) => selectionId(room, selection) === id, records);
  const changed = written.filter(({ path, text }) => records.sources.find((one) => one.path === path)?.text !== text);
  if (changed.length === 0) {
    console.tell(`${where}: ${now} is considered already.\n`);
    return 0;
  }
  const tried = tryRecords(open, records, changed, on);
  if (!tried.book) return refuse(tried.problems);
  if (!(await writeUnlessChanged(open.dir, records.sources, changed, 'Nothing was written', console))) return 1;
  console.tell(`${where}: ${now} is considered, too.\n${changed.map(({ path }) => `${path}\n`).join('')}`);
  return 0;
}
