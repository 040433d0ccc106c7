import { createHash } from 'node:crypto';
import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The rooms of the code whose every change may change what is computed, and the packages they stand on. */
const computing = ['src/base', 'src/core', 'src/disk/load', 'package-lock.json'];

/** SHA-256 of the program that computes: what an older or a newer one computed has another. Undefined when the program's own files cannot
 *  be read. */
export function programDigest(): Promise<string | undefined> {
  return (known ??= readDigest());
}

/** The program does not change while it runs. */
let known: Promise<string | undefined> | undefined;

async function readDigest(): Promise<string | undefined> {
  const root = fileURLToPath(new URL('../../../', import.meta.url));
  try {
    const paths = (await Promise.all(computing.map((path) => filesBelow(root, path)))).flat().sort();
    const hash = createHash('sha256');
    for (const [index, bytes] of (await Promise.all(paths.map((path) => readFile(join(root, path))))).entries())
      hash.update(`${paths[index] ?? ''} ${bytes.length}\n`).update(bytes);
    return hash.digest('hex');
  } catch {
    return undefined;
  }
}

async function filesBelow(root: string, path: string): Promise<readonly string[]> {
  if (path.includes('.')) return [path];
  const found = await readdir(join(root, path), { recursive: true, withFileTypes: true });
  return found
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name).slice(root.length));
}
