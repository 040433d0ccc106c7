import { counted, joinWords, printAmount } from '../units/index.js';
import picocolors from 'picocolors';
import { printable } from './printable.js';
import type { Problem } from './problem.js';
import { hasErrors, sortProblems } from './sort-problems.js';

interface PrintOptions {
  /** Does the reader understand colour? */
  readonly color?: boolean;
  /** What became of the command, as the last sentence. Absent: 'Nothing was written.' when there is an error. */
  readonly outcome?: string;
}

type Paint = ReturnType<typeof picocolors.createColors>;

/** Columns of a source line that are shown on either side of the place. */
const before = 90;
const after = 70;

/** Problems as text for a terminal: where, how grave and what, the line of the file, what to do, and how many there are. Colour adds nothing
 *  that the words do not say. */
export function printProblems(problems: readonly Problem[], { color = false, outcome }: PrintOptions = {}): string {
  const sorted = sortProblems(problems);
  if (sorted.length === 0) return '';
  const paint = picocolors.createColors(color);
  const ending = outcome ?? (hasErrors(sorted) ? 'Nothing was written.' : '');
  const last = `${count(sorted)}${ending === '' ? '' : ` ${ending}`}`;
  return `${[...firstOfKind(byCause(sorted), paint), paint.bold(last)].join('\n\n')}\n`;
}

/** So many of one code are printed. Whoever mends these has seen what is wrong, and sees the next ones then. */
const mostOfCode = 100;

/** Groups of problems as they are printed, the first hundred of each code; at the end, how many more there are of which. */
function firstOfKind(groups: readonly (readonly Problem[])[], paint: Paint): readonly string[] {
  const byCode = new Map<string, (readonly Problem[])[]>();
  for (const group of groups) {
    const code = group[0]?.code ?? '';
    const same = byCode.get(code);
    if (same) same.push(group);
    else byCode.set(code, [group]);
  }
  const left = [...byCode].flatMap(([code, same]) =>
    same.length > mostOfCode ? [[code, same.slice(mostOfCode)] as const] : [],
  );
  const hidden = new Set(left.flatMap(([, rest]) => rest));
  const more = left.map(([code, rest]) => {
    const count = rest.reduce((sum, group) => sum + group.length, 0);
    return `and ${printAmount(count, 0)} more of ${paint.bold(code)}: bookmatch check --json has all of them`;
  });
  return [...groups.filter((group) => !hidden.has(group)).map((group) => printGroup(group, paint)), ...more];
}

/** So many problems of one cause are printed one by one; more are told by the first and the places of the others. */
const mostOfOne = 2;
/** Places that are listed at most. */
const mostPlaces = 5;

/** Problems that are one to whoever mends them: of one cause, or said in the same words. Each group stands where its first does; where
 *  they are few, each is a group of its own. */
export function byCause(problems: readonly Problem[]): readonly (readonly Problem[])[] {
  const groups = new Map<string, Problem[]>();
  for (const problem of problems) {
    const { code, severity, message, fix, cause } = problem;
    const name = JSON.stringify(cause === undefined ? [severity, code, message, fix] : [severity, cause]);
    const same = groups.get(name);
    if (same) same.push(problem);
    else groups.set(name, [problem]);
  }
  const place = new Map(problems.map((problem, index) => [problem, index]));
  const first = (group: readonly Problem[]): number => (group[0] && place.get(group[0])) ?? 0;
  return [...groups.values()]
    .flatMap((group) => (group.length > mostOfOne ? [group] : group.map((one) => [one])))
    .sort((a, b) => first(a) - first(b));
}

function printGroup([first, ...more]: readonly Problem[], paint: Paint): string {
  if (!first) return '';
  const said = printProblem(first, paint);
  if (more.length === 0) return said;
  const places = more.slice(0, mostPlaces).map(({ file, at }) => `${printable(file)}:${at.line}:${at.column}`);
  const rest = more.length > mostPlaces ? ` and ${more.length - mostPlaces} more` : '';
  return `${said}\n      ${paint.dim('|')} the same in ${counted(more.length, 'more place')}: ${places.join(', ')}${rest}`;
}

function printProblem(problem: Problem, paint: Paint): string {
  const place = `${printable(problem.file)}:${problem.at.line}:${problem.at.column}`;
  const { severity } = problem;
  const color = { error: paint.red, warning: paint.yellow, notice: paint.cyan }[severity];
  const head = `${paint.bold(place)}  ${color(problem.code)}  ${severity}: ${printable(problem.message)}`;
  if (problem.excerpt === undefined) {
    return problem.fix === undefined ? head : `${head}\n      ${paint.dim('|')} ${printable(problem.fix)}`;
  }
  const { shown, caret } = crop(problem.excerpt, problem.at.column);
  const number = problem.at.line.toString().padStart(5);
  const fix = problem.fix === undefined ? '' : ` ${printable(problem.fix)}`;
  const bar = paint.dim('|');
  return `${head}\n${paint.dim(number)} ${bar} ${shown}\n      ${bar} ${' '.repeat(caret)}${paint.cyan(`^${fix}`)}`;
}

/** The part of a line around a column, and how far in the column stands. */
function crop(line: string, column: number): { shown: string; caret: number } {
  const at = Math.max(0, Math.min(column - 1, line.length));
  const start = at > before + 3 ? at - before : 0;
  const end = line.length > at + after + 3 ? at + after : line.length;
  const lead = start > 0 ? '…' : '';
  return {
    shown: printable(`${lead}${line.slice(start, end)}${end < line.length ? '…' : ''}`).trimEnd(),
    caret: lead.length + at - start,
  };
}

function count(problems: readonly Problem[]): string {
  const [errors, warnings, notices] = (['error', 'warning', 'notice'] as const).map(
    (severity) => problems.filter((problem) => problem.severity === severity).length,
  ) as [number, number, number];
  const files = new Set(problems.map((problem) => problem.file)).size;
  const kinds = [
    ...(errors > 0 ? [counted(errors, 'error')] : []),
    ...(warnings > 0 ? [counted(warnings, 'warning')] : []),
    ...(notices > 0 ? [counted(notices, 'notice')] : []),
  ];
  return `${joinWords(kinds)} in ${counted(files, 'file')}.`;
}
