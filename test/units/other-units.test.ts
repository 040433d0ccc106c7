import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compass,
  parseArea,
  parseCalendarDays,
  parseDay,
  parseDays,
  parsePitch,
  parseQuantity,
  parseWeight,
  printAmount,
  printArea,
  printAreaBeside,
  inLocale,
  printDay,
  printMonth,
  printQuantity,
  printShortMonth,
  usualLocale,
  type Area,
} from '../../src/base/units/index.js';

describe('quantities', () => {
  it('reads amounts with their unit', () => {
    expect(parseQuantity('24 sq ft')).toEqual({ ok: true, value: { amount: 24, unit: 'sq ft' } });
    expect(parseQuantity('8 lin ft')).toEqual({ ok: true, value: { amount: 8, unit: 'lin ft' } });
    expect(parseQuantity('1 each')).toEqual({ ok: true, value: { amount: 1, unit: 'each' } });
    expect(parseQuantity('1,250.5 sf')).toEqual({ ok: true, value: { amount: 1250.5, unit: 'sq ft' } });
  });

  it('refuses a bare number and an unknown unit', () => {
    expect(parseQuantity('24')).toMatchObject({ ok: false, why: `'24' has no unit` });
    expect(parseQuantity('24 yards')).toMatchObject({ ok: false, why: `'yards' is not a unit` });
    expect(parseQuantity('24 constructor')).toMatchObject({ ok: false, why: `'constructor' is not a unit` });
  });

  it('prints one digit at most', () => {
    expect(printQuantity(342.5, 'sq ft')).toBe('342.5 sq ft');
    expect(printQuantity(1240, 'lin ft')).toBe('1,240 lin ft');
    expect(printQuantity(3, 'each')).toBe('3 each');
    expect(printArea(342.04 as Area)).toBe('342 sq ft');
    // 342.5 × 0.09290304 = 31.8193 m²
    expect(printAreaBeside(342.5 as Area)).toBe('31.8 m²');
  });

  it('rounds halves away from zero even where the float falls short', () => {
    // 1.005 and 0.15 are a hair below themselves as floats.
    expect([printAmount(0.15, 1), printAmount(1.005, 2), printAmount(-0.25, 1), printAmount(-0.04, 1)]).toEqual([
      '0.2',
      '1.01',
      '−0.3',
      '0',
    ]);
  });
});

describe('areas', () => {
  it('reads square feet and square metres', () => {
    expect(parseArea('32 sq ft')).toEqual({ ok: true, value: 32 });
    // 3 m² / 0.09290304 = 32.2917 sq ft
    const metric = parseArea('3 m2');
    expect(metric.ok && metric.value).toBeCloseTo(32.2917, 4);
    expect(parseArea('3 lin ft').ok).toBe(false);
    expect(parseArea('3').ok).toBe(false);
  });
});

describe('days', () => {
  it('are real', () => {
    expect(parseDay('2026-05-04')).toEqual({ ok: true, value: '2026-05-04' });
    expect(parseDay('2024-02-29').ok).toBe(true);
    expect(parseDay('2026-02-29')).toEqual({
      ok: false,
      why: `'2026-02-29' is no day: February 2026 has 28 days`,
      fix: 'check the month and the day',
    });
    // A day that is counted on from must be one still.
    for (const day of ['9999-12-31', '0001-01-01'])
      expect(parseDay(day)).toEqual({
        ok: false,
        why: `'${day}' is no day of a job`,
        fix: 'years run from 1900 to 2199',
      });
    expect(parseDay('2026-13-01')).toMatchObject({ why: `'2026-13-01' has no month 13` });
    expect(parseDay('2026-5-4')).toMatchObject({ fix: 'did you mean 2026-05-04?' });
    expect(parseDay('26-5-4')).toMatchObject({ fix: 'write year-month-day, such as 2026-05-04' });
  });

  it.each([
    ['5/4/2026', '2026-05-04 or 2026-04-05'],
    ['3/27/2026', '2026-03-27'],
    ['27/3/2026', '2026-03-27'],
    ['4/4/2026', '2026-04-04'],
    ['3.4.2026', '2026-04-03'],
    ['2026/3/27', '2026-03-27'],
    ['20260327', '2026-03-27'],
    ['2026-03-27T10:00:00Z', '2026-03-27'],
    ['27 March 2026', '2026-03-27'],
    ['March 27th, 2026', '2026-03-27'],
    ['Mar. 27 2026', '2026-03-27'],
  ])('%s was meant as %s', (written, meant) => {
    expect(parseDay(written)).toEqual({
      ok: false,
      why: `'${written}' is not a day`,
      fix: `did you mean ${meant}? Days are written year-month-day`,
    });
  });

  it.each(['31/31/2026', 'March 2026', '27 Brumaire 2026', '2026-03-27x', ''])('%j was meant as no day', (written) => {
    expect(parseDay(written)).toMatchObject({ ok: false });
    expect(parseDay(written)).not.toMatchObject({ fix: expect.stringContaining('did you mean') as string });
  });

  it('are real, too', () => {
    expect(parseDay('2026-04-31').ok).toBe(false);
  });

  it('print without an order of numbers', () => {
    expect(printDay('2026-05-04')).toBe('4 May 2026');
    expect([printMonth('2026-05-04'), printShortMonth('2026-09-01'), printShortMonth('2027-01-01')]).toEqual([
      'May 2026',
      'Sep',
      'Jan 2027',
    ]);
    inLocale({ ...usualLocale, language: 'en-US' }, () =>
      expect([printDay('2026-05-04'), printMonth('2026-05-04'), printShortMonth('2026-09-01')]).toEqual([
        'May 4, 2026',
        'May 2026',
        'Sep',
      ]),
    );
    inLocale({ ...usualLocale, language: 'de' }, () =>
      expect([printMonth('2026-05-04'), printShortMonth('2027-01-01')]).toEqual(['Mai 2026', 'Jan. 2027']),
    );
  });

  it('are counted in working days', () => {
    expect([parseDays('30 days'), parseDays('6 weeks'), parseDays('1 week'), parseDays('0 days')]).toEqual(
      [30, 30, 5, 0].map((value) => ({ ok: true, value })),
    );
    expect(parseDays('30')).toMatchObject({ ok: false, fix: 'write 30 days or 30 weeks' });
    expect(parseDays('2 months')).toMatchObject({ ok: false, fix: 'write weeks, such as 8 weeks' });
    expect(parseDays('-3 days').ok).toBe(false);
  });

  it('reads calendar days, a week being seven', () => {
    expect([parseCalendarDays('180 days'), parseCalendarDays('26 weeks')]).toEqual(
      [180, 182].map((value) => ({ ok: true, value })),
    );
    expect(parseCalendarDays('6 months').ok).toBe(false);
  });
});

describe('pitch, weight, bearing', () => {
  it('reads a pitch', () => {
    expect(parsePitch('6/12')).toEqual({ ok: true, value: { rise: 6, run: 12 } });
    expect(parsePitch('4.5 / 12')).toEqual({ ok: true, value: { rise: 4.5, run: 12 } });
    expect(parsePitch('6')).toMatchObject({ fix: 'did you mean 6/12?' });
    expect(['0/12', '6/0', '-6/12', 'steep'].map((text) => parsePitch(text).ok)).toEqual([false, false, false, false]);
    const side = fc.integer({ min: 1, max: 48 });
    fc.assert(
      fc.property(
        side,
        side,
        (rise, run) =>
          JSON.stringify(parsePitch(`${rise}/${run}`)) === JSON.stringify({ ok: true, value: { rise, run } }),
      ),
    );
  });

  it('reads a weight', () => {
    expect(parseWeight('2.1 lb / sq ft')).toEqual({ ok: true, value: { pounds: 2.1, per: 'sq ft' } });
    expect(parseWeight('85 lbs per each')).toEqual({ ok: true, value: { pounds: 85, per: 'each' } });
    const metric = parseWeight('1 kg / each');
    // 1 / 0.45359237
    expect(metric.ok && metric.value.pounds).toBeCloseTo(2.20462, 5);
    expect(['2.1', '2.1 lb', '2.1 stone / each', '-2 lb / each'].map((text) => parseWeight(text).ok)).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });

  it('names the bearings clockwise from north', () => {
    expect(compass).toEqual(['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west']);
  });
});
