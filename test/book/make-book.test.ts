import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { fromInches } from '../../src/base/units/index.js';
import { smallBook } from './small-house.js';

const study = 'content/rooms/study.md';

describe('the small house', () => {
  const book = smallBook();
  const floor = book.selections.find((selection) => selection.category === 'floor');
  const ceiling = book.selections.find((selection) => selection.category === 'ceiling-board');

  test('floor: 120 sq ft net, 126 with waste, 7 cartons', () => {
    expect(floor?.takeoff[0]).toMatchObject({ gross: 120, net: 120, unit: 'sq ft' });
    expect(floor?.takeoff[0]?.required).toBeCloseTo(126, 9);
    expect(book.orders).toHaveLength(1);
    expect(book.orders[0]).toMatchObject({ packs: 7, ordered: 140 });
  });

  // pine 140 × $4 = 560, tax 28, labor 120 × $5 = 600; oak 140 × $10 = 1 400, tax 70, labor 600
  test('a cheaper choice returns its difference', () => {
    expect(floor?.cost).toMatchObject({ material: 56000, tax: 2800, labor: 60000, total: 118800 });
    expect(floor?.change).toBe(118800 - 207000);
    expect(book.money.today).toBe(10_000_000 - 88_200);
  });

  // shiplap 132 × 6 = 792 + 39.60 tax = 831.60 of 1 000: 168.40 back; fir 132 × 8 = 1 056 + 52.80 = 1 108.80: 108.80 over + 15 %
  test('low and high of what is open', () => {
    expect(book.money.low).toBe(book.money.today - 16_840);
    expect(book.money.high).toBe(book.money.today + 10_880 + 1_632);
    expect(ceiling?.alternatives.map((each) => each.againstToday)).toEqual([-16_840, 12_512]);
  });

  test('a house need not name a climate zone', () => {
    const bare = smallBook({ 'content/house.md': [['climate-zone: 5A\n', '']] });
    expect(Object.keys(bare.house)).not.toContain('climateZone');
    expect({ ...bare.house, climateZone: '5A' }).toEqual(book.house);
  });

  test('decide-by is the earlier of lead time and what the choice fixes early', () => {
    const dates = Object.fromEntries(book.calendar.milestones.map(({ id, date }) => [id, date]));
    // 40 working days after 4 May over Memorial Day, Juneteenth and Independence Day observed on 3 July; then 20 more
    expect(dates).toEqual({ framing: '2026-05-04', drywall: '2026-07-01', trim: '2026-07-30' });
    // boards: 6 weeks and 5 days before trim is earlier than 5 days before drywall (24 June)
    expect(ceiling?.decision).toMatchObject({
      by: '2026-06-09',
      because: 'lead-time',
      milestone: 'trim',
      state: 'open',
    });
    // floor: 5 days before framing is earlier than 4 weeks and 5 days before trim
    expect(floor?.decision).toMatchObject({
      by: '2026-04-27',
      because: 'fixes-early',
      milestone: 'framing',
      state: 'decided',
    });
  });

  test('is as its schema says, and the same twice', () => {
    const schema = JSON.parse(readFileSync('schemas/book.schema.json', 'utf8')) as object;
    const validate = new Ajv2020({ strict: false }).compile(schema);
    expect(validate(JSON.parse(JSON.stringify(book))) ? [] : validate.errors).toEqual([]);
    expect(validate({ ...book, stray: 1 })).toBe(false);
    expect(JSON.stringify(smallBook())).toBe(JSON.stringify(book));
  });
});

test('choosing what is open turns its forecast into the total', () => {
  const chosen = smallBook({
    [study]: [
      [
        '    considering: [pine-shiplap-1x8, fir-tg-1x6]',
        '    considering: [pine-shiplap-1x8, fir-tg-1x6]\n    chosen: fir-tg-1x6',
      ],
    ],
  });
  expect(chosen.money.today).toBe(smallBook().money.high);
  expect(chosen.money.steps.at(-1)).toMatchObject({ kind: 'total', running: chosen.money.today });
  expect(chosen.money.allowances[0]).toMatchObject({
    committed: 110_880,
    overage: 10_880,
    markup: 1_632,
    settled: true,
  });
});

test('the day moves states, not money', () => {
  const late = smallBook({}, '2026-07-20', ({ code }) => code === 'decide-late');
  expect(late.money).toEqual(smallBook().money);
  expect(late.selections.find((selection) => selection.category === 'ceiling-board')?.decision.state).toBe('late');
});

// 10 × 12 ft, boards along the 12 ft: 120" / 5 1/8" is 23.4, so 24 courses of one 12 ft board; the ends are equal at
// (120 − 22 × 5.125) / 2 = 3 5/8". Bought 24 × 12 × 5 1/8" = 123 sq ft, of which 120 lie on the ceiling: 2.4 % waste.
test('a chosen board ceiling is laid out, and the order says which lengths to buy', () => {
  const laid = smallBook({
    [study]: [
      [
        '    considering: [pine-shiplap-1x8, fir-tg-1x6]',
        '    considering: [pine-shiplap-1x8, fir-tg-1x6]\n    chosen: fir-tg-1x6',
      ],
    ],
  });
  const layout = laid.selections.find((selection) => selection.category === 'ceiling-board')?.takeoff[0]?.layout;
  expect(layout).toMatchObject({ courses: 24, firstCourse: fromInches(3.625), lastCourse: fromInches(3.625) });
  expect(layout?.waste).toBeCloseTo(3 / 123, 9);
  const order = laid.orders.find((each) => each.option === 'ceiling-board/fir-tg-1x6');
  expect(order?.stock).toEqual([{ length: fromInches(144), count: 24 }]);
  expect(laid.orders.find((each) => each.option === 'floor/pine')?.stock).toEqual([]);
});
