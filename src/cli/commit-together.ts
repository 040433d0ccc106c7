import { oneAtATime, writeTogether } from '../disk/store/index.js';
import { commitWritten } from './commit-written.js';
import type { Console } from './console.js';

/** Writes files of a house folder (path → content), tells it and commits them: all of it or none, also when it is killed on the way. `words` say what it is,
 *  and are the commit's; `beside` are files that are there, and go into it too. Answers the command's exit code. */
export function commitTogether(
  dir: string,
  files: ReadonlyMap<string, Uint8Array | string>,
  words: string,
  told: string,
  console: Console,
  beside: readonly string[] = [],
): Promise<number> {
  const paths = [...files.keys(), ...beside];
  return oneAtATime(dir, () =>
    writeTogether(dir, files, { what: words, commit: { paths, message: words } }, () => {
      console.tell(told);
      return commitWritten(dir, paths, words, console);
    }),
  );
}
