import { Command } from 'commander';
import { lookUp } from '../core/book/index.js';
import { selectionId } from '../core/model/index.js';
import { choiceText } from '../table/index.js';
import { changeRecords } from './change-records.js';
import { nameChoice } from './choose/name-choice.js';
import { considerWhere } from './consider.js';
import type { Console } from './console.js';
import { withHouseOptions, type HouseOptions } from './house-options.js';
import { UsageError } from './usage-error.js';

/** `bookmatch consider ROOM PLACE OPTION`: one more option to choose from in a place, by names as pages print them. What is chosen there stays chosen. */
export function considerMore(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('consider'))
    .argument('<room>', 'the room')
    .argument('<place>', 'its category, its place or both, as a page prints them')
    .argument('<option>', 'the option of the category that is to be considered there, too')
    .addHelpText('after', "\nFor example:\n  bookmatch consider 'Great room' 'Stone facing' 'Cast ledge'\n")
    .action(async (room: string, place: string, option: string, options: HouseOptions) =>
      done(
        await changeRecords(options, console, ({ book, records }) => {
          const { selection: id, now } = nameChoice(book, [room, place, option]);
          if (now === null || now === 'none') throw new UsageError(`'${option}' is no option: nothing was written`);
          const look = lookUp(book);
          const where = choiceText(id, look);
          const name = look.option(look.selection(id)?.category ?? '', now)?.name ?? now;
          return {
            written: considerWhere([now], (of, selection) => selectionId(of, selection) === id, records),
            tells: `${where}: ${name} is considered, too.`,
            already: `${where}: ${name} is considered already.`,
          };
        }),
      ),
    );
}
