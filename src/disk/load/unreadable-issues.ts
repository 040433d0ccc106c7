import type { Problem } from '../../base/problem/index.js';
import { programDigest } from '../program/index.js';
import { keptResults } from '../store/index.js';
import type { SinceIssue } from './load-book.js';
import type { OpenHouse } from './open-house.js';

/** What is wrong with issues whose records can no longer be read. That one could be read is kept under its digest and that of the program. */
export async function unreadableIssues(
  open: OpenHouse,
  issues: readonly (SinceIssue | undefined)[],
): Promise<readonly Problem[]> {
  const named = new Map(issues.flatMap((issue) => (issue ? [[issue.issue, issue] as const] : [])));
  if (named.size === 0) return [];
  const program = await programDigest();
  const kept = keptResults(open.dir);
  const problems: Problem[] = [];
  for (const { digest, read } of named.values()) {
    const key = ['issue', program, digest].join('\n');
    if (program !== undefined && (await kept.get(key)) === 'readable') continue;
    const found = read().problems;
    problems.push(...found);
    if (program !== undefined && found.length === 0) await kept.put(key, 'readable');
  }
  return problems;
}
