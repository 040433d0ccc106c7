import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  inLocale,
  parseLength,
  parsePitch,
  toRecordStep,
  usualLocale,
  writeLength,
  writePitch,
  type Length,
  type Locale,
} from '../../src/base/units/index.js';

const metric: Locale = { units: 'metric', currency: 'EUR' };

describe('a length as a record has it', () => {
  test.each<[Locale, number, string]>([
    [usualLocale, 0, '0"'],
    [usualLocale, 396_875, '1/64"'],
    [usualLocale, 25_400_000 * 6, '6"'],
    [usualLocale, 25_400_000 * 12, `1'-0"`],
    [usualLocale, 25_400_000 * 174.5, `14'-6 1/2"`],
    [usualLocale, 25_400_000 * 12.015625, `1'-0 1/64"`],
    [usualLocale, -25_400_000 * 6.75, '-6 3/4"'],
    [metric, 0, '0 mm'],
    [metric, 100_000, '0.1 mm'],
    [metric, 999_900_000, '999.9 mm'],
    [metric, 1_000_000_000, '1.00 m'],
    [metric, 4_432_100_000, '4.4321 m'],
    [metric, -2_500_000_000, '-2.50 m'],
  ])('%o %i', (locale, length, text) => {
    expect(inLocale(locale, () => writeLength(length as Length))).toBe(text);
  });

  test.each([usualLocale, metric])('is read back as it was, %o', (locale) => {
    inLocale(locale, () =>
      fc.assert(
        fc.property(fc.integer({ min: -2e12, max: 2e12 }), (nanometres) => {
          const length = toRecordStep(nanometres);
          expect(Math.abs(length - nanometres)).toBeLessThanOrEqual(200_000);
          expect(parseLength(writeLength(length))).toEqual({ ok: true, value: length });
        }),
      ),
    );
  });
});

test.each([usualLocale, metric])('a slope is read back to a millimetre in ten metres, %o', (locale) => {
  inLocale(locale, () =>
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 20, noNaN: true }), (slope) => {
        const read = parsePitch(writePitch(slope));
        if (!read.ok) throw new Error(read.why);
        // Degrees are coarser where it is steep.
        expect(Math.abs(read.value.rise / read.value.run - slope)).toBeLessThan(1e-5 * (1 + slope * slope));
      }),
    ),
  );
});

test('slopes as people write them', () => {
  expect(writePitch(0.5)).toBe('6/12');
  expect(writePitch(10)).toBe('120/12');
  expect(inLocale(metric, () => writePitch(Math.tan(Math.PI / 6)))).toBe('30°');
});
