import type { ProblemCode } from '../../base/problem/index.js';

/** A file that is not read at all: why, and where in it. */
export class FileRefused extends Error {
  constructor(
    readonly code: ProblemCode,
    message: string,
    readonly fix: string,
    /** Characters from its start. */
    readonly offset = 0,
  ) {
    super(message);
  }
}

/** A part of a model that is not drafted, in half a sentence; the rest of the model may be. */
export class PartRefused extends Error {}

/** What some work on a part of a model comes to, or why there is nothing of it. */
export function attempt<T>(work: () => T): { readonly value: T } | { readonly why: string } {
  try {
    return { value: work() };
  } catch (error) {
    if (error instanceof PartRefused) return { why: error.message };
    throw error;
  }
}
