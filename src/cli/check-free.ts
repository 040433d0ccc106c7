import { existsSync } from 'node:fs';
import { UsageError } from './usage-error.js';

/** Nothing that is there is written over: where a file of that name is, another is wanted. */
export function checkFree(path: string): void {
  if (existsSync(path)) throw new UsageError(`${path} is there already: name another file with --out`);
}
