import { Command } from 'commander';
import { counted } from '../base/units/index.js';
import { readHouseFolder } from '../disk/store/index.js';
import { explain as answer, type Explained, type Explanation } from '../manual/index.js';
import type { Console } from './console.js';
import { demoRecords } from './demo-records.js';
import { checkHouseDir, withHouse } from './house-options.js';
import { UsageError } from './usage-error.js';

/** How many values of the house are shown. */
const shown = 5;

/** `bookmatch explain option.waste`: what a key of a record means, and what the house says there. */
export function explain(console: Console, done: (code: number) => void): Command {
  return withHouse(new Command('explain'))
    .argument('<key>', 'such as option.waste, ceiling-board.face, chosen-by, or room for all of its keys')
    .action(async (key: string, { house }: { readonly house: string }) => {
      const own = (await readHouseFolder(checkHouseDir(house))).files;
      // The demo house has examples of what this house does not have.
      const other = await demoRecords();
      const [first = ''] = key.split('.');
      const whole = answer(first, { own, other }).is === 'group' ? first : 'room';
      console.out(explanationText(answer(key, { own, other }), key, whole));
      done(0);
    });
}

function explanationText(explanation: Explanation, question: string, whole: string): string {
  switch (explanation.is) {
    case 'keys':
      return explanation.keys.map(keyText).join('\n');
    case 'several': {
      const lines = explanation.keys.map(({ name, meaning }) => `  ${name}  ${meaning}\n`);
      return `'${question}' is a key of ${lines.length} things:\n${lines.join('')}\nOne of them: bookmatch explain ${explanation.keys[0]?.name ?? ''}\n`;
    }
    case 'group':
      return explanation.groups
        .map(({ title, meaning, keys }) => {
          const lines = keys.map(
            ({ path, isNeeded, meaning: tells }) => `  ${path.join('.')}${isNeeded ? ' (needed)' : ''}  ${tells}`,
          );
          return `${title}: ${meaning}\n${lines.join('\n')}\n`;
        })
        .join('\n');
    case 'unknown': {
      const meant = explanation.nearest === undefined ? '' : `: did you mean '${explanation.nearest}'?`;
      throw new UsageError(`no record has a key '${question}'${meant}\nKeys of a record: bookmatch explain ${whole}`);
    }
  }
}

function keyText({ name, meaning, form, isNeeded, readBy, place, example, here }: Explained): string {
  const more = here.length > shown ? [`    and ${counted(here.length - shown, 'place')} more`] : [];
  return [
    `${name}${isNeeded ? ' (needed)' : ''}`,
    `  ${meaning}`,
    `  Written as ${form}.`,
    ...(example === undefined ? [] : [`  Example: ${example}`]),
    `  In ${place}.`,
    ...(readBy.length === 0 ? [] : [`  Read by ${readBy.join(', ')}.`]),
    ...(here.length === 0 ? [] : ['  In this house:']),
    ...here.slice(0, shown).map(({ file, at, text }) => `    ${file}:${at.line}:${at.column}  ${text}`),
    ...more,
    '',
  ].join('\n');
}
