import { printable } from '../../base/problem/index.js';
import { byText } from '../../base/units/index.js';
import { columnLetters } from './grid.js';

/** Something about a list, at a cell of it, a row, or the whole: rows and columns count from 0. */
export interface ListProblem {
  readonly row: number;
  /** Absent: the whole row. */
  readonly column?: number;
  readonly what: string;
  readonly fix: string;
  /** A notice stops nothing. */
  readonly severity: 'error' | 'notice';
}

/** `list.csv row 5, C  error: '12,4O' is not a price`, and below it what to do. In order of row and column. */
export function printListProblems(file: string, problems: readonly ListProblem[]): string {
  const sorted = problems.toSorted(
    (a, b) => a.row - b.row || (a.column ?? -1) - (b.column ?? -1) || byText(a.what, b.what),
  );
  return sorted
    .map(({ row, column, what, fix, severity }) => {
      const place = `${file} row ${row + 1}${column === undefined ? '' : `, ${columnLetters(column)}`}`;
      return `${printable(`${place}  ${severity}: ${what}`)}\n      | ${printable(fix)}\n`;
    })
    .join('');
}
