import { existsSync } from 'node:fs';
import { Command } from 'commander';
import type { Book } from '../core/book/index.js';
import type { Records } from '../core/model/index.js';
import { workingTree } from '../disk/history/index.js';
import { bookOf, compareBooks, openHouse, recordsDigest, type OpenHouse } from '../disk/load/index.js';
import { personNamed } from '../signoff/index.js';
import { holdAgainst, type Held } from '../slip/index.js';
import { printMoneyMove, speakAs, type IsoDate } from '../base/units/index.js';
import { choiceCommit, commitCommand } from './choose/commit-choices.js';
import { differingText, heldText, refusedText, signedText, slipsText } from './choose/choose-text.js';
import { nameChoice } from './choose/name-choice.js';
import { readSlips, type ReadSlip } from './choose/read-slips.js';
import { wantedBy, type Wanted, type WantedTogether } from './choose/wanted.js';
import { commitWritten } from './commit-written.js';
import { typed, type Console } from './console.js';
import { checkHouseDir, dayOf, reportProblems, withHouseOptions, type HouseOptions } from './house-options.js';
import { printComparison } from './print-comparison.js';
import { tryChoices, writeTried, type Choice } from './record-choices.js';
import { UsageError } from './usage-error.js';
import { tryRecords } from './write-records.js';

interface ChooseOptions extends HouseOptions {
  readonly by?: string;
  readonly dryRun?: boolean;
  readonly exceptConflicts?: boolean;
  readonly commit?: boolean;
}

type Done = (code: number) => void;

/** `bookmatch choose mail.txt`: takes in a choice slip, or several; `bookmatch choose ROOM PLACE OPTION --by owner` chooses straight. What stood when a slip
 *  was made must stand still, else that is told, and nothing is written. */
export function choose(console: Console, done: Done): Command {
  return withHouseOptions(new Command('choose'))
    .argument('<room>', 'the room; or a choice slip: a text with its code line, or - for standard input')
    .argument('[place]', 'its category, its place or both, as a page prints them; or one more slip')
    .argument('[option]', 'the option, none to decline, or open to leave it open again; or one more slip')
    .argument('[slips...]', 'more slips')
    .option(
      '--by <person>',
      'who chooses, where no slip says so: a name or a role among the people of content/house.md',
    )
    .option('--dry-run', 'show what it would change, and write nothing')
    .option('--except-conflicts', 'leave out what cannot be taken, and take the rest')
    .option('--commit', 'commit it to git, with who chose as the author')
    .addHelpText(
      'after',
      "\nFor example:\n  bookmatch choose slip.txt --dry-run\n  bookmatch choose 'Great room' 'Stone facing' 'Thin natural ledge' --by owner\n",
    )
    .action(
      async (
        room: string,
        place: string | undefined,
        option: string | undefined,
        more: readonly string[],
        options: ChooseOptions,
      ) => {
        const words = [room, place, option, ...more].filter((word) => word !== undefined);
        checkWords(words, options);
        done(await chooseAsked(words, options, console));
      },
    );
}

async function chooseAsked(words: readonly string[], options: ChooseOptions, console: Console): Promise<number> {
  const open = openHouse(checkHouseDir(options.house));
  const on = dayOf(options.on, console);
  const { book, problems } = await bookOf(open, on);
  const { house } = await open.current();
  if (!book || !house) {
    reportProblems({ problems }, 'Nothing was chosen.', console);
    return 1;
  }
  const { records } = house;
  speakAs(records.house);
  const choosing: Choosing = { open, book, records, on, options, console };
  const asked = await askedFor(words, choosing);
  if (!asked) return 1;
  const judged = judge(asked, book);
  say(slipsText(asked.slips, recordsDigest(records.sources)), choosing);
  say(heldText(judged.held, book, asked.slips.length > 1), choosing);
  if (judged.against !== '') console.error(`${judged.against}\n`);
  if (judged.against !== '' && options.exceptConflicts !== true) {
    console.error(`Nothing was chosen.${typed(' --except-conflicts leaves these out and takes the rest.', console)}\n`);
    return 1;
  }
  if (judged.taken.length > 0) return take(judged.taken, choosing);
  console.tell(judged.against === '' ? 'All of it is chosen already.\n' : 'Nothing is left to take.\n');
  return judged.against === '' ? 0 : 1;
}

/** A house with what the command was asked on it. */
interface Choosing {
  readonly open: OpenHouse;
  readonly book: Book;
  readonly records: Records;
  readonly on: IsoDate;
  readonly options: ChooseOptions;
  readonly console: Console;
}

/** What is shown is what was asked for where nothing is to be written. */
function say(text: string, { options, console }: Choosing): void {
  if (text !== '') (options.dryRun === true ? console.out : console.tell)(`${text}\n`);
}

/** Shows what choices come to, and writes them unless that is all. */
async function take(taken: readonly Wanted[], choosing: Choosing): Promise<number> {
  const { open, book, records, on, options, console } = choosing;
  const choices = new Map(taken.map((one) => [one.choice.selection, choiceOf(one)]));
  const tried = tryChoices(open, records, choices, on, console);
  if (!tried) return 1;
  // Composed as the house with the choices is, from its records alone.
  const before = tryRecords(open, records, [], on).book ?? book;
  const labels = { from: 'the records', to: 'with these choices' };
  say(`Total ${printMoneyMove(before.money.today, tried.book.money.today)}\n`, choosing);
  const comparison = compareBooks(before, tried.book, labels, open);
  if (console.compared) console.compared(comparison);
  else say(printComparison(comparison), choosing);
  if (options.dryRun === true) {
    console.tell('Nothing was written.\n');
    return 0;
  }
  const isCommitted = options.commit === true;
  const files = await writeTried(open, records, tried, { isCommitted }, console);
  if (!files) return 1;
  console.tell(`Written:\n${files.map((file) => `${file}\n`).join('')}${signedText(taken, book)}`);
  const commit = choiceCommit(taken, records.house.people);
  if (isCommitted) return commitWritten(open.dir, files, commit.message, console, commit.author);
  if (console.takesCommands && (await workingTree(open.dir)).ok)
    console.tell(`Next, in the house folder:\n  ${commitCommand(commit, files)}\n`);
  return 0;
}

/** Words that are neither slips nor a choice are wrong usage. */
function checkWords(words: readonly string[], { by }: ChooseOptions): void {
  const [first = ''] = words;
  if (by === undefined && words.length === 3 && first !== '-' && !existsSync(first))
    throw new UsageError('--by is missing: who chooses? A name or a role among the people of content/house.md');
  if (by !== undefined && words.length !== 3)
    throw new UsageError('--by goes with a room, a place and an option; a slip says itself who chose');
}

type Asked = WantedTogether & { readonly slips: readonly ReadSlip[] };

/** What slips or the words themselves want; undefined where that a slip cannot be read was told. */
async function askedFor(
  words: readonly string[],
  { book, records: { house }, on, options: { by }, console }: Choosing,
): Promise<Asked | undefined> {
  if (by === undefined) {
    const slips = await readSlips(words, house, console);
    return slips && { ...wantedBy(slips), slips };
  }
  const person = personNamed(house.people, by);
  if (!person.ok) throw new UsageError(`--by: ${person.why}`);
  const [room = '', place = '', option = ''] = words;
  const choice = nameChoice(book, [room, place, option]);
  return { wanted: [{ choice, by: person.name, on, slips: [] }], differing: [], slips: [] };
}

interface Judged {
  readonly held: readonly (readonly [Wanted, Held])[];
  readonly taken: readonly Wanted[];
  /** What cannot be taken, and why; empty where all can. */
  readonly against: string;
}

function judge({ wanted, differing }: Asked, book: Book): Judged {
  const hold = holdAgainst(book);
  const all = wanted.map(({ choice, on }) => hold(choice, on));
  const held = wanted.flatMap((one, index) => {
    const its = all[index];
    return its ? [[one, its] as const] : [];
  });
  const taken = held.flatMap(([one, { is }]) => (is === 'open to it' ? [one] : []));
  return { held, taken, against: conflictsText(all, differing, book) };
}

function choiceOf({ choice: { now }, by, on, slips: [slip] }: Wanted): Choice {
  return { option: now, by, on, ...(slip && { slip: slip.short }) };
}

function conflictsText(held: readonly Held[], differing: readonly (readonly Wanted[])[], book: Book): string {
  const refused = refusedText(held, book);
  const parts = [
    ...(refused === '' ? [] : [`These cannot be taken:\n\n${refused}`]),
    ...(differing.length === 0 ? [] : [`The slips differ:\n\n${differingText(differing, book)}`]),
  ];
  return parts.join('\n');
}
