import { realpath, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Source } from '../../core/model/index.js';
import { sortProblems, type Problem } from '../../base/problem/index.js';
import { fileProblem, readEntry, startReading, type ReadBefore } from './read-folder.js';
import { readShared } from './read-shared.js';
import { noted } from './reads.js';

export interface HouseFolder {
  /** In order of path. */
  readonly files: Source[];
  /** Files that cannot be records: not text, too large, out of reach, outside the folder. */
  readonly problems: readonly Problem[];
}

/** Reads every file of `content/` in a house folder as text. Names that begin with a dot are skipped; links are followed
 *  only to what lies inside the house folder. Of what was read `before` only files that were written since are read. Rejects only when the disk
 *  itself fails in a way no file explains. */
export function readHouseFolder(dir: string, before?: ReadBefore): Promise<HouseFolder> {
  return readRecords(dir, '', before);
}

const readRecords = noted(
  'records',
  (dir, _, before) => readFiles(dir, before),
  ({ files, problems }) => [...files.flatMap(({ path, text }) => [path, text]), JSON.stringify(problems)],
);

async function readFiles(dir: string, before?: ReadBefore): Promise<HouseFolder> {
  const root = await realpath(dir).catch(() => undefined);
  if (root === undefined || !(await isHouseFolder(root))) {
    const fix = 'name the folder that holds content/ with --house DIR';
    return {
      files: [],
      problems: [fileProblem('content/house.md', 'house-missing', `no content/house.md in ${dir}`, fix)],
    };
  }
  const reading = startReading(root, '', 'the house folder', before);
  await readEntry('content', reading);
  const shared = await readShared(root, reading.files, before);
  return {
    files: [...reading.files, ...shared.files],
    problems: sortProblems([...reading.problems, ...shared.problems]),
  };
}

/** Is it a folder with content/house.md in it? */
export async function isHouseFolder(dir: string): Promise<boolean> {
  return stat(join(dir, 'content', 'house.md')).then(
    (facts) => facts.isFile(),
    () => false,
  );
}
