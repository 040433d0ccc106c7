import { counted } from '../base/units/index.js';
import { Command, Option } from 'commander';
import type { Book } from '../core/book/index.js';
import { checkAgreed, readPhotos, unreadableIssues, type ComposedBook } from '../disk/load/index.js';
import { didYouMean, hasErrors, printableJson, sortProblems, type Problem } from '../base/problem/index.js';
import type { Console } from './console.js';
import { cautionLine, printCautions } from './print-cautions.js';
import { scopeWarnings } from './scope-warnings.js';
import { UsageError } from './usage-error.js';
import { loadFor, reportProblems, withHandoutProblems, withHouseOptions, type HouseOptions } from './house-options.js';

interface CheckOptions extends HouseOptions {
  readonly json?: boolean;
  readonly cautions?: boolean;
  readonly room?: string;
  readonly only?: Problem['severity'];
}

/** `bookmatch check`: every problem in the records, nothing written. */
export function check(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('check'))
    .option('--json', 'print the problems as JSON')
    .option('--cautions', 'list what wants a second look as well: what was seen, what the source says, whom to ask')
    .option('--room <room>', "what is in the record of one room, by its file's name, one by one")
    .addOption(new Option('--only <severity>', 'what is so grave').choices(['error', 'warning', 'notice']))
    .action(async (options: CheckOptions) => {
      const loaded = await loadChecked(options, console);
      const problems = askedFor(loaded.problems, options);
      if (options.json) console.out(`${printableJson(problems)}\n`);
      else reportProblems({ problems }, '', console);
      const hidden = loaded.problems.length - problems.length;
      if (!options.json && hidden > 0) console.error(`${hidden} more outside of what was asked for.\n`);
      if (!options.json && loaded.book) {
        if (options.cautions) console.out(printCautions(loaded.book));
        console.tell(summary(loaded.files, loaded.book));
        const line = cautionLine(loaded.book, options.cautions === true);
        if (options.cautions) console.out(line);
        else console.tell(line);
      }
      done(loaded.book ? 0 : 1);
    });
}

/** The Book and every problem, with each change order computed again from its two versions. */
async function loadChecked(options: CheckOptions, console: Console): Promise<ComposedBook> {
  const { book, ...loaded } = withHandoutProblems(await loadFor(options, console, { marked: false }));
  if (!book) return loaded;
  const rooms = book.rooms.map(({ slug }) => slug);
  if (options.room !== undefined && !rooms.includes(options.room))
    throw new UsageError(
      `--room  there is no room '${options.room}': ${didYouMean(options.room, rooms) ?? `rooms are ${rooms.join(', ')}`}`,
    );
  const each = options.json === true || options.room !== undefined;
  console.doing('figuring the change orders again');
  const stale = await checkAgreed(loaded.open, book.on);
  const issued = await unreadableIssues(loaded.open, [loaded.signed, loaded.before, loaded.since]);
  const { problems: unshown } = await readPhotos(loaded.open);
  const problems = sortProblems([
    ...loaded.problems,
    ...unshown,
    ...issued,
    ...scopeWarnings(book, { each }),
    ...stale,
  ]);
  return { ...loaded, problems, ...(!hasErrors(stale) && { book }) };
}

/** Those that are asked for: of a room's record, of a severity. */
function askedFor(problems: readonly Problem[], { room, only }: CheckOptions): readonly Problem[] {
  const file = room === undefined ? undefined : `content/rooms/${room}.md`;
  return problems.filter(
    (problem) => (file === undefined || problem.file === file) && (only === undefined || problem.severity === only),
  );
}

function summary(files: number, { rooms, options, selections }: Book): string {
  const open = selections.filter((selection) => selection.state === 'open').length;
  const counts = [
    counted(rooms.length, 'room'),
    counted(options.length, 'option'),
    counted(selections.length, 'selection'),
  ];
  return `${counted(files, 'record')} read: ${counts.join(', ')}, ${open} open. No errors.\n`;
}
