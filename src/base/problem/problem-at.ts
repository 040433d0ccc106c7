import type { ProblemCode } from './codes.js';
import { placeWritten, type Origin, type Path, type Position, type Problem } from './problem.js';

interface ProblemDetail {
  /** What to do about it, in one line. */
  readonly fix?: string;
  readonly cause?: string;
  /** Absent: an error. */
  readonly severity?: Problem['severity'];
  /** Point at the key rather than at its value. */
  readonly onKey?: boolean;
}

/** Longer lines are kept only up to here: one line of a broken file may be the whole file. */
const longestExcerpt = 2000;

/** A problem at a value of a record, or at its key. */
export function problemAt(
  origin: Origin,
  path: Path,
  code: ProblemCode,
  message: string,
  detail: ProblemDetail = {},
): Problem {
  const written = placeWritten(origin, path);
  const at = detail.onKey ? written.origin.key(written.path) : written.origin.at(written.path);
  return problemIn(written.origin, at, code, message, detail);
}

/** A problem at a place of a file that is given by line and column. */
export function problemIn(
  source: { readonly file: string; readonly text: string },
  at: Position,
  code: ProblemCode,
  message: string,
  { fix, cause, severity = 'error' }: ProblemDetail = {},
): Problem {
  const excerpt = source.text === '' ? undefined : lineOf(source.text, at.line);
  return {
    code,
    file: source.file,
    at,
    message,
    ...(fix !== undefined && { fix }),
    ...(cause !== undefined && { cause }),
    ...(excerpt !== undefined && { excerpt }),
    severity,
  };
}

function lineOf(text: string, line: number): string | undefined {
  let start = 0;
  for (let skipped = 1; skipped < line; skipped += 1) {
    const end = text.indexOf('\n', start);
    if (end < 0) return undefined;
    start = end + 1;
  }
  const end = text.indexOf('\n', start);
  const excerpt = text.slice(start, end < 0 ? undefined : end).slice(0, longestExcerpt);
  return excerpt.replace(/\r$/u, '');
}

/** Where in a text the character at `offset` stands. */
export function positionOf(text: string, offset: number): Position {
  const lines = text.slice(0, offset).split('\n');
  return { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
}
