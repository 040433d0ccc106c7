import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  decimalNumber,
  inLocale,
  oneCurrency,
  parseMoney,
  parsePercent,
  parseRate,
  printDecimal,
  printMoney,
  printMoneyChange,
  printPercent,
  printRate,
  readDecimal,
  type Cents,
} from '../../src/base/units/index.js';

const cents = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }).map((n) => n as Cents);

describe('money', () => {
  it.each([
    ['$12,450', 1_245_000],
    ['$7.40', 740],
    ['$7.4', 740],
    ['$1,486,000.00', 148_600_000],
    ['$0', 0],
    ['−$310', -31_000],
    ['-$310.05', -31_005],
  ])('reads %s', (text, value) => {
    expect(parseMoney(text)).toEqual({ ok: true, value });
  });

  it.each([
    ['12,450', `'12,450' has no currency sign`, 'did you mean $12,450?'],
    ['12450', `'12450' has no currency sign`, 'did you mean $12,450?'],
    ['$12,45', `'$12,45' has a comma in the wrong place`, 'did you mean $12.45 or $1,245?'],
    ['$1,4860', `'$1,4860' has a comma in the wrong place`, 'did you mean $14,860?'],
    ['$7.405', `'$7.405' has parts of a cent`, 'write dollars and whole cents, such as $7.40'],
    ...['€20', '£7.40', 'CAD 12', 'CAD12', '12 CAD', 'CA$12', 'US$ 12', '$12 USD', '12,50 €', '12 euros'].map(
      (text) => [text, `'${text}' names a currency of its own`, oneCurrency()] as [string, string, string],
    ),
    ['CAD', `'CAD' is not an amount of money`, 'write dollars such as $12,450 or $7.40'],
  ])('refuses %s', (text, why, fix) => {
    expect(parseMoney(text)).toMatchObject({ ok: false, why, fix });
  });

  it('prints with thousands, without empty cents, with a true minus', () => {
    expect([1_245_000, 740, 5, 0, -31_000].map((n) => printMoney(n as Cents))).toEqual([
      '$12,450',
      '$7.40',
      '$0.05',
      '$0',
      '−$310',
    ]);
    expect(printMoney(1_245_000 as Cents, 'always')).toBe('$12,450.00');
  });

  it('prints changes with their sign', () => {
    expect([124_000, -31_000, 0].map((n) => printMoneyChange(n as Cents))).toEqual(['+$1,240', '−$310', '$0']);
  });

  it('is read back to the cent', () => {
    fc.assert(
      fc.property(cents, (n) => JSON.stringify(parseMoney(printMoney(n))) === JSON.stringify({ ok: true, value: n })),
    );
    fc.assert(
      fc.property(
        cents,
        (n) => JSON.stringify(parseMoney(printMoney(n, 'always'))) === JSON.stringify({ ok: true, value: n }),
      ),
    );
  });
});

describe('rates', () => {
  it.each([
    ['$7.40 / sq ft', { rate: { amount: 740, scale: 2 }, unit: 'sq ft' }],
    ['$14.60/lin ft', { rate: { amount: 1460, scale: 2 }, unit: 'lin ft' }],
    ['$385 / each', { rate: { amount: 385, scale: 0 }, unit: 'each' }],
    ['$1,200 / lump', { rate: { amount: 1200, scale: 0 }, unit: 'lump' }],
    ['$0.075 per sf', { rate: { amount: 75, scale: 3 }, unit: 'sq ft' }],
  ])('reads %s', (text, value) => {
    expect(parseRate(text)).toEqual({ ok: true, value });
  });

  it.each([
    ['$7.40', `'$7.40' does not say for what`],
    ['7.40 / sq ft', `'7.40 / sq ft' has no currency sign`],
    ['€7.40 / sq ft', `'€7.40 / sq ft' names a currency of its own`],
    ['CA$7.40 per each', `'CA$7.40 per each' names a currency of its own`],
    ['$7.40 / yard', `'yard' is not a unit`],
    ['$-7 / each', `'$-7 / each' is not a rate`],
  ])('refuses %s', (text, why) => {
    expect(parseRate(text)).toMatchObject({ ok: false, why });
  });

  it('prints as written', () => {
    expect(printRate({ rate: { amount: 740, scale: 2 }, unit: 'sq ft' })).toBe('$7.40 / sq ft');
    expect(printRate({ rate: { amount: 120_000, scale: 2 }, unit: 'lump' })).toBe('$1,200 / lump');
    expect(printRate({ rate: { amount: 75, scale: 3 }, unit: 'sq ft' })).toBe('$0.075 / sq ft');
  });
});

describe('percent', () => {
  it('reads a share exactly', () => {
    expect(parsePercent('7.25 %')).toEqual({ ok: true, value: { amount: 725, scale: 4 } });
    expect(parsePercent('15%')).toEqual({ ok: true, value: { amount: 15, scale: 2 } });
  });

  it('asks what 15 means', () => {
    expect(parsePercent('15')).toEqual({ ok: false, why: `'15' has no % sign`, fix: 'did you mean 15 %?' });
    expect(parsePercent('0.8')).toEqual({ ok: false, why: `'0.8' has no % sign`, fix: 'did you mean 0.8 % or 80 %?' });
  });

  it.each(['-1 %', '101 %', 'ten %', ''])('refuses %s', (text) => {
    expect(parsePercent(text).ok).toBe(false);
  });

  it('prints', () => {
    expect(
      [
        { amount: 725, scale: 4 },
        { amount: 15, scale: 2 },
        { amount: 1, scale: 0 },
      ].map(printPercent),
    ).toEqual(['7.25 %', '15 %', '100 %']);
  });
});

describe('decimals', () => {
  it('keep the number that was written', () => {
    const decimals = fc.record({
      amount: fc.integer({ min: -1_000_000, max: 1_000_000 }),
      scale: fc.integer({ min: 0, max: 6 }),
    });
    fc.assert(
      fc.property(decimals, (decimal) => {
        const back = readDecimal(printDecimal(decimal));
        return (
          back !== undefined &&
          Object.is(decimalNumber(back), decimalNumber({ ...decimal, amount: decimal.amount || 0 }))
        );
      }),
    );
  });

  it('refuse what is no number', () => {
    expect(['1,00', '1.', '.', '1e3', '0x1', '1.1234567', '٣'].map(readDecimal)).toEqual(Array(7).fill(undefined));
  });
});

test('what is printed of any currency is read again, be its sign two words', () => {
  for (const currency of Intl.supportedValuesOf('currency'))
    inLocale({ units: 'metric', currency }, () => {
      for (const amount of [0, 1_234_500] as Cents[])
        expect(parseMoney(printMoney(amount, 'always')), currency).toEqual({ ok: true, value: amount });
    });
});
