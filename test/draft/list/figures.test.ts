import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFigure, readLead, readPrice, readUnit } from '../../../src/draft/list/figures.js';
import { inLocale, type Locale } from '../../../src/base/units/index.js';

const euros: Locale = { units: 'metric', currency: 'EUR' };

describe('a figure', () => {
  test.each([
    ['1,250.00', 'point', 1250],
    ['1.250,00', 'comma', 1250],
    ['1.250', 'comma', 1250],
    ['1,250', 'point', 1250],
    ['1.250', 'point', 1.25],
    ['1,250', 'comma', 1.25],
    ['1 486 000,5', 'comma', 1_486_000.5],
    ["1'486'000.5", 'point', 1_486_000.5],
    ['12,-', 'comma', 12],
    ['0.075', 'point', 0.075],
    [7.2, 'comma', 7.2],
    // What a workbook computed is read to a hundredth of a cent.
    [10 / 3, 'point', 3.3333],
  ] as const)('%s with a decimal %s is %d', (cell, decimals, value) => {
    const read = readFigure(cell, decimals);
    expect(read.ok && read.value.amount / 10 ** read.value.scale).toBe(value);
  });

  test.each([
    ['12,40', 'point', 'write it with a decimal point; or, if all of the list is so, decimals: comma in its record'],
    ['12.4', 'comma', 'write it with a decimal comma; or, if all of the list is so, decimals: point in its record'],
    ['12,4O', 'comma', 'write digits, or name the row under leave-out'],
    ['1,25,000', 'point', 'write digits, or name the row under leave-out'],
    ['1..2', 'point', 'write digits, or name the row under leave-out'],
    ['-3', 'point', 'a price is more than nothing'],
    ['(3)', 'point', 'a price is more than nothing'],
    ['3-', 'point', 'a price is more than nothing'],
    [-3, 'point', 'a price is more than nothing'],
    ['', 'point', 'write digits, or name the row under leave-out'],
  ] as const)('%s with a decimal %s is none', (cell, decimals, fix) => {
    expect(readFigure(cell, decimals)).toMatchObject({ ok: false, fix });
  });

  test('means the same by either convention, with and without thousands set off', () => {
    const groups = (whole: number, mark: string): string => String(whole).replace(/\B(?=(\d{3})+$)/gu, mark);
    fc.assert(
      fc.property(fc.nat(9_999_999), fc.nat(99), fc.boolean(), (whole, cents, isGrouped) => {
        const part = String(cents).padStart(2, '0');
        const point = readFigure(`${groups(whole, isGrouped ? ',' : '')}.${part}`, 'point');
        const comma = readFigure(`${groups(whole, isGrouped ? '.' : '')},${part}`, 'comma');
        expect(point).toEqual({ ok: true, value: { amount: whole * 100 + cents, scale: 2 } });
        expect(comma).toEqual(point);
      }),
    );
  });
});

describe('a price', () => {
  test.each(['$7.40', '7.40 USD', 'USD 7.40', ' 7.40 '])('%s is in the currency of the house', (cell) => {
    expect(readPrice(cell, 'point')).toMatchObject({ ok: true, value: { figure: { amount: 740, scale: 2 } } });
  });

  test.each(['€7.40', 'CAD 7.40', '7.40 EUR', 'CA$7.40'])('%s is not', (cell) => {
    expect(readPrice(cell, 'point')).toMatchObject({ ok: false, why: `'${cell}' is no price in USD` });
  });

  test('may say what it is for, and may be in euros', () => {
    expect(readPrice('7.40 / sq ft', 'point')).toMatchObject({ ok: true, value: { unit: 'sq ft' } });
    const read = inLocale(euros, () => readPrice('1.071,20 € per m²', 'comma'));
    expect(read).toEqual({ ok: true, value: { figure: { amount: 107_120, scale: 2 }, unit: 'm²' } });
  });

  test('and a unit have something between them: a figure with a word may be what a pack holds', () => {
    expect(readPrice('5 sf', 'point')).toMatchObject({
      ok: false,
      why: "'5 sf' is no price: nothing stands between the figure and 'sf'",
      fix: expect.stringMatching(/^write 5 \/ sf; .*columns\.price/u) as string,
    });
  });

  test.each(['', 'on request', '0', 0, '0,00'])('%s is none', (cell) => {
    expect(readPrice(cell, 'comma').ok).toBe(false);
  });
});

describe('a unit', () => {
  test.each([
    ['SF', 'sq ft'],
    ['per sq. ft.', 'sq ft'],
    ['m²', 'm2'],
    ['LM', 'm'],
    ['Ea.', 'each'],
    ['stk', 'each'],
  ])('%s is %s', (word, unit) => {
    expect(readUnit(word, { STK: 'each' })).toEqual({ ok: true, value: unit });
  });

  test.each(['100 m2', 'box', 'board ft', 'constructor'])('%s is none: a price for it is another price', (word) => {
    expect(readUnit(word, {}).ok).toBe(false);
  });
});

test.each([
  ['4 wks', '4 weeks'],
  ['4 Wochen', '4 weeks'],
  ['2-3 wk.', '3 weeks'],
  ['10 Tage', '10 days'],
  ['In stock', '0 days'],
  ['ab Lager', '0 days'],
])('a lead time as lists have it: %s', (cell, expected) => {
  expect(readLead(cell, undefined)).toEqual({ ok: true, value: expected });
});

test('of a range of lead times the longer one counts', () => {
  expect(readLead('4–6 weeks', undefined)).toEqual({ ok: true, value: '6 weeks' });
  expect(readLead('4 - 6', 'weeks')).toEqual({ ok: true, value: '6 weeks' });
  expect(readLead(6, 'days')).toEqual({ ok: true, value: '6 days' });
  expect(readLead(6, undefined)).toMatchObject({ ok: false, why: "'6' has no unit" });
  expect(readLead('soon', 'days').ok).toBe(false);
});
