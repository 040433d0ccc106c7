import { describe, expect, test } from 'vitest';
import { lookUp } from '../../src/core/book/index.js';
import { rowsOf, tablesOf } from '../../src/sheet/index.js';
import { finishSheet } from '../../src/table/index.js';
import { smallBook } from '../book/small-house.js';

describe('a room finish schedule', () => {
  const schedule = (...edits: Parameters<typeof smallBook>) => {
    const [table] = tablesOf(finishSheet(lookUp(smallBook(...edits))).blocks);
    return table ? { rows: rowsOf(table).length, notes: table.notes } : undefined;
  };

  const without = {
    'content/categories/floor.md': [['schedule: floor\n', '']],
    'content/categories/ceiling-board.md': [['schedule: ceiling\n', '']],
  } as const;

  test('in which no finish stands says why, and what to write', () => {
    expect(schedule(without)?.notes).toEqual([
      'No kind of finish that is selected says where it stands here: write schedule: with floor, base, walls, ceiling, trim or place in its record in content/categories/.',
    ]);
  });

  test('with a finish says nothing', () => {
    expect(schedule()).toMatchObject({ notes: [] });
  });
});
