import { expect, it } from 'vitest';
import { toldOf, type Edit } from './small-house.js';

/** Each case: what is changed in one file, and all that is then said. */
export function cases(file: string, table: readonly (readonly [from: string, to: string, ...told: string[]])[]): void {
  it.each(table.map(([from, to, ...expected]) => ({ from, to, expected })))('$from → $to', ({ from, to, expected }) => {
    const edit: Edit = [file, from, to];
    expect(toldOf(edit)).toEqual(expected);
  });
}
