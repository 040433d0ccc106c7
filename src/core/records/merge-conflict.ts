import { parseDocument } from 'yaml';
import { problemIn, type Problem } from '../../base/problem/index.js';
import { parseDay, printDay, recordNumber } from '../../base/units/index.js';
import { identityOf, readNumbered } from './record-path.js';
import { tooDeepAt } from './yaml-depth.js';

interface File {
  readonly file: string;
  readonly text: string;
}

/** Two versions of some lines, as a merge leaves them. */
interface Conflict {
  /** Line of `<<<<<<<`, from 1, and of `>>>>>>>`. */
  readonly from: number;
  readonly to: number;
  readonly ours: Version;
  readonly theirs: Version;
}

interface Version {
  /** What git calls it: `HEAD`, a branch. */
  readonly name: string;
  readonly lines: readonly string[];
}

const fixHere = 'keep one of the two versions, and delete the lines <<<<<<<, ======= and >>>>>>>';

/** Places of a record where a merge left two versions: what each has, in words, and who chose it when where it is a choice. */
export function conflictProblems(at: File): readonly Problem[] {
  if (!/<{7}|={7}|>{7}/u.test(at.text)) return [];
  const lines = at.text.split(/\r?\n/u);
  const conflicts = findConflicts(lines);
  const record = readNumbered(at.file);
  const [first] = conflicts;
  if (record && first && conflicts.some((one) => isTwice(one))) return [twice(at, first, record)];
  const whole = conflicts.map((conflict) => {
    const message = `two versions met here in a merge: ${whatMet(at.text, conflict)}`;
    return problemIn(at, { line: conflict.from, column: 1 }, 'merge-conflict', message, { fix: fixHere });
  });
  return [...whole, ...leftProblem(at, lines, conflicts)];
}

/** A line of a merge whose other lines were deleted or moved: the first of them speaks for the record. */
function leftProblem(at: File, lines: readonly string[], conflicts: readonly Conflict[]): readonly Problem[] {
  const end = lines.findIndex((line, index) => index > 0 && line === '---');
  const left = lines.findIndex((line, index) => {
    if (conflicts.some(({ from, to }) => index + 1 >= from && index + 1 <= to)) return false;
    // In prose, a line of = underlines a title, and one of < or > is a sign of git only where it names a version.
    return end < 0 || index < end ? /^\s*(?:<{7}|>{7}|={7})(?:\s|$)/u.test(line) : /^<{7} \S+$|^>{7} \S/u.test(line);
  });
  if (left < 0) return [];
  const message = `'${lines[left]?.trim() ?? ''}' is left of a merge`;
  const fix =
    'delete the lines <<<<<<<, ======= and >>>>>>>, and keep one of the two versions of what stands between them';
  return [problemIn(at, { line: left + 1, column: 1 }, 'merge-conflict', message, { fix })];
}

function findConflicts(lines: readonly string[]): readonly Conflict[] {
  const found: Conflict[] = [];
  let start: { readonly line: number; readonly name: string } | undefined;
  let sides: { ours: string[]; base: string[]; theirs: string[] } = { ours: [], base: [], theirs: [] };
  let side: keyof typeof sides = 'ours';
  lines.forEach((line, index) => {
    const [, begins] = /^<{7}(?: (.*))?$/u.exec(line) ?? [];
    const [end, ends] = /^>{7}(?: (.*))?$/u.exec(line) ?? [];
    if (/^<{7}(?: |$)/u.test(line)) {
      start = { line: index + 1, name: begins ?? 'one side' };
      sides = { ours: [], base: [], theirs: [] };
      side = 'ours';
    } else if (start && /^\|{7}(?: |$)/u.test(line)) side = 'base';
    else if (start && line === '=======') side = 'theirs';
    else if (start && end !== undefined && side === 'theirs') {
      const { ours, theirs } = sides;
      found.push({
        from: start.line,
        to: index + 1,
        ours: { name: start.name, lines: ours },
        theirs: { name: ends ?? 'the other', lines: theirs },
      });
      start = undefined;
    } else if (start) sides[side].push(line);
  });
  return found;
}

/** Numbered records are never edited twice in the same place by their own commands but for what makes them another record. */
function isTwice({ ours, theirs }: Conflict): boolean {
  return identityOf(ours.lines) !== identityOf(theirs.lines);
}

function twice(
  at: File,
  { from, theirs }: Conflict,
  { folder, number }: NonNullable<ReturnType<typeof readNumbered>>,
): Problem {
  const name = recordNumber(number);
  const [what, files, anew] =
    folder === 'issues'
      ? ['issue', `${at.file} issued/${name}.*`, 'bookmatch issue']
      : ['change order', at.file, 'bookmatch compare FROM TO --draft'];
  const message = `two clones gave the number ${number} to another ${what} each, and met in a merge`;
  const fix = `keep that of ${theirs.name} (git checkout --theirs ${files}), commit, then make yours anew: ${anew} takes the next number`;
  return problemIn(at, { line: from, column: 1 }, 'merge-conflict', message, { fix });
}

function whatMet(text: string, conflict: Conflict): string {
  const { ours, theirs } = conflict;
  const choices = differingChoices(sideText(text, conflict, 'ours'), sideText(text, conflict, 'theirs'));
  if (choices.length === 0) {
    const lines = ({ name, lines: all }: Version): string =>
      `${name} has ${all.length === 0 ? 'nothing' : all.length === 1 ? `'${all[0]?.trim() ?? ''}'` : `${all.length} lines`}`;
    return `${lines(ours)}; ${lines(theirs)}`;
  }
  return choices
    .map((choice) => `${choice.what}: ${ours.name} has ${choice.ours}; ${theirs.name} has ${choice.theirs}`)
    .join('; and ');
}

/** The record with this conflict taken one way, and every other the first. */
function sideText(text: string, chosen: Conflict, side: 'ours' | 'theirs'): string {
  const lines = text.split(/\r?\n/u);
  const out: string[] = [];
  let next = 0;
  for (const conflict of findConflicts(lines)) {
    const take = conflict.from === chosen.from ? conflict[side] : conflict.ours;
    out.push(...lines.slice(next, conflict.from - 1), ...take.lines);
    next = conflict.to;
  }
  return [...out, ...lines.slice(next)].join('\n');
}

type RawChoice = Readonly<Record<string, unknown>>;

function differingChoices(
  ours: string,
  theirs: string,
): readonly { readonly what: string; readonly ours: string; readonly theirs: string }[] {
  const [mine, other] = [choicesOf(ours), choicesOf(theirs)];
  if (!mine || !other) return [];
  return [...new Set([...mine.keys(), ...other.keys()])].flatMap((what) => {
    const [a, b] = [mine.get(what), other.get(what)];
    if (JSON.stringify(a) === JSON.stringify(b)) return [];
    return [{ what, ours: choiceWords(a), theirs: choiceWords(b) }];
  });
}

/** Selections by what they are of; undefined for a side that is no YAML. */
function choicesOf(text: string): ReadonlyMap<string, RawChoice> | undefined {
  const end = text.indexOf('\n---', 3);
  const yaml = text.slice(text.indexOf('\n') + 1, end < 0 ? undefined : end);
  if (tooDeepAt(yaml)) return undefined;
  const document = parseDocument(yaml, { version: '1.2', logLevel: 'silent' });
  if (document.errors.length > 0) return undefined;
  const data: unknown = document.toJS({ maxAliasCount: 0 });
  const list = isRecord(data) && Array.isArray(data.selections) ? data.selections : [];
  return new Map(
    list
      .filter(isRecord)
      .map((choice) => [`${String(choice.category)} at ${[choice.at].flat().map(String).join(', ')}`, choice]),
  );
}

function choiceWords(choice: RawChoice | undefined): string {
  if (!choice) return 'no such selection';
  const { chosen, 'chosen-by': by, 'chosen-on': on } = choice;
  if (typeof chosen !== 'string') return 'it open';
  const day = typeof on === 'string' ? parseDay(on) : undefined;
  return [
    chosen,
    ...(typeof by === 'string' ? [`chosen by ${by}`] : []),
    ...(day?.ok ? [`on ${printDay(day.value)}`] : []),
  ]
    .join(', ')
    .replace(/, on /u, ' on ');
}

function isRecord(value: unknown): value is RawChoice {
  return value !== null && typeof value === 'object' && !Array.isArray(value);
}
