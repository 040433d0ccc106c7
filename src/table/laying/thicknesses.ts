import { wallsBetween } from '../../core/book/index.js';
import { printLength, type Length } from '../../base/units/index.js';
import { col } from '../../sheet/index.js';
import { schedule } from '../schedule.js';

interface Row {
  readonly thickness: Length;
  readonly count: number;
  readonly length: Length;
}

/** How thick the walls between rooms are, as the tapes leave them. */
export const wallThicknesses = schedule<Row>({
  table: {
    id: 'wall-thicknesses',
    caption: 'Thicknesses of the walls between rooms',
    named: 'thickness',
    rowId: ({ thickness }) => String(thickness),
    columns: [
      col.length('thickness', 'Face to face', ({ thickness }) => thickness),
      col.count('count', 'Walls', ({ count }) => count),
      col.length('length', 'Along', ({ length }) => length),
    ],
  },
  rows: ({ book }) => {
    // What is printed alike is one thickness.
    const found = new Map<string, Row>();
    for (const { thickness, length } of wallsBetween(book)) {
      const key = printLength(thickness);
      const before = found.get(key) ?? { thickness, count: 0, length: 0 };
      found.set(key, { ...before, count: before.count + 1, length: (before.length + length) as Length });
    }
    return [...found.values()].toSorted((a, b) => b.count - a.count || a.thickness - b.thickness);
  },
});
