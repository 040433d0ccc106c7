import { getSystemErrorMap } from 'node:util';
import { Command, CommanderError } from 'commander';
import { alternatives } from './alternatives.js';
import { build } from './build.js';
import { calendar } from './calendar.js';
import { check } from './check.js';
import { accept } from './accept.js';
import { approve, decline, makeVoid } from './decide.js';
import { issue } from './issue.js';
import { lay } from './lay.js';
import { makeNew } from './new.js';
import { printChange } from './print-change.js';
import { schedule } from './schedule.js';
import { sign } from './sign.js';
import { handout } from './handout.js';
import { takeOver } from './take-over.js';
import { takeoff } from './takeoff.js';
import { compare } from './compare.js';
import { verify } from './verify.js';
import type { Console } from './console.js';
import { inLocale, usualLocale } from '../base/units/index.js';
import { UsageError } from './usage-error.js';

/** Every command, in the order of `--help`. */
const commands = [
  makeNew(run),
  check,
  build,
  handout,
  lay,
  takeoff,
  schedule,
  calendar,
  alternatives,
  takeOver,
  compare,
  printChange,
  approve,
  decline,
  makeVoid,
  issue,
  sign,
  verify,
  accept,
];

/** Runs one command line and answers its exit code: 0 fine, 1 the records have errors or something else does not hold, 2 wrong usage. */
export function run(argv: readonly string[], console: Console): Promise<number> {
  return inLocale(usualLocale, () => runCommand(argv, console));
}

async function runCommand(argv: readonly string[], console: Console): Promise<number> {
  let code = 0;
  const program = new Command('bookmatch')
    .description("Makes a custom house's selections and specification book from its records")
    .exitOverride()
    .configureOutput({ writeOut: (text) => console.out(text), writeErr: (text) => console.error(text) })
    .showHelpAfterError('Run bookmatch --help to see the commands.');
  for (const command of commands) {
    program.addCommand(
      command(console, (result) => {
        code = result;
      }),
      {},
    );
  }
  program.commands.forEach((command) => command.exitOverride().configureOutput(program.configureOutput()));
  try {
    await program.parseAsync(argv, { from: 'user' });
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (error instanceof UsageError) {
      console.error(`${error.message}\n`);
      return 2;
    }
    const refused = diskRefusal(error);
    if (refused === undefined) throw error;
    console.error(`${refused}\n`);
    return 2;
  }
  return code;
}

/** What the disk refused, in a sentence: no folder there, no permission, no room. Undefined for any other error. */
function diskRefusal(error: unknown): string | undefined {
  if (!(error instanceof Error) || !('errno' in error) || !('syscall' in error)) return undefined;
  const { errno, path, dest } = error as NodeJS.ErrnoException & { readonly dest?: string };
  const [, words] = getSystemErrorMap().get(errno ?? 0) ?? [];
  if (words === undefined || path === undefined) return undefined;
  return `${dest ?? path} cannot be written or read: ${words}`;
}
