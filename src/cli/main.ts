import { constants } from 'node:os';
import { getSystemErrorMap } from 'node:util';
import { Command, CommanderError } from 'commander';
import type { Console, Terminal } from './console.js';
import { programVersion } from '../disk/program/index.js';
import { tellingHowItIsCalled } from './called-as.js';
import { inLocale, usualLocale } from '../base/units/index.js';
import { plainConsole } from './plain-console.js';
import { finishInterrupted } from './finish-begun.js';
import { UsageError } from './usage-error.js';

/** A command as `--help` lists it. Its file is read only when it is asked for: most of the program is behind one of them. */
interface Listed {
  readonly name: string;
  readonly does: string;
  readonly load: () => Promise<(console: Console, done: (code: number) => void) => Command>;
}

/** Every command, in the order of `--help`. */
export const commands: readonly Listed[] = [
  {
    name: 'new',
    does: 'make a house folder from a few answers, or one more record of a house',
    load: async () => (await import('./new.js')).makeNew(run),
  },
  {
    name: 'rooms',
    does: 'draft records of rooms from an architect’s model (ISO 16739, .ifc); nothing that is there is changed',
    load: async () => (await import('./rooms.js')).rooms,
  },
  {
    name: 'take-in',
    does: "hold a supplier's list of prices against the options of a category, and write what it changes",
    load: async () => (await import('./take-in.js')).takeIn,
  },
  {
    name: 'check',
    does: 'list every problem in the records: where, what, and what to do',
    load: async () => (await import('./check.js')).check,
  },
  {
    name: 'build',
    does: 'make the book and the handouts: a site to open from disk, and PDFs to print and sign',
    load: async () => (await import('./build.js')).build,
  },
  {
    name: 'desk',
    does: 'open the book in a browser and write in it: choices, records, versions; for this machine alone',
    load: async () => (await import('./desk.js')).makeDesk(run),
  },
  {
    name: 'handout',
    does: "make one trade's handout: a folder of pages with its PDF, without any money",
    load: async () => (await import('./handout.js')).handout,
  },
  {
    name: 'publish',
    does: 'write a folder with what one audience may see, and nothing else: the owners, the trades, or one trade',
    load: async () => (await import('./publish.js')).publish,
  },
  {
    name: 'portfolio',
    does: 'look over many houses: what is late, due, open, over its allowance and not signed, what is most urgent first',
    load: async () => (await import('./portfolio.js')).portfolio,
  },
  {
    name: 'lay',
    does: 'print the house as its rooms lay it out: levels, walls between rooms, outside faces, what does not fit',
    load: async () => (await import('./lay.js')).lay,
  },
  {
    name: 'takeoff',
    does: 'print quantities, supplies and the order list',
    load: async () => (await import('./takeoff.js')).takeoff,
  },
  {
    name: 'schedule',
    does: 'print one of the schedules of the house',
    load: async () => (await import('./schedule.js')).schedule,
  },
  {
    name: 'calendar',
    does: 'list decide-by dates; show what moves when a milestone slips',
    load: async () => (await import('./calendar.js')).calendar,
  },
  {
    name: 'alternatives',
    does: 'hold sets of choices for the whole house beside today: totals, allowances, days, weight, cautions',
    load: async () => (await import('./alternatives.js')).alternatives,
  },
  {
    name: 'take-over',
    does: 'write the choices of an alternative into the rooms’ records',
    load: async () => (await import('./take-over.js')).takeOver,
  },
  {
    name: 'consider',
    does: 'consider one more option in a place: it is written into the room’s record',
    load: async () => (await import('./consider-more.js')).considerMore,
  },
  {
    name: 'note',
    does: 'write a remark for the trade at a place, or a paragraph into what a room’s record tells',
    load: async () => (await import('./note.js')).note,
  },
  {
    name: 'photo',
    does: 'put a photograph to an option, without what tells where and when it was taken; or take it away',
    load: async () => (await import('./photo.js')).photo,
  },
  {
    name: 'choose',
    does: 'take in choice slips, or choose straight: the choices are written into the rooms’ records',
    load: async () => (await import('./choose.js')).choose,
  },
  {
    name: 'compare',
    does: 'show what changed between two versions of the house, and what it costs',
    load: async () => (await import('./compare.js')).compare,
  },
  {
    name: 'print-change',
    does: 'print a proposed change order to sign, into issued/',
    load: async () => (await import('./print-change.js')).printChange,
  },
  {
    name: 'approve',
    does: 'record that a proposed change order is approved',
    load: async () => (await import('./decide.js')).approve,
  },
  {
    name: 'decline',
    does: 'record that a proposed change order is declined',
    load: async () => (await import('./decide.js')).decline,
  },
  {
    name: 'void',
    does: 'take back a change order that is not decided, or an issue that is not signed: issue-2',
    load: async () => (await import('./decide.js')).makeVoid,
  },
  {
    name: 'issue',
    does: 'make the next numbered version of the book: record, snapshot and PDF, committed to git',
    load: async () => (await import('./issue.js')).issue,
  },
  {
    name: 'sign',
    does: "sign a printed book with a certificate, in the owner's or the builder's field",
    load: async () => (await import('./sign.js')).sign,
  },
  {
    name: 'certificate',
    does: 'make a certificate to sign with, for whoever has none; it vouches only for itself',
    load: async () => (await import('./certificate.js')).certificate,
  },
  {
    name: 'verify',
    does: 'say whether a signed book is whole, who signed it and when, and whether it is an issue of the house',
    load: async () => (await import('./verify.js')).verify,
  },
  {
    name: 'accept',
    does: 'record a signed book: who signed which issue, with the file kept in issued/',
    load: async () => (await import('./accept.js')).accept,
  },
  {
    name: 'explain',
    does: 'say what a key of a record means, how it is written, who reads it, and what the house has there',
    load: async () => (await import('./explain.js')).explain,
  },
  {
    name: 'manual',
    does: 'write the manual as pages: how-to, glossary, what every key of a record means',
    load: async () => (await import('./manual.js')).manual,
  },
  {
    name: 'editor',
    does: 'let an editor complete and explain the keys of records, and mark what is wrong, as a language server',
    load: async () => (await import('./editor.js')).editor,
  },
  {
    name: 'completion',
    does: 'print the script that lets a shell complete commands, flags and names of records',
    load: async () => (await import('./completion.js')).makeCompletion(makeProgram),
  },
];

/** As every `--help` ends. */
const exitCodes =
  '\nExit code: 0 it is done; 1 the records have errors, or something does not hold; 2 it was asked for wrongly, or the disk refused.';

/** Runs one command line and answers its exit code, as `exitCodes` has them. */
export function run(argv: readonly string[], terminal: Terminal): Promise<number> {
  return inLocale(usualLocale, () => tellingHowItIsCalled(terminal, (own) => runCommand(argv, own)));
}

async function runCommand(argv: readonly string[], terminal: Terminal): Promise<number> {
  let code = 0;
  let isQuiet = false;
  const plain = plainConsole(terminal);
  const console: Console = { ...plain, tell: (text) => (isQuiet ? undefined : plain.out(text)) };
  const done = (result: number): void => {
    code = result;
  };
  const asked = argv.find((word) => word !== 'help' && !word.startsWith('-'));
  const program = await makeProgram(asked, console, done);
  program.hook('preAction', async (_, command) => {
    const options = command.opts<{ readonly quiet?: boolean; readonly house?: unknown; readonly out?: unknown }>();
    isQuiet = options.quiet === true;
    // What these write is named by their first word.
    const [first] = ['publish', 'new'].includes(command.name()) ? (command.processedArgs as readonly unknown[]) : [];
    await finishInterrupted({ ...options, ...(first !== undefined && { out: first }) }, console);
  });
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

/** The program with all its commands, of which the one that is asked for is loaded. */
async function makeProgram(
  asked: string | undefined,
  console: Console,
  done: (code: number) => void,
): Promise<Command> {
  const program = new Command('bookmatch')
    .description("Makes a custom house's selections and specification book from its records")
    .version(await programVersion(), '--version', 'print the version of the program')
    .exitOverride()
    // What stands behind a command is its own, so that a command within it may have a flag of the same name.
    .enablePositionalOptions()
    .configureOutput({ writeOut: (text) => console.out(text), writeErr: (text) => console.error(text) })
    .configureHelp({ subcommandTerm: (command) => command.name() })
    .showHelpAfterError('Run bookmatch --help to see the commands.')
    .addHelpText('afterAll', exitCodes);
  for (const { name, does, load } of commands) {
    const command = name === asked ? (await load())(console, done) : new Command(name);
    program.addCommand(command.description(does));
  }
  answerFor(program, program);
  return program;
}

/** Commands within commands end and print as the program does, and each can be quiet. */
function answerFor(program: Command, within: Command): void {
  for (const command of within.commands) {
    command
      .exitOverride()
      .configureOutput(program.configureOutput())
      .option('--quiet', 'print problems and what was asked for, and nothing else');
    answerFor(program, command);
  }
}

/** What the disk refused, in a sentence: no folder there, no permission, no room. Undefined for any other error. */
function diskRefusal(error: unknown): string | undefined {
  if (!(error instanceof Error) || !('errno' in error) || !('syscall' in error)) return undefined;
  const { errno, path, dest } = error as NodeJS.ErrnoException & { readonly dest?: string };
  const [, words] = getSystemErrorMap().get(errno ?? 0) ?? [];
  if (words === undefined || path === undefined) return undefined;
  // A file is written beside its place first.
  const named = (dest ?? path).replace(/([\\/])\.([^\\/]+)\.[0-9a-f]{12}\.tmp$/u, '$1$2');
  const hint = errno === -constants.errno.EBUSY ? '. Another program is at it: try again when that is done' : '';
  return `${named} cannot be written or read: ${words}${hint}`;
}
