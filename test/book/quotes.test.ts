import { describe, expect, test } from 'vitest';
import type { Problem } from '../../src/base/problem/index.js';
import { smallBook, type Edits } from './small-house.js';

const pine = 'content/options/floor/pine.md';
const quoted = (words: string, house: Edits = {}): Edits => ({
  ...house,
  [pine]: [['lead: 4 weeks', `quoted: { on: 2026-03-02, by: Mill sales desk${words} }\nlead: 4 weeks`]],
});
const limit: Edits = { 'content/house.md': [['levels:', 'prices-good-for: 30 days\nlevels:']] };
const past = ({ code }: Problem): boolean => code === 'quote-expired' || code === 'quote-old';

const quoteOf = (edits: Edits, on: string) =>
  smallBook(edits, on, past).money.quotes.find(({ option }) => option === 'floor/pine');

describe('a quoted price', () => {
  test('is good through its last day, and run out from the day after', () => {
    const until = quoted(', until: 2026-04-20');
    expect(quoteOf(until, '2026-04-20')).toMatchObject({ state: 'good', past: 0 });
    expect(quoteOf(until, '2026-04-21')).toMatchObject({ state: 'expired', past: 1 });
  });

  test('without a last day it is old past the limit of the house, and never where there is none', () => {
    // 2 March and thirty days: 1 April is the last.
    expect(quoteOf(quoted('', limit), '2026-04-01')).toMatchObject({ state: 'good', past: 0 });
    expect(quoteOf(quoted('', limit), '2026-04-02')).toMatchObject({ state: 'old', past: 1 });
    expect(quoteOf(quoted(''), '2026-06-01')).toMatchObject({ state: 'good' });
    // Its own last day goes before the limit.
    expect(quoteOf(quoted(', until: 2026-06-30', limit), '2026-04-20')).toMatchObject({ state: 'good' });
  });

  test('says what of today’s orders rests on it, and what would; what is ordered asks no more of it', () => {
    const book = smallBook(quoted(''));
    const floor = book.selections.find(({ id }) => id === 'study/floor/floor');
    expect(quoteOf(quoted(''), '2026-04-20')).toMatchObject({ inOrders: floor?.cost.total, ifChosen: 0 });
    const fir = book.money.quotes.find(({ option }) => option === 'ceiling-board/fir-tg-1x6');
    const ceiling = book.selections.find(({ category }) => category === 'ceiling-board');
    const then = ceiling?.alternatives.find(({ option }) => option === 'fir-tg-1x6');
    expect(fir).toMatchObject({ state: 'unquoted', inOrders: 0, ifChosen: then?.cost.total });
    const ordered: Edits = {
      'content/rooms/study.md': [
        ['chosen: pine', 'chosen: pine\n    chosen-on: 2026-03-04\n    ordered: { on: 2026-03-09, option: pine }'],
      ],
    };
    expect(quoteOf({ ...quoted(', until: 2026-03-31'), ...ordered }, '2026-04-20')).toBeUndefined();
  });
});

test('the price of a place on an allowance: estimated, quoted, ordered, invoiced', () => {
  const board = 'content/options/ceiling-board/pine-shiplap-1x8.md';
  const stateOf = (words: string, edits: Edits = {}, more = '') => {
    const room: Edits = {
      'content/rooms/study.md': [
        [
          '[pine-shiplap-1x8, fir-tg-1x6]\n',
          `[pine-shiplap-1x8, fir-tg-1x6]\n    chosen: pine-shiplap-1x8\n    chosen-on: 2026-03-04\n${more}`,
        ],
      ],
    };
    const option: Edits = words === '' ? {} : { [board]: [['lead: 6 weeks', `${words}\nlead: 6 weeks`]] };
    return smallBook({ ...room, ...option, ...edits }, '2026-04-20', past).money.priceStates;
  };
  const ordered = '    ordered: { on: 2026-03-09, option: pine-shiplap-1x8 }\n';
  const until = (day: string) => `quoted: { on: 2026-03-02, by: Mill, until: ${day} }`;
  expect(stateOf('')).toMatchObject([{ state: 'estimated' }]);
  expect(stateOf(until('2026-05-01'))).toMatchObject([{ state: 'quoted', until: '2026-05-01' }]);
  expect(stateOf(until('2026-04-01'))).toMatchObject([{ state: 'estimated', until: '2026-04-01' }]);
  expect(stateOf('', {}, ordered)).toMatchObject([{ state: 'ordered' }]);
  const invoiced: Edits = {
    'content/house.md': [
      [
        'categories: [ceiling-board] }',
        'categories: [ceiling-board], invoices: [{ for: ceiling-board/pine-shiplap-1x8, number: F-7, on: 2026-04-14, amount: "$831.60", held-by: The builder }] }',
      ],
    ],
  };
  // 132 sq ft at $6.00 and 5 % tax, as computed: no warning.
  expect(stateOf('', invoiced, ordered)).toMatchObject([{ state: 'invoiced' }]);
});
