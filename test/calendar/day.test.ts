import { printDay } from '../../src/base/units/index.js';
import { expect, test } from 'vitest';
import { plusDays, printWorkingDays } from '../../src/core/calendar/index.js';

test('days are printed as people write them', () => {
  expect(printDay('2026-05-04')).toBe('4 May 2026');
});

test('one day is not plural', () => {
  expect([-3, -1, 0, 1, 2].map(printWorkingDays)).toEqual([
    '3 working days',
    '1 working day',
    '0 working days',
    '1 working day',
    '2 working days',
  ]);
});

test('calendar days cross months and leap days', () => {
  expect(plusDays('2028-02-28', 1)).toBe('2028-02-29');
  expect(plusDays('2026-12-31', 1)).toBe('2027-01-01');
  expect(plusDays('2026-03-01', -1)).toBe('2026-02-28');
});
