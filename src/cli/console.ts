import type { Problem } from '../base/problem/index.js';
import type { Comparison } from '../core/compare/index.js';
import type { Asker } from './asker.js';

/** Where a command line writes, what time it is, and what it may ask for: given from outside so that commands can be tested. */
export interface Terminal {
  out(text: string): void;
  error(text: string): void;
  /** Says what takes its time now, `the printed book`, to whoever waits at a terminal; what was said before is gone. */
  doing(what: string): void;
  /** Today as YYYY-MM-DD. */
  today(): string;
  /** This moment, by the clock of the machine. */
  now(): Date;
  /** A variable of the environment. */
  environment(name: string): string | undefined;
  /** All that is handed to the command by a pipe or typed up to the end of file, as bytes; at most `most` of them, and one more where there are more. */
  input(most: number): Promise<Uint8Array>;
  /** Asks for a word that is not shown while it is typed; undefined when there is nobody to ask or nothing was given. */
  askSecret(question: string): Promise<string | undefined>;
  /** Who answers questions; undefined when there is nobody to ask. */
  asker(): Asker | undefined;
  /** Does whoever reads it type commands? Elsewhere forms run them, and what could be typed next is left out. */
  readonly takesCommands: boolean;
  /** Where differences are shown in another way than as text. */
  readonly compared?: (comparison: Comparison) => void;
  /** Does the reader of `error` understand colour? */
  readonly color: boolean;
}

/** What a command has of it: what it writes reaches the terminal without control characters (`plainConsole`). */
export interface Console extends Omit<Terminal, 'color'> {
  /** Writes problems to `error`, with what became of the command as the last sentence; nothing where there are none. Absent: 'Nothing was
   *  written.' when there is an error. */
  problems(problems: readonly Problem[], outcome?: string): void;
  /** Writes to `out` what was not asked for: which files were written, what may come next. Nothing with --quiet. */
  tell(text: string): void;
}

/** Words that tell what could be typed next; none where nothing is. */
export function typed(words: string, { takesCommands }: Pick<Terminal, 'takesCommands'>): string {
  return takesCommands ? words : '';
}
