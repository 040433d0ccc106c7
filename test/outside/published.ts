import { test } from 'vitest';

/** How the figure came to us: seen in the source's own text, in a text that quotes it, from memory, or computed from seen figures. */
const marks = { S: 'seen', S2: 'seen in a quotation', M: 'from memory', C: 'computed from the source' } as const;

export interface Published<Source extends string> {
  readonly what: string;
  /** Document, section, address. Empty text does not compile. */
  readonly source: Source extends '' ? never : Source;
  readonly mark: keyof typeof marks;
}

/** A test of a published figure; its name prints the source. */
export function published<Source extends string>(
  { what, source, mark }: Published<Source>,
  check: () => void | Promise<void>,
): void {
  test(`${what} (${marks[mark]}: ${source})`, check);
}
