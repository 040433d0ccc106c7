import { git } from './git.js';

/** Whether a commit is the other, or lies before it on its way. False also where git cannot know: outside git, in a shallow clone. */
export async function isWithin(houseDir: string, commit: string, later: string): Promise<boolean> {
  if (commit.startsWith('-') || later.startsWith('-')) return false;
  return (await git(houseDir, ['merge-base', '--is-ancestor', commit, later])).ok;
}
