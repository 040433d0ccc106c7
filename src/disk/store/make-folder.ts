import { lstat, mkdir, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** Makes a folder and those above it that are not there, and answers the topmost that it made. Unlike Node's own `recursive`, which never ends where a disk
 *  has no room for a name below a folder that is there (Linux says so below /proc), each folder is tried twice at most. `mode` says who may enter them. Rejects as `mkdir` does. */
export async function makeFolder(path: string, mode?: number): Promise<string | undefined> {
  const error = await refusalOf(path, mode);
  if (error === undefined) return path;
  if (await isFolder(path)) return undefined;
  const above = dirname(path);
  if (error.code !== 'ENOENT' || above === path) throw error;
  const topmost = await makeFolder(above, mode);
  const again = await refusalOf(path, mode);
  // Somebody else may have made it meanwhile.
  if (again !== undefined && !(await isFolder(path))) throw again;
  return topmost ?? path;
}

function refusalOf(path: string, mode?: number): Promise<NodeJS.ErrnoException | undefined> {
  return mkdir(path, mode).then(
    () => undefined,
    (error: NodeJS.ErrnoException) => error,
  );
}

/** Is there a folder at a path, or a link to one? */
export function isFolder(path: string): Promise<boolean> {
  return stat(path).then(
    (facts) => facts.isDirectory(),
    () => false,
  );
}

/** The folder in which the program keeps what is no record: it may be deleted at any time. A house may come from anywhere: a link in its place, which would have the
 *  program write elsewhere, is taken away, and so is a file. */
export async function ownFolder(root: string): Promise<string> {
  const folder = join(root, ownFolderName);
  const found = await lstat(folder).catch(() => undefined);
  if (found && !found.isDirectory()) await rm(folder);
  return folder;
}

export const ownFolderName = '.bookmatch';
