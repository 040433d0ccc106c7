import { byText } from '../units/index.js';
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
      byText(a.file, b.file) ||
      a.at.line - b.at.line ||
      a.at.column - b.at.column ||
      byText(a.code, b.code) ||
      byText(a.message, b.message),
  );
}

export function errorsIn<One extends Pick<Problem, 'severity'>>(problems: readonly One[]): readonly One[] {
  return problems.filter(({ severity }) => severity === 'error');
}

export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.severity === 'error');
}
