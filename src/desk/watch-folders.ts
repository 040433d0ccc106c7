import { watch, type FSWatcher } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';

/** How long after a file changed it is told, in milliseconds: an editor writes several times. */
const settling = 40;

/** Tells when anything in a folder or below it changes; answers what ends it. Each folder is watched by itself: that holds when files are replaced,
 *  which a watch on files does not. */
export function watchFolders(root: string, changed: () => void): () => void {
  const watchers = new Map<string, FSWatcher>();
  let waiting: NodeJS.Timeout | undefined;
  let isClosed = false;
  const tell = (): void => {
    clearTimeout(waiting);
    waiting = setTimeout(() => void follow().then(changed), settling);
  };
  const follow = async (): Promise<void> => {
    const folders = new Set(await foldersIn(root));
    for (const [folder, watcher] of watchers) {
      if (folders.has(folder)) continue;
      watcher.close();
      watchers.delete(folder);
    }
    for (const folder of folders) {
      if (isClosed || watchers.has(folder)) continue;
      const watcher = watch(folder, tell);
      // A folder that goes away is seen by the one above it.
      watcher.on('error', () => watcher.close());
      watchers.set(folder, watcher);
    }
  };
  void follow();
  return () => {
    isClosed = true;
    clearTimeout(waiting);
    for (const watcher of watchers.values()) watcher.close();
  };
}

async function foldersIn(root: string): Promise<readonly string[]> {
  const entries = await readdir(root, { recursive: true, withFileTypes: true }).catch(() => []);
  const below = entries.filter((entry) => entry.isDirectory()).map(({ parentPath, name }) => join(parentPath, name));
  return [root, ...below];
}
