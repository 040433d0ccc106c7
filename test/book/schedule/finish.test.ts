import { describe, expect, test } from 'vitest';
import { twoRooms } from './house.js';

const row = (study: readonly string[]) => twoRooms({ study }).finish.rows[0];

describe('the room finish schedule', () => {
  test('one paint on walls and ceiling has one key in both columns', () => {
    const { legend, rows } = twoRooms({ study: ['{ at: [walls, ceiling], category: paint, chosen: snow }'] }).finish;
    expect(legend.map(({ key, name }) => [key, name])).toEqual([['P1', 'snow']]);
    expect(rows[0]?.cells.walls).toMatchObject([{ at: '', finishes: [{ key: 'P1', standing: 'chosen' }] }]);
    expect(rows[0]?.cells.ceiling).toMatchObject([{ at: '', finishes: [{ key: 'P1' }] }]);
  });

  test('walls are told apart where they differ', () => {
    const { walls = [] } =
      row([
        '{ at: [north, east], category: paint, chosen: oat }',
        '{ at: [south, west], category: paint, chosen: snow }',
      ])?.cells ?? {};
    expect(walls.map(({ at, finishes }) => [at, finishes[0]?.key])).toEqual([
      ['North and east walls', 'P1'],
      ['South and west walls', 'P2'],
    ]);
  });

  test('tells the standard for now from what is chosen, from none and from what is quite open', () => {
    const cells = row([
      '{ at: walls, category: paint, standard: oat, considering: [snow] }',
      '{ at: ceiling, category: paint, chosen: none }',
      '{ at: floor, category: floor, considering: [oak] }',
    ])?.cells;
    expect(cells?.walls[0]?.finishes).toMatchObject([{ key: 'P1', standing: 'standard' }]);
    expect(cells?.ceiling[0]?.finishes).toMatchObject([{ standing: 'none' }]);
    expect(cells?.floor[0]?.finishes).toMatchObject([{ standing: 'open' }]);
    expect(cells?.floor[0]?.finishes[0]).not.toHaveProperty('key');
  });

  test('numbers remarks through the house', () => {
    const { rows, notes } = twoRooms({
      study: [
        '{ at: walls, category: paint, chosen: oat, note: Cut in by hand }',
        '{ at: floor, category: floor, chosen: oak, note: Runs north }',
      ],
    }).finish;
    expect(rows.map((each) => each.notes)).toEqual([[1, 2], []]);
    expect(notes.map(({ number, text }) => [number, text])).toEqual([
      [1, 'Cut in by hand'],
      [2, 'Runs north'],
    ]);
  });
});
