import { expect, it } from 'vitest';
import { newProblems, type Problem } from '../../src/base/problem/index.js';

const problem = (file: string, code: string, message: string): Problem =>
  ({ file, code, message, severity: 'warning', at: { line: 1, column: 1 } }) as Problem;

const quote = problem('oak.md', 'quote-expired', '$100.00 would rest on it');
const late = problem('study.md', 'decide-late', 'Floor, 3 days late');

it('is new what was not said before', () => {
  expect(newProblems([late], [late, quote])).toEqual([quote]);
  expect(newProblems([late, quote], [late])).toEqual([]);
});

it('is not new what says the same of another figure', () => {
  const more = problem('oak.md', 'quote-expired', '$120.00 would rest on it');
  expect(newProblems([quote], [more])).toEqual([]);
  expect(newProblems([quote], [quote, more])).toEqual([more]);
});

it('is new of another record, and of another kind', () => {
  const there = { ...quote, file: 'pine.md' };
  const other = { ...quote, code: 'all-added' } as Problem;
  expect(newProblems([quote], [quote, there, other])).toEqual([there, other]);
});
