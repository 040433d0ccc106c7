import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The program's own folder: the nearest above this file with a package.json, whether the file is a source or was built into `dist/`. */
const folder = rootOf(dirname(fileURLToPath(import.meta.url)));

/** Where a file or folder of the program's own lies on this disk; `path` from the program's folder, such as `content`. With `/` on every
 *  machine, since Eleventy takes such paths for patterns, and `\\` in them for an escape. */
export function programPath(path: string): string {
  return slashed(join(folder, path));
}

/** Where a file of a package lies, by its way from the package's main file. */
export function packagePath(name: string, path: string): string {
  return slashed(join(dirname(createRequire(import.meta.url).resolve(name)), path));
}

function slashed(path: string): string {
  return path.split(sep).join('/');
}

function rootOf(dir: string): string {
  if (existsSync(join(dir, 'package.json'))) return dir;
  const above = dirname(dir);
  if (above === dir) throw new Error('the program does not find its own folder: no package.json lies above it');
  return rootOf(above);
}
