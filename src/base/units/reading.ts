/** What became of a text that somebody wrote: its value, or in words why it has none and what to write instead. */
export type Reading<T> = Read<T> | Unread;

interface Read<T> {
  readonly ok: true;
  readonly value: T;
}

export interface Unread {
  readonly ok: false;
  /** Half a sentence that follows the text: "'14' has no unit". */
  readonly why: string;
  /** What to write instead, in one line. */
  readonly fix?: string;
  /** What other texts of the house may have it from too, such as its currency. */
  readonly cause?: string;
}

export function read<T>(value: T): Read<T> {
  return { ok: true, value };
}

export function unread(why: string, fix?: string, cause?: string): Unread {
  return { ok: false, why, ...(fix !== undefined && { fix }), ...(cause !== undefined && { cause }) };
}
