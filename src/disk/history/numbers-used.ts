import { readNumbered } from '../../core/records/index.js';
import { git } from './git.js';

/** Folders whose records are numbered. */
export type Numbered = 'issues' | 'changes';

/** The next number that was never given: neither in `paths` of the house folder now, nor in any commit that git still knows, of
 *  any branch, as last fetched too, reverted or thrown away. */
export async function nextNumber(houseDir: string, folder: Numbered, paths: readonly string[]): Promise<number> {
  const log = await git(houseDir, [
    'log',
    '--all',
    '--reflog',
    '--format=',
    '--name-only',
    '--relative',
    '--diff-filter=A',
    '--',
    `content/${folder}`,
  ]);
  const known = log.ok ? log.out.toString('utf8').split('\n') : [];
  const numbers = [...paths, ...known].flatMap((path) => {
    const record = readNumbered(path);
    return record?.folder === folder ? [record.number] : [];
  });
  return Math.max(0, ...numbers) + 1;
}

/** A numbered record that a branch has and this one does not. */
export interface ElsewhereRecord {
  readonly path: string;
  readonly text: string;
  /** `origin/main`, or the commit's id when no branch leads there. */
  readonly branch: string;
}

/** Numbered records that were added in commits which are not part of this branch, as they stood there; empty without git. */
export async function recordsElsewhere(houseDir: string): Promise<readonly ElsewhereRecord[]> {
  const folders = ['content/issues', 'content/changes'];
  const range = ['--all', '--not', 'HEAD', '--format=%x00%H', '--name-only', '--relative', '--diff-filter=A', '--'];
  const log = await git(houseDir, ['log', ...range, ...folders]);
  if (!log.ok) return [];
  const found: ElsewhereRecord[] = [];
  for (const entry of log.out.toString('utf8').split('\0').slice(1)) {
    const [commit = '', ...paths] = entry.split('\n').filter((line) => line !== '');
    for (const path of paths.filter((one) => readNumbered(one))) {
      const text = await git(houseDir, ['show', `${commit}:./${path}`]);
      if (text.ok) found.push({ path, text: text.out.toString('utf8'), branch: await branchOf(houseDir, commit) });
    }
  }
  return found;
}

async function branchOf(houseDir: string, commit: string): Promise<string> {
  const refs = await git(houseDir, ['for-each-ref', '--count=1', '--format=%(refname:short)', '--contains', commit]);
  const [name = ''] = refs.ok ? refs.out.toString('utf8').split('\n') : [];
  return name === '' ? commit.slice(0, 10) : name;
}
