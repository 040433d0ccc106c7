import type { Problem } from './problem.js';

/** What is wrong now and was not before. Figures in the words of a problem move with the house: one is new where its file has more of its code than
 *  it had, and these words were not said. */
export function newProblems(before: readonly Problem[], now: readonly Problem[]): readonly Problem[] {
  const said = new Set(before.map(wordsOf));
  const [had, has] = [countsOf(before), countsOf(now)];
  return now.filter((one) => (has.get(kindOf(one)) ?? 0) > (had.get(kindOf(one)) ?? 0) && !said.has(wordsOf(one)));
}

function kindOf({ file, code }: Problem): string {
  return `${file} ${code}`;
}

function wordsOf(problem: Problem): string {
  return `${kindOf(problem)} ${problem.message}`;
}

function countsOf(problems: readonly Problem[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const problem of problems) counts.set(kindOf(problem), (counts.get(kindOf(problem)) ?? 0) + 1);
  return counts;
}
