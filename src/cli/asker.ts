import type { Reading } from '../base/units/index.js';

/** What one question asks for. */
export interface Question {
  readonly asks: string;
  /** What an answer looks like. */
  readonly example?: string;
  /** What counts when nothing is typed. */
  readonly usual?: string;
  /** Whether an answer can be taken; it is asked again until one can. */
  readonly read: (text: string) => Reading<unknown>;
}

/** Somebody at a terminal who can be asked. Each rejects with a UsageError when the person stops. */
export interface Asker {
  text(question: Question): Promise<string>;
  choice(asks: string, choices: readonly Choice[], usual?: string): Promise<string>;
}

export interface Choice {
  readonly value: string;
  readonly label: string;
}
