import { realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';
import type { Source } from '../../core/model/index.js';
import { problemAt, problemIn, type Problem } from '../../base/problem/index.js';
import { pathInHouse, readFrontMatter, sharedKinds } from '../../core/records/index.js';
import { readEntry, startReading, type ReadBefore } from './read-folder.js';

interface SharedFolders {
  /** By their way from the house folder, such as `../our-book/options/floor/oak.md`. */
  readonly files: readonly Source[];
  readonly problems: readonly Problem[];
}

/** Reads the folders that the house's record declares as shared: of each the records that a house may have in common with others, as they
 *  lie on disk now. A record that the house has itself, or that an earlier folder has, stands before a later one, which is told. */
export async function readShared(root: string, own: readonly Source[], before?: ReadBefore): Promise<SharedFolders> {
  const house = own.find(({ path }) => path === 'content/house.md');
  // Most houses share none; what does not name the key needs no reading.
  const front = house?.text.includes('shared') ? readFrontMatter(house).value : undefined;
  const declared: unknown = front?.data['shared'];
  if (!front || !Array.isArray(declared)) return { files: [], problems: [] };
  const standing = new Map(own.map(({ path }) => [path, path]));
  const files: Source[] = [];
  const problems: Problem[] = [];
  for (const [index, folder] of declared.entries()) {
    // What is no way to a folder is told where the record is checked.
    if (typeof folder !== 'string' || !/^(?:\.\.\/)+\w[\w.-]*(?:\/\w[\w.-]*)*$/u.test(folder)) continue;
    const at = ['shared', index];
    const real = await realpath(join(root, folder)).catch(() => undefined);
    if (real === undefined || !(await stat(real)).isDirectory()) {
      const fix = 'bring the folder there, or correct its way from the house folder';
      problems.push(problemAt(front.origin, at, 'shared-missing', `there is no folder ${folder}`, { fix }));
      continue;
    }
    if (isWithin(real, root) || isWithin(root, real)) {
      const fix = 'keep what houses have in common in a folder beside them';
      const message = `${folder} is part of the house folder, or holds it`;
      problems.push(problemAt(front.origin, at, 'shared-inside', message, { fix }));
      continue;
    }
    const reading = startReading(real, `${folder}/`, `the shared folder ${folder}`, before);
    for (const kind of sharedKinds) if (await isThere(join(real, kind))) await readEntry(kind, reading);
    problems.push(...reading.problems);
    for (const file of reading.files) {
      const path = pathInHouse(file.path);
      const before = standing.get(path);
      if (before === undefined) files.push(file);
      else problems.push(overridden(before, file.path));
      standing.set(path, before ?? file.path);
    }
  }
  return { files, problems };
}

function isWithin(path: string, folder: string): boolean {
  return path === folder || path.startsWith(`${folder}${sep}`);
}

function isThere(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}

function overridden(standing: string, path: string): Problem {
  const message = `it stands before ${path}`;
  const fix = 'if that is meant, there is nothing to do; else remove one of the two';
  const place = { line: 1, column: 1 };
  return problemIn({ file: standing, text: '' }, place, 'shared-overridden', message, { fix, severity: 'notice' });
}
