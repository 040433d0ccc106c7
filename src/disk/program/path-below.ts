import nodePath, { type PlatformPath } from 'node:path';

/** The path of a file from a folder, with `/` whatever the machine writes between names: as records, problems, links and data have it.
 *  `by` is the machine's way with paths. A file that lies elsewhere has a path that begins with `..`, or on another drive stays whole. */
export function pathBelow(folder: string, file: string, by: PlatformPath = nodePath): string {
  return by.relative(folder, by.resolve(file)).split(by.sep).join('/');
}
