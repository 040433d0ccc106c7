import { git } from './git.js';

/** Puts a folder under git and commits what is in it. Answers why there is no first commit, where git is not there or does not know who
 *  commits; the folder is under git then if git is there. */
export async function beginHistory(
  dir: string,
  message: string,
): Promise<{ readonly ok: true } | { readonly ok: false; readonly why: string; readonly isUnderGit: boolean }> {
  const begun = await git(dir, ['init', '--quiet', '--initial-branch=main']);
  if (!begun.ok) return { ...begun, isUnderGit: false };
  const added = await git(dir, ['add', '--all']);
  if (!added.ok) return { ...added, isUnderGit: true };
  // Who commits is what a person told git, never what git guesses of the machine.
  const committed = await git(dir, ['-c', 'user.useConfigOnly=true', 'commit', '--quiet', '--message', message]);
  if (committed.ok) return { ok: true };
  const isNobody = /identity|ident name|email was given|tell me who you are/iu.test(committed.why);
  return { ok: false, why: isNobody ? 'git does not know your name' : committed.why, isUnderGit: true };
}
