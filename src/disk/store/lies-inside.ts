import { realpath } from 'node:fs/promises';
import { dirname, join, sep } from 'node:path';

/** Would a file that is written at a path of a folder lie inside it, whatever links are on the way? Folders that are not there yet will be its own. */
export async function liesInside(dir: string, path: string): Promise<boolean> {
  const root = await realpath(dir);
  for (let at = dirname(join(dir, path)); ; at = dirname(at)) {
    const real = await realpath(at).catch(() => undefined);
    if (real !== undefined) return real === root || real.startsWith(`${root}${sep}`);
    if (at === dirname(at)) return false;
  }
}
