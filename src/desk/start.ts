import { randomBytes } from 'node:crypto';
import { digestOfText, type Standing } from './standing.js';

/** What one start of a desk has of its own. */
export interface DeskStart {
  /** Proves that a form was made by it. */
  readonly secret: string;
  /** The command line that starts it again. */
  readonly again: string;
  /** Which house it is of, as one word: a browser may have desks of several, and each house's at another port later. */
  readonly house: string;
}

export function newStart(dir: string, again: string): DeskStart {
  return {
    secret: newSecret(),
    again,
    house: digestOfText(dir).slice(0, 12),
  };
}

/** Nobody guesses it. */
export function newSecret(): string {
  return randomBytes(24).toString('base64url');
}

/** What a page tells its scripts of the desk that made it. */
export function markOf({ again, house }: DeskStart, { number }: Pick<Standing, 'number'>) {
  return { 'data-standing': number, 'data-again': again, 'data-house': house };
}
