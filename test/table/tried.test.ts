import { beforeAll, describe, expect, test } from 'vitest';
import { rowsOf, say, type HouseBlock } from '../../src/sheet/index.js';
import { printMoney, type Cents } from '../../src/base/units/index.js';
import type { Book } from '../../src/core/book/index.js';
import { whatFollows, type WhatFollows } from '../../src/table/index.js';
import { tryPicks, unpackHouse, type Pick } from '../../src/try/index.js';
import { packedDemo } from '../try/packed-demo.js';

const day = '2026-04-20';
const stone = 'great-room/stone-facing/breast';
const hearth = 'great-room/hearth/breast.hearth';
const picks: readonly Pick[] = [
  { selection: stone, option: 'full-bed-ledge' },
  { selection: hearth, option: 'granite-flamed-2in' },
];

let from: Book;
let to: Book;
let follows: WhatFollows;

beforeAll(async () => {
  const { packed } = await packedDemo(day);
  const compose = tryPicks(unpackHouse(packed));
  [from, to] = [compose([], day), compose(picks, day)].map(({ value }) => {
    if (!value) throw new Error('no book');
    return value;
  }) as [Book, Book];
  follows = whatFollows({ from, to, selections: [stone, hearth], signedRooms: ['great-room'] });
});

const tableOf = (id: string): HouseBlock => {
  const table = follows.tables.find((one) => one.id === id);
  if (!table) throw new Error(`no table ${id}`);
  return table;
};
const text = (id: string, row: string, column: string): string => {
  const cell = rowsOf(tableOf(id)).find((one) => one.id === row)?.cells[column];
  if (!cell) throw new Error(`no ${column} of ${row}`);
  return say(cell)
    .flat()
    .map((run) => run.text)
    .join('');
};

describe('what follows from two picks', () => {
  test('is the difference of two whole Books', () => {
    expect(follows.total).toEqual({ before: from.money.today, after: to.money.today });
    expect(follows.summary).toContain(printMoney(to.money.today, 'always'));
  });

  test('says which choices on their allowance are open, as prices beside options have these decided', async () => {
    expect(follows.besidePrices).toBe('');
    const { packed } = await packedDemo(day);
    const alone = tryPicks(unpackHouse(packed))(
      picks.filter(({ selection }) => selection === stone),
      day,
    ).value;
    if (!alone) throw new Error('no book');
    expect(whatFollows({ from, to: alone, selections: [stone], signedRooms: [] }).besidePrices).toBe(
      'Still open on Stone facing and hearth: 1 choice. This total has it open, the prices beside options have it decided.',
    );
  });

  test('names what is tried, and instead of what', () => {
    expect(text('tried-choices', stone, 'now')).toBe('Full-bed ledge stone');
    expect(text('tried-choices', stone, 'was')).toMatch(/^instead of open/u);
    expect(text('tried-choices', hearth, 'cost')).toBe(
      printMoney(to.selections.find(({ id }) => id === hearth)?.cost.total ?? (0 as Cents), 'always'),
    );
  });

  test('adds up, step by step, to both totals', () => {
    const table = tableOf('tried-steps');
    const sums = { before: 0, after: 0, difference: 0 };
    const rows = rowsOf(table);
    for (const { cells } of rows.slice(0, -1))
      for (const key of ['before', 'after', 'difference'] as const) {
        const cell = cells[key];
        if (cell?.is === 'money') sums[key] += cell.cents;
      }
    expect(sums).toEqual({
      before: from.money.today,
      after: to.money.today,
      difference: to.money.today - from.money.today,
    });
    expect(rows.at(-1)?.strong).toBe(true);
  });

  test('tells the allowance that both draw on, and what is bought', () => {
    expect(rowsOf(tableOf('tried-allowances'))).toHaveLength(1);
    expect(text('tried-allowances', 'stone', 'status')).toBe('overrun, all decided');
    expect(rowsOf(tableOf('tried-orders')).length).toBeGreaterThanOrEqual(2);
  });

  test('says whom to tell, what page to initial again, and when the job ends', () => {
    const facts = new Map(
      follows.facts.map(({ label, cell }) => [
        label,
        say(cell)
          .flat()
          .map(({ text }) => text)
          .join(''),
      ]),
    );
    expect(facts.get('Trades to tell')).toMatch(/Mason/u);
    expect(facts.get('Pages to initial again')).toBe('101 Great room');
    expect(facts.get('End of the job')).toMatch(/Hand-over/u);
    expect(facts.get('Weight in place')).toMatch(/^\+[\d,]+ lb$/u);
  });
});

test('from nothing but a day nothing follows', () => {
  const { tables, notices, total } = whatFollows({ from, to: from, selections: [], signedRooms: [] });
  expect(total.after).toBe(total.before);
  expect(notices).toEqual([]);
  expect(tables.map(({ id }) => id)).toEqual(['tried-steps']);
});
