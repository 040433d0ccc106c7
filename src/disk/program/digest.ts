import { createHash } from 'node:crypto';
import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { programPath } from './folder.js';
import { pathBelow } from './path-below.js';

/** Whose every change may change what is computed and printed: the code with its templates, the typefaces, and the packages it stands on. */
const computing = ['src', 'fonts', 'package-lock.json'];

/** SHA-256 of the program: what an older or a newer one computed has another. Undefined when the program's own files cannot
 *  be read. */
export function programDigest(): Promise<string | undefined> {
  return (known ??= typeof builtFrom === 'string' ? Promise.resolve(builtFrom) : readDigest());
}

/** The program does not change while it runs. */
let known: Promise<string | undefined> | undefined;

async function readDigest(): Promise<string | undefined> {
  try {
    const paths = (await Promise.all(computing.map((path) => filesBelow(path)))).flat().sort();
    const hash = createHash('sha256');
    for (const [index, bytes] of (await Promise.all(paths.map((path) => readFile(programPath(path))))).entries())
      hash.update(`${paths[index] ?? ''} ${bytes.length}\n`).update(bytes);
    return hash.digest('hex');
  } catch {
    return undefined;
  }
}

async function filesBelow(path: string): Promise<readonly string[]> {
  if (path.includes('.')) return [path];
  const folder = programPath(path);
  const found = await readdir(folder, { recursive: true, withFileTypes: true });
  return found
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => `${path}/${pathBelow(folder, join(parentPath, name))}`);
}
