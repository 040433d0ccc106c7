import { createHash } from 'node:crypto';
import { lstat, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** SHA-256 of files and folders below a folder, by name and content: whatever was written, added, renamed or taken away there changes it. A name that is not there
 *  counts as well. What is neither a file nor a folder has no content. Rejects when the disk refuses. */
export async function treeDigest(dir: string, names: readonly string[]): Promise<string> {
  const hash = createHash('sha256');
  const add = async (path: string): Promise<void> => {
    const facts = await lstat(join(dir, path)).catch(() => undefined);
    if (facts?.isFile()) {
      const bytes = await readFile(join(dir, path));
      hash.update(`file ${JSON.stringify(path)} ${bytes.length}\n`).update(bytes);
    } else if (facts?.isDirectory()) {
      hash.update(`folder ${JSON.stringify(path)}\n`);
      for (const name of (await readdir(join(dir, path))).sort()) await add(`${path}/${name}`);
    } else hash.update(`${facts ? 'other' : 'nothing'} ${JSON.stringify(path)}\n`);
  };
  for (const name of [...names].sort()) await add(name);
  return hash.digest('hex');
}
