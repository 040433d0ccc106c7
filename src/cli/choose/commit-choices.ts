import { printableLines } from '../../base/problem/index.js';
import { counted, joinWords } from '../../base/units/index.js';
import type { Person } from '../../core/model/index.js';
import type { Wanted } from './wanted.js';

/** A commit of choices: who chose is its author, who runs the command its committer. */
export interface ChoiceCommit {
  readonly author: string;
  /** `3 choices by The owners`, the sentences of the slips, and the trailers. */
  readonly message: string;
  /** `Choice-slip: <digest>` for each slip, and the other people who chose. */
  readonly trailers: readonly string[];
  /** The message without them, paragraph by paragraph. */
  readonly parts: readonly string[];
}

/** Of choices that are taken, one at least; who made the first of them is the author. */
export function choiceCommit(taken: readonly Wanted[], people: readonly Person[]): ChoiceCommit {
  const by = [...new Set(taken.map((one) => one.by))];
  const [author = '', ...others] = by.map((name) => authorOf(name, people));
  const slips = [...new Set(taken.flatMap((one) => one.slips))];
  const subject = `${counted(taken.length, 'choice')} by ${joinWords(by)}`;
  const notes = slips.flatMap(({ slip }) => (slip.note === undefined ? [] : [printableLines(slip.note)]));
  const trailers = [
    ...new Set(slips.map(({ digest }) => slipTrailer(digest))),
    ...others.map((other) => `Co-authored-by: ${other}`),
  ];
  const parts = [subject, ...notes];
  const message = [...parts, trailers.join('\n')].filter((part) => part !== '').join('\n\n');
  return { author, parts, trailers, message };
}

/** By which git finds the commits of slips. */
export function slipTrailer(digest: string): string {
  return `Choice-slip: ${digest}`;
}

/** The command that commits files by hand, for a shell. */
export function commitCommand({ author, parts, trailers }: ChoiceCommit, files: readonly string[]): string {
  const words = [
    ['--author', author],
    ...parts.map((part) => ['--message', part]),
    ...trailers.map((trailer) => ['--trailer', trailer]),
    ['--', ...files],
  ].flat();
  return `git commit ${words.map(quoted).join(' ')}`;
}

/** `The owners <owners@example.org>`, with the person's mail address, else the one that the contact holds, if it holds one. */
function authorOf(name: string, people: readonly Person[]): string {
  const person = people.find((one) => one.name === name);
  const mail = person?.mail ?? /[^\s<>,;:()]+@[^\s<>,;:()]+\w/u.exec(person?.contact ?? '')?.[0] ?? '';
  return `${name
    .replaceAll(/[<>\n]+/gu, ' ')
    .replaceAll(/ +/gu, ' ')
    .trim()} <${mail}>`;
}

/** As a shell of POSIX takes a word. */
function quoted(word: string): string {
  return /^[\w./-]+$/u.test(word) ? word : `'${word.replaceAll("'", `'\\''`)}'`;
}
