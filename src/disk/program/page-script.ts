import { readFile } from 'node:fs/promises';
import { programPath } from './folder.js';

/** Where the script lies in a built program. */
export const builtPageScript = 'dist/page/try.js';

/** What runs in the book's pages, as the text of one classic script, since pages on a disk may load no modules. A built program has it; one that runs from its
 *  sources makes it of them, so that pages never compute by older rules than the book. */
export function pageScript(): Promise<string> {
  // In one expression: what bundles is then left out of a built program.
  return typeof builtFrom === 'string'
    ? readFile(programPath(builtPageScript), 'utf8')
    : (bundled ??= import('./bundle-page-script.js').then(({ bundlePageScript }) => bundlePageScript()));
}

/** Sources do not change while the program runs. */
let bundled: Promise<string> | undefined;
