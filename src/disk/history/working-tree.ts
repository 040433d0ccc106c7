import { git } from './git.js';

/** Is everything that records hold, and every photograph, committed? `changed` names what is not. */
export async function workingTree(
  houseDir: string,
): Promise<{ ok: true; commit: string; changed: readonly string[] } | { ok: false; why: string }> {
  const head = await git(houseDir, ['rev-parse', '--verify', '--quiet', 'HEAD^{commit}']);
  if (!head.ok) {
    const under = await git(houseDir, ['rev-parse', '--git-dir']);
    return { ok: false, why: under.ok ? 'nothing is committed yet' : 'the house folder is not under git' };
  }
  const status = await git(houseDir, [
    'status',
    '--porcelain',
    '-z',
    '--untracked-files=all',
    '--',
    'content',
    'photos',
  ]);
  if (!status.ok) return status;
  const changed = status.out
    .toString('utf8')
    .split('\0')
    .filter((line) => line !== '')
    .map((line) => line.slice(3));
  return { ok: true, commit: head.out.toString('ascii').trim(), changed };
}
