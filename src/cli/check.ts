import { counted } from '../base/units/index.js';
import { Command } from 'commander';
import { lookUp, type Book } from '../core/book/index.js';
import { checkAgreed, unreadableIssues, type ComposedBook } from '../disk/load/index.js';
import { hasErrors, problemIn, sortProblems, type Problem } from '../base/problem/index.js';
import type { Console } from './console.js';
import { cautionLine, printCautions } from './print-cautions.js';
import { loadFor, reportProblems, withHandoutProblems, withHouseOptions, type HouseOptions } from './house-options.js';

/** `bookmatch check`: every problem in the records, nothing written. */
export function check(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('check'))
    .option('--json', 'print the problems as JSON')
    .option('--cautions', 'list what wants a second look as well: what was seen, what the source says, whom to ask')
    .action(async (options: HouseOptions & { json?: boolean; cautions?: boolean }) => {
      const loaded = await loadChecked(options, console);
      if (options.json) console.out(`${JSON.stringify(loaded.problems, null, 2)}\n`);
      else reportProblems(loaded, '', console);
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
async function loadChecked(options: HouseOptions, console: Console): Promise<ComposedBook> {
  const { book, ...loaded } = withHandoutProblems(await loadFor(options, console, { marked: false }));
  if (!book) return loaded;
  console.doing('figuring the change orders again');
  const stale = await checkAgreed(loaded.open, book.on);
  const issued = await unreadableIssues(loaded.open, [loaded.signed, loaded.before, loaded.since]);
  const problems = sortProblems([...loaded.problems, ...issued, ...scopeWarnings(book), ...stale]);
  return { ...loaded, problems, ...(!hasErrors(stale) && { book }) };
}

/** What nobody or two do, as warnings at the lines to mend. */
function scopeWarnings(book: Book): readonly Problem[] {
  const texts = new Map(book.sources.map(({ path, text }) => [path, text]));
  const look = lookUp(book);
  return book.scope.findings.map(({ kind, room, what, fix, source, line }) => {
    const text = texts.get(source) ?? '';
    const column = (text.split('\n')[line - 1] ?? '').search(/\S/) + 1;
    const message = `${look.roomTitle(room)}: ${what}`;
    return problemIn({ file: source, text }, { line, column: Math.max(1, column) }, `scope-${kind}`, message, {
      fix,
      severity: 'warning',
    });
  });
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
