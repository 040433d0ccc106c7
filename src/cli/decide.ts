import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Command } from 'commander';
import type { Problem } from '../base/problem/index.js';
import { documentPath, loadHouse } from '../disk/load/index.js';
import {
  decideChangeOrder,
  decidedVerbs,
  personNamed,
  voidIssue,
  type Decided,
  type DecidedState,
  type Decision,
} from '../signoff/index.js';
import { printDay, speakAs } from '../base/units/index.js';
import type { Records } from '../core/model/index.js';
import { commitTogether } from './commit-together.js';
import type { Console } from './console.js';
import { checkHouseDir, dayOf, withHouse, type HouseOptions } from './house-options.js';
import { UsageError } from './usage-error.js';
import { recordText } from './record-text.js';

interface DecideOptions extends HouseOptions {
  readonly by: string;
  readonly why?: string;
}

type Done = (code: number) => void;

/** `bookmatch approve N`: the change order is agreed, and moves the contract. */
export const approve = (console: Console, done: Done): Command => deciding('approve', 'approved', console, done);

/** `bookmatch decline N`: the change order is refused, and keeps its number. */
export const decline = (console: Console, done: Done): Command => deciding('decline', 'declined', console, done);

/** `bookmatch void N` or `void issue-N`: it was a mistake, and keeps its number. */
export const makeVoid = (console: Console, done: Done): Command =>
  deciding('void', 'void', console, done).requiredOption(
    '--why <words>',
    'why, in words that are understood in ten years',
  );

/** A command that sets one decision down in one record. */
function deciding(name: string, state: DecidedState, console: Console, done: Done): Command {
  const command = new Command(name)
    .argument('<number>', 'the number of the change order')
    .requiredOption('--by <person>', 'who decided: a name or a role among the people of content/house.md')
    .option('--on <day>', 'the day of the decision, YYYY-MM-DD (default: today)');
  return withHouse(command).action(async (number: string, options: DecideOptions) => {
    const dir = checkHouseDir(options.house);
    const on = dayOf(options.on, console);
    const { house, problems } = await loadHouse(dir);
    const refuse = (found: readonly Problem[]): void => {
      console.problems(found, 'Nothing was recorded.');
      done(1);
    };
    if (!house) return refuse(problems);
    speakAs(house.records.house);
    const person = personNamed(house.records.house.people, options.by);
    if (!person.ok) throw new UsageError(`--by: ${person.why}`);
    if (options.why?.trim() === '') throw new UsageError('--why is empty');
    const decision = { by: person.name, on, ...(options.why !== undefined && { why: options.why }) };
    const { words, file, paper, decided } = decide(house.records, number, state, decision);
    if (!decided.ok) return refuse([decided.problem]);
    const files = new Map([[file, recordText(house.records, file, decided.text)]]);
    const told = `${words} ${decidedVerbs[state]} on ${printDay(on)} by ${person.name}\n${join(dir, file)}\n`;
    // The paper that was signed is kept with the decision.
    const papers = paper !== undefined && existsSync(join(dir, paper)) ? [paper] : [];
    done(await commitTogether(dir, files, `${words} ${decidedVerbs[state]}`, told, console, papers));
  });
}

function decide(
  { changes, issues }: Records,
  named: string,
  state: DecidedState,
  decision: Decision,
): { readonly words: string; readonly file: string; readonly paper?: string; readonly decided: Decided } {
  const [, of, digits = ''] = /^(issue-)?0*([1-9]\d*)$/u.exec(named) ?? [];
  if (digits === '')
    throw new UsageError(`'${named}' is no number of a change order${state === 'void' ? ', nor issue-N' : ''}`);
  const number = Number(digits);
  const missing = (what: string, count: number): UsageError =>
    new UsageError(`there is no ${what} ${number}; ${count === 0 ? 'there are none yet' : `the last is ${count}`}`);
  if (of !== undefined) {
    const issue = issues.find((one) => one.number === number);
    if (!issue) throw missing('issue', issues.at(-1)?.number ?? 0);
    if (state !== 'void')
      throw new UsageError('an issue is not approved but signed: bookmatch sign, then bookmatch accept');
    return { words: `Issue ${number}`, file: issue.origin.file, decided: voidIssue(issue, decision) };
  }
  const order = changes.find((one) => one.number === number);
  if (!order) throw missing('change order', changes.at(-1)?.number ?? 0);
  return {
    words: `Change order ${number}`,
    file: order.origin.file,
    paper: documentPath({ is: 'change order', number }),
    decided: decideChangeOrder(order, state, decision, { changes, issues }),
  };
}
