import type { Problem } from './problem.js';

/** Problems in order of file, line and column, each once; of a whole file (no line of it is shown) a code is said once. */
export function sortProblems(problems: readonly Problem[]): readonly Problem[] {
  const once = new Map<string, Problem>();
  for (const problem of problems) {
    const name = JSON.stringify([
      problem.file,
      problem.code,
      ...(problem.excerpt === undefined ? [] : [problem.at, problem.message]),
    ]);
    if (!once.has(name)) once.set(name, problem);
  }
  return [...once.values()].sort(
    (a, b) =>
      compareText(a.file, b.file) ||
      a.at.line - b.at.line ||
      a.at.column - b.at.column ||
      compareText(a.code, b.code) ||
      compareText(a.message, b.message),
  );
}

export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.severity === 'error');
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
