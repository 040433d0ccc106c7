import type { Path, ProblemCode } from '../../base/problem/index.js';

/** What a schema has against a value, for the person who wrote it. */
export interface Finding {
  readonly path: Path;
  readonly code: ProblemCode;
  readonly message: string;
  readonly fix?: string;
  /** The key is at fault, not its value: what hangs on the rest may still be read. */
  readonly onKey: boolean;
  /** Of a wrong type: what was expected. */
  readonly asked?: string;
  /** Of a value that is none of a few: those. */
  readonly choices?: readonly string[];
  /** Of a text in another form than is asked for: the pattern. */
  readonly form?: string;
  /** What other records may have it from too. */
  readonly cause?: string;
  /** Of a missing key: the key, which `path` does not hold. */
  readonly missing?: string;
  /** Of an unknown key: the known one that was probably meant. */
  readonly meant?: string;
}
