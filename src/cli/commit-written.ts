import { commitFiles } from '../disk/history/index.js';
import type { Console } from './console.js';

/** Commits files that were just written, and answers the command's exit code: that is said, and so are
 *  files that git would not take, which stay. */
export async function commitWritten(
  dir: string,
  files: readonly string[],
  message: string,
  console: Console,
  author?: string,
): Promise<number> {
  const committed = await commitFiles(dir, files, message, author);
  if (committed.ok) {
    console.out(`${console.takesCommands ? 'Committed to git' : 'Recorded'}: ${message.split('\n', 1).join('')}\n`);
    return 0;
  }
  console.error(`These files are written but git would not commit them: ${committed.why}. Commit them yourself.\n`);
  return 1;
}
