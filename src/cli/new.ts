import { resolve } from 'node:path';
import { Command } from 'commander';
import type { Console } from './console.js';
import { demoRecords } from './demo-records.js';
import type { Run } from './demo/tell-history.js';
import { newAllowance } from './new/allowance.js';
import { newCategory } from './new/category.js';
import { houseQuestions } from './new/house-questions.js';
import { newHouse, refusing, type HouseFlags } from './new/new-house.js';
import { eachGiven } from './each-given.js';
import { newMilestone } from './new/milestone.js';
import { newOption } from './new/option.js';
import { newRoom } from './new/room.js';
import { newSlots } from './new/slots.js';
import { newTrade } from './new/trade.js';

const more = [newRoom, newOption, newCategory, newTrade, newAllowance, newMilestone, newSlots];

/** `bookmatch new DIR`: a house of one's own; `new --demo DIR`: the demo house under git, with its history; `new room` and its like: one
 *  more record of a house. */
export function makeNew(run: Run) {
  return (console: Console, done: (code: number) => void): Command => {
    const command = new Command('new')
      .enablePositionalOptions()
      .usage('DIR [options]   or   new room|option|category|trade|allowance|milestone|slots …')
      .argument('<dir>', 'a folder that is not there yet, or empty')
      .option('--demo', 'the demo house: issues, change orders and a signed book, made by the commands themselves')
      .option('--yes', 'ask nothing: take what usually holds where no flag says otherwise')
      .option(
        '--room <name-and-size>',
        `a room with its size, such as "Kitchen 14' x 12'"; again for each`,
        eachGiven,
        [],
      )
      .option('--from <file>', 'rooms from an architect’s model: an IFC file (ISO 16739) in STEP text');
    for (const { flag, about } of houseQuestions) command.option(flag, about);
    command.addHelpText(
      'after',
      `\nA folder that is named room, option, category, trade, allowance, milestone or slots is written ./room and so on.\n` +
        'Where nobody can be asked, the flags for name, place, units, currency and rooms have to be there.\n',
    );
    for (const each of more) command.addCommand(each(console, done));
    return command.action(async (dir: string, flags: HouseFlags & { readonly demo?: boolean }) => {
      if (!flags.demo) return done(await newHouse(dir, flags, console));
      await newDemo(dir, run, console);
      done(0);
    });
  };
}

async function newDemo(dir: string, run: Run, console: Console): Promise<void> {
  const target = resolve(dir);
  await refusing(dir);
  const { demoPassphrase } = await import('./demo/sign-issue.js');
  const { tellHistory } = await import('./demo/tell-history.js');
  await tellHistory(target, await demoRecords(), run, console);
  console.tell(
    `${target}  the demo house, with its history in git\n` +
      `Its throw-away certificates owner.p12 and builder.p12 have the passphrase ${demoPassphrase}.\n` +
      `  bookmatch compare issue-2 --house ${dir} --on 2026-04-20\n` +
      `  bookmatch verify ${dir}/issued/002-signed-owner-builder.pdf --house ${dir}\n` +
      `  bookmatch build --house ${dir} --on 2026-04-20\n`,
  );
}
