import { didYouMean } from '../../base/problem/index.js';
import { git } from './git.js';
import { counted } from '../../base/units/index.js';

/** Why a version cannot be found in a house folder's repository, and what might be meant instead. */
export async function explainMissing(houseDir: string, version: string, why: string): Promise<string> {
  const shallow = await git(houseDir, ['rev-parse', '--is-shallow-repository']);
  if (!shallow.ok)
    return shallow.why.includes('not a git repository') ? 'the house folder is not under git' : shallow.why;
  const cause = why === '' ? '' : `: ${why}`;
  const meant = didYouMean(version, await namesOfVersions(houseDir));
  const hint = meant === undefined ? '' : `; ${meant}`;
  if (shallow.out.toString('ascii').trim() === 'true') {
    return `there is no version '${version}' here${cause}${hint}. ${await whatIsThere(houseDir)}`;
  }
  return `there is no version '${version}'${cause}${hint}`;
}

/** Tags first, then branches, here and as last fetched; the newest tag first. */
async function namesOfVersions(houseDir: string): Promise<string[]> {
  const refs = await git(houseDir, [
    'for-each-ref',
    '--sort=-creatordate',
    '--format=%(refname)',
    'refs/tags',
    'refs/heads',
    'refs/remotes',
  ]);
  if (!refs.ok) return [];
  const names = refs.out.toString('utf8').split('\n');
  return ['refs/tags/', 'refs/heads/', 'refs/remotes/'].flatMap((prefix) =>
    names.filter((name) => name.startsWith(prefix)).map((name) => name.slice(prefix.length)),
  );
}

/** `This clone is shallow: it holds 3 commits, back to 4 March 2026 (1a2b3c4). The rest comes with: git fetch --unshallow` */
async function whatIsThere(houseDir: string): Promise<string> {
  const log = await git(houseDir, ['log', '--all', '--format=%cs %h']);
  const commits = log.ok
    ? log.out
        .toString('ascii')
        .split('\n')
        .filter((line) => line !== '')
        .sort()
    : [];
  const [oldest = ''] = commits;
  const [day = '', id = ''] = oldest.split(' ');
  const holds = commits.length === 0 ? '' : `: it holds ${counted(commits.length, 'commit')}, back to ${day} (${id})`;
  return `This clone is shallow${holds}. What is older comes with: git fetch --unshallow`;
}
