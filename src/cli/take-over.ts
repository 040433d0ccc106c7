import { Command } from 'commander';
import { lookUp, type Book, type BookHouseAlternative, type BookSelection } from '../core/book/index.js';
import { bookOf, openHouse } from '../disk/load/index.js';
import { orderedWords, standing } from '../slip/index.js';
import { choiceText } from '../table/index.js';
import { personNamed } from '../signoff/index.js';
import { counted, lower, printDay, printMoneyMove, speakAs } from '../base/units/index.js';
import { alternativeNamed } from './alternative-named.js';
import { commitWritten } from './commit-written.js';
import type { Console } from './console.js';
import { checkHouseDir, dayOf, reportProblems, withHouseOptions, type HouseOptions } from './house-options.js';
import { tryChoices, writeTried } from './record-choices.js';
import { UsageError } from './usage-error.js';

interface TakeOverOptions extends HouseOptions {
  readonly by: string;
  readonly openOnly?: boolean;
}

/** `bookmatch take-over plain-house --by "The owners"`: what an alternative names becomes the choice, in the rooms' records.
 *  Where the rest of an allowance stands meanwhile stays open. */
export function takeOver(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('take-over'))
    .argument('<alternative>', 'its name: see bookmatch alternatives')
    .requiredOption('--by <person>', 'who chooses: a name or a role among the people of content/house.md')
    .option('--open-only', 'only where nothing is chosen yet')
    .action(async (name: string, options: TakeOverOptions) => {
      const open = openHouse(checkHouseDir(options.house));
      const on = dayOf(options.on, console);
      const { book, problems } = await bookOf(open, on, { marked: false });
      const { house } = await open.current();
      if (!book || !house) {
        reportProblems({ problems }, 'Nothing was chosen.', console);
        return done(1);
      }
      speakAs(house.records.house);
      const person = personNamed(house.records.house.people, options.by);
      if (!person.ok) throw new UsageError(`--by: ${person.why}`);
      const alternative = alternativeNamed(name, book.alternatives);
      const { choices, ordered } = takenFrom(alternative, book, options.openOnly === true);
      if (ordered.length > 0) {
        console.error(orderedText(ordered, book));
        return done(1);
      }
      if (choices.size === 0) {
        const what = options.openOnly ? 'Nothing is open of what' : 'All is chosen already that';
        console.tell(`${what} ${alternative.name} names.\n`);
        return done(0);
      }
      const made = new Map([...choices].map(([id, option]) => [id, { option, on, by: person.name }]));
      const tried = tryChoices(open, house.records, made, on, console);
      const files = tried && (await writeTried(open, house.records, tried, { isCommitted: true }, console));
      if (!tried || !files) return done(1);
      const message = `${alternative.name}: ${counted(choices.size, 'choice')} by ${person.name}`;
      console.tell(
        `${message}, ${printDay(on)}\nTotal ${printMoneyMove(book.money.today, tried.book.money.today)}\n${restText(alternative, book)}${files.join('\n')}\n`,
      );
      done(await commitWritten(open.dir, [...files, alternative.source], message, console));
    });
}

/** What an alternative names that is not chosen yet; what is released or ordered otherwise stands in the way. */
function takenFrom(
  { lines }: BookHouseAlternative,
  book: Book,
  openOnly: boolean,
): { readonly choices: ReadonlyMap<string, string>; readonly ordered: readonly BookSelection[] } {
  const look = lookUp(book);
  const changed = lines.flatMap(({ selection: id, option, isRest, isOpen }) => {
    const selection = look.selection(id);
    if (!selection || isRest || (openOnly && !isOpen)) return [];
    const slug = option?.slice(selection.category.length + 1) ?? 'none';
    return slug === standing(selection) ? [] : [{ selection, slug }];
  });
  return {
    choices: new Map(changed.map(({ selection: { id }, slug }) => [id, slug])),
    ordered: changed.flatMap(({ selection }) => (selection.facts.length > 0 ? [selection] : [])),
  };
}

function orderedText(ordered: readonly BookSelection[], book: Book): string {
  const look = lookUp(book);
  const lines = ordered.map(({ id, source, line, facts }) => {
    return `${source}:${line}: ${choiceText(id, look)} is ${lower(orderedWords({ facts }))}`;
  });
  const fix =
    'Change what is ordered in the room’s record, with instead-of; or take over only what is open: --open-only.';
  return `${lines.join('\n')}\n\nNothing was chosen. ${fix}\n`;
}

/** What the alternative's figure had at its standard, and stays open. */
function restText({ lines }: BookHouseAlternative, book: Book): string {
  const look = lookUp(book);
  const rest = lines.filter(({ isRest }) => isRest).map(({ selection }) => choiceText(selection, look));
  if (rest.length === 0) return '';
  return `Still open on the same allowances, and in the alternative’s total at its standard: ${rest.join('; ')}\n`;
}
