import { git } from './git.js';

/** The id of `content/` of a house folder in each commit, by the commit's id: the same records have the same id. One git process for all of
 *  them; commits that are not here are left out. */
export async function contentIds(houseDir: string, commits: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const asked = [...new Set(commits)].filter((commit) => /^[0-9a-f]{40}$/u.test(commit));
  if (asked.length === 0) return new Map();
  const input = asked.map((commit) => `${commit}:./content\n`).join('');
  const answer = await git(houseDir, ['cat-file', '--batch-check'], { input });
  if (!answer.ok) return new Map();
  const lines = answer.out.toString('utf8').split('\n');
  return new Map(
    asked.flatMap((commit, index) => {
      const [, id] = /^([0-9a-f]{40,64}) tree /u.exec(lines[index] ?? '') ?? [];
      return id === undefined ? [] : [[commit, id] as const];
    }),
  );
}
