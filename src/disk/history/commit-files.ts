import { git } from './git.js';

/** Commits these files of the house folder, and nothing else that may be staged or changed. Paths are relative to it. `author` is as git has it, `Name <mail>`;
 *  without it, who commits. Answers the new commit's id, or why git would not. */
export async function commitFiles(
  houseDir: string,
  paths: readonly string[],
  message: string,
  author?: string,
): Promise<{ readonly ok: true; readonly commit: string } | { readonly ok: false; readonly why: string }> {
  const added = await git(houseDir, ['add', '--', ...paths]);
  if (!added.ok) return added;
  const by = author === undefined ? [] : [`--author=${author}`];
  const committed = await git(houseDir, ['commit', '--quiet', ...by, '--message', message, '--only', '--', ...paths]);
  if (!committed.ok) return committed;
  const head = await git(houseDir, ['rev-parse', 'HEAD']);
  return head.ok ? { ok: true, commit: head.out.toString('ascii').trim() } : head;
}
