import { git } from './git.js';

/** Are these files of the house folder as they were last committed? */
export async function isCommitted(houseDir: string, paths: readonly string[]): Promise<boolean> {
  const status = await git(houseDir, ['status', '--porcelain', '--untracked-files=all', '--', ...paths]);
  return status.ok && status.out.length === 0;
}
