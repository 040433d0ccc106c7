import type { ProblemCode } from './codes.js';

/** A place in a file, counted from 1. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** The path of a value inside a record: `['openings', 2, 'width']`. */
export type Path = readonly (string | number)[];

/** One thing that is wrong in the records, written for the person who must mend it. */
export interface Problem {
  readonly code: ProblemCode;
  /** Path of the file, relative to the house folder, with `/`. */
  readonly file: string;
  readonly at: Position;
  /** What is wrong, in one line, with the value that was written. */
  readonly message: string;
  /** What to do about it, in one line. */
  readonly fix?: string;
  /** What it comes from, where many places may have it from one cause: problems of one are printed together. */
  readonly cause?: string;
  /** The line of the file that `at` points to. */
  readonly excerpt?: string;
  /** An error stops the book; a notice is something to look at once. */
  readonly severity: 'error' | 'warning' | 'notice';
}

/** Where a record came from; later stages use it to point at a line of the file. */
export interface Origin {
  /** Path relative to the house folder, with `/`. */
  readonly file: string;
  readonly text: string;
  /** Position of the value at `path`, or of its nearest ancestor that is written down. */
  at(path: Path): Position;
  /** Position of the key at `path` rather than its value; of the whole record, of its first key. */
  key(path: Path): Position;
  /** Where the value at `path` is written, when that is in another record or under another path. */
  elsewhere?(path: Path): Elsewhere | undefined;
}

/** A place in a record that another record has something from. */
export interface Elsewhere {
  readonly origin: Origin;
  readonly path: Path;
  /** What it is from, as people call it: the name of a finish set. */
  readonly from?: string;
}

/** Where the value at a path is written: there, or where the record has it from. */
export function placeWritten(origin: Origin, path: Path): Elsewhere {
  return origin.elsewhere?.(path) ?? { origin, path };
}

/** The same as people look it up: the file and the line. */
export function sourceOf(origin: Origin, path: Path): { readonly source: string; readonly line: number } {
  const written = placeWritten(origin, path);
  return { source: written.origin.file, line: written.origin.at(written.path).line };
}

/** A result that may come with problems; `value` is absent when it could not be made. */
export interface Outcome<T> {
  readonly value?: T;
  readonly problems: readonly Problem[];
}
