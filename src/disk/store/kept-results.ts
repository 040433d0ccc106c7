import { createHash } from 'node:crypto';
import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { ownFolder, ownFolderName } from './make-folder.js';
import { isOwnCode, ownCode } from './own-key.js';
import { writeAtomically } from './write-atomically.js';

/** Results of long computations, kept in a house folder with all that they came from. A house may come from anywhere: only what this user's program kept is one. */
export interface KeptResults {
  /** What was kept under a key, as it was parsed; undefined when there is nothing, it is damaged, or somebody else put it there. */
  readonly get: (key: string) => Promise<unknown>;
  /** Keeps a JSON value. A disk that refuses is no failure, nor a user without a key: it is computed again the next time. */
  readonly put: (key: string, value: unknown) => Promise<void>;
}

/** `key` is text that holds everything the value came from. Under a name of their own only the last of them is kept. */
export function keptResults(houseDir: string, name?: string): KeptResults {
  const nameOf = (key: string): string => (name === undefined ? join('compared', sha256(key)) : name);
  const pathIn = (folder: string, key: string): string => join(folder, `${nameOf(key)}.json`);
  // What was kept for another key, or by another name, is nothing.
  const as = (key: string): readonly string[] => [nameOf(key), key];
  return {
    get: async (key) => {
      const path = pathIn(join(houseDir, ownFolderName), key);
      // What is no file, such as a pipe, may never end.
      const isFile = await stat(path).then(
        (facts) => facts.isFile(),
        () => false,
      );
      const text = isFile ? await readFile(path, 'utf8').catch(() => '') : '';
      const end = text.indexOf('\n');
      const value = text.slice(end + 1);
      return end > 0 && (await isOwnCode(houseDir, as(key), value, text.slice(0, end))) ? parsed(value) : undefined;
    },
    put: async (key, value) => {
      const text = JSON.stringify(value);
      try {
        const code = await ownCode(houseDir, as(key), text);
        if (code === undefined) return;
        const folder = await ownFolder(houseDir);
        await ignoreIn(folder);
        await writeAtomically(pathIn(folder, key), `${code}\n${text}`);
      } catch {
        // Said above.
      }
    },
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Git is told once: a build keeps some dozen results, and each file that is written waits for the disk. */
async function ignoreIn(folder: string): Promise<void> {
  const path = join(folder, '.gitignore');
  const text = '# Kept by bookmatch to save time: safe to delete.\n*\n';
  if ((await readFile(path, 'utf8').catch(() => '')) !== text) await writeAtomically(path, text);
}

function sha256(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
