import type { Command } from 'commander';
import type { House } from '../../core/model/index.js';
import { appendItem, valueAt } from '../../core/records/index.js';
import { didYouMean, sourceOf } from '../../base/problem/index.js';
import { read, unread, withSign, type Reading } from '../../base/units/index.js';
import { draftAllowance, freshSlug, readName, readTyped } from '../../draft/index.js';
import { plainKey, readPlain } from '../../manual/index.js';
import { typed, type Console } from '../console.js';
import { addingCommand, addRecords, openToAdd } from './add-records.js';
import { keysGiven, withKeyFlags } from './key-flags.js';
import { readSigned } from './signed-amount.js';
import { take, valueOf } from './take.js';

interface AllowanceFlags {
  readonly house: string;
  readonly amount?: string;
  readonly for?: string;
  readonly covers?: string;
}

/** Keys that are said by a flag or a question of their own, or made of the name. */
const own: readonly string[] = ['id', 'name', 'amount', 'categories'];

/** `bookmatch new allowance Railing --amount '$9,000' --for railing`: money that the contract sets aside, written into house.md. */
export function newAllowance(console: Console, done: (code: number) => void): Command {
  const command = addingCommand('allowance')
    .description('money that the contract sets aside, in house.md')
    .argument('[name]', 'its name')
    .option('--amount <money>', "a lump sum, such as '$9,000'")
    .option('--for <categories>', 'categories that it pays for, by their file names, with commas');
  return withKeyFlags(command, 'allowance', own).action(async (named: string | undefined, flags: AllowanceFlags) => {
    const keys = keysGiven('allowance', own, { ...flags });
    const adding = await openToAdd(flags.house, 'allowance', console);
    if (!adding) return done(1);
    const { house, categories, sources } = adding.records;
    const slugs = categories.map(({ slug }) => slug);
    const said = await take(
      {
        name: { flag: 'its name', given: named, asks: 'What is it for?', read: (text) => readNew(text, house) },
        amount: {
          flag: '--amount',
          given: flags.amount,
          asks: 'How much?',
          usual: '0',
          read: readTyped.sum,
          // What a form has passes through no shell.
          ...(console.takesCommands && { readGiven: (text) => readSigned(text, readTyped.sum, withSign('9,000')) }),
        },
        categories: {
          flag: '--for',
          given: flags.for,
          asks: 'Which categories does it pay for? With commas',
          example: slugs.slice(0, 3).join(', '),
          read: (text) => readCategories(text, slugs),
        },
        // What is left out stands in the contract sum: nobody's silence says that it is all.
        covers: {
          flag: `--covers ${parts}`,
          given: flags.covers,
          asks: 'What of their cost does it cover? With commas',
          example: parts,
          read: readCovers,
        },
      },
      console.asker(),
    );
    const name = valueOf(readName(said.name));
    const ids = new Set(house.allowances.map(({ id }) => id));
    const id = freshSlug(name, ids, `allowance-${ids.size + 1}`);
    const paid = valueOf(readCategories(said.categories, slugs));
    const covers = valueOf(readCovers(said.covers));
    const item = draftAllowance(id, name, valueOf(readTyped.sum(said.amount)), paid, { ...keys, covers });
    const path = house.origin.file;
    const before = sources.find((source) => source.path === path)?.text ?? '';
    const text = appendItem(before, 'allowances', item, ['levels']);
    if (!(await addRecords(adding, [{ path, text }], console))) return done(1);
    console.tell(
      `${path}  allowance ${id}\n${onIt(id, console)}\n${typed(`\n  bookmatch check${adding.house}\n`, console)}`,
    );
    done(0);
  });
}

const coversKey = plainKey('allowance', 'covers');
const parts = (coversKey.choices ?? []).join(',');
const readCovers = (text: string): Reading<unknown> => readPlain(coversKey, text);

/** What comes next for it to pay for anything, in the words of whoever reads. */
function onIt(id: string, { takesCommands }: Pick<Console, 'takesCommands'>): string {
  return takesCommands
    ? `Write allowance: ${id} in the selections that it pays for.`
    : `It pays for nothing yet. In the record of a room, allowance: ${id} puts a choice on it.`;
}

/** A name that no allowance has. One that is there gets its amount where it stands: a second one would leave it at what it is. */
function readNew(text: string, { allowances, origin }: House): Reading<string> {
  const name = readName(text);
  const wanted = text.trim().toLowerCase();
  const index = allowances.findIndex((one) => one.name.toLowerCase() === wanted || one.id === wanted);
  const there = allowances[index];
  if (!name.ok || !there) return name;
  const path = ['allowances', index, 'amount'];
  const { source, line } = sourceOf(origin, path);
  const amount = String(valueAt(origin.text, path));
  return unread(`there is an allowance '${there.name}' already, ${amount}`, `write its amount in ${source}:${line}`);
}

function readCategories(text: string, known: readonly string[]): Reading<readonly string[]> {
  const named = [...new Set(text.split(',').map((one) => one.trim()))].filter((one) => one !== '');
  if (named.length === 0) return unread('no category is named', `write one or more of ${known.join(', ')}`);
  const wrong = named.find((one) => !known.includes(one));
  if (wrong === undefined) return read(named);
  return unread(`there is no category '${wrong}'`, didYouMean(wrong, known) ?? `categories are ${known.join(', ')}`);
}
