import { watch, type FSWatcher } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** How long after a file changed it is told, in milliseconds: an editor writes several times. */
const settling = 40;

/** Tells when anything in a folder or below it changes; answers what ends it. Each folder is watched by itself: that holds when files are replaced,
 *  which a watch on files does not. The folder may go away, and come back. */
export function watchFolders(root: string, changed: () => void): () => void {
  let watchers: readonly FSWatcher[] = [];
  let waiting: NodeJS.Timeout | undefined;
  let isClosed = false;
  const tell = (): void => {
    clearTimeout(waiting);
    waiting = setTimeout(() => void follow().then(changed), settling);
  };
  // Of the folder above, only whether this one comes or goes.
  const above = watched(dirname(root), (name) => {
    if (name === basename(root)) tell();
  });
  /** A folder of the same name may be another by now, as git makes it: all are watched anew, and read after that. */
  const follow = async (): Promise<void> => {
    const folders = await foldersIn(root);
    if (isClosed) return;
    for (const watcher of watchers) watcher.close();
    watchers = folders.flatMap((folder) => watched(folder, tell));
  };
  void follow();
  return () => {
    isClosed = true;
    clearTimeout(waiting);
    for (const watcher of [...watchers, ...above]) watcher.close();
  };
}

/** None where the folder went away since it was listed: the one above it tells when it comes back. */
function watched(folder: string, tell: (name: string | null) => void): readonly FSWatcher[] {
  try {
    const watcher = watch(folder, (_, name) => tell(name));
    watcher.on('error', () => watcher.close());
    return [watcher];
  } catch {
    return [];
  }
}

async function foldersIn(root: string): Promise<readonly string[]> {
  const entries = await readdir(root, { recursive: true, withFileTypes: true }).catch(() => []);
  const below = entries.filter((entry) => entry.isDirectory()).map(({ parentPath, name }) => join(parentPath, name));
  return [root, ...below];
}
