/** What became of a text that somebody wrote: its value, or in words why it has none and what to write instead. */
export type Reading<T> = Read<T> | Unread;

interface Read<T> {
  readonly ok: true;
  readonly value: T;
}

interface Unread {
  readonly ok: false;
  /** Half a sentence that follows the text: "'14' has no unit". */
  readonly why: string;
  /** What to write instead, in one line. */
  readonly fix?: string;
}

export function read<T>(value: T): Read<T> {
  return { ok: true, value };
}

export function unread(why: string, fix?: string): Unread {
  return fix === undefined ? { ok: false, why } : { ok: false, why, fix };
}
