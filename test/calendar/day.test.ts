import { expect, test } from 'vitest';
import { isDay, plusDays, printDay, printWeekday, printWorkingDays } from '../../src/core/calendar/index.js';

test.each(['2026-05-04', '2024-02-29', '2000-02-29', '0001-01-01', '9999-12-31'])('%s is a day', (text) => {
  expect(isDay(text)).toBe(true);
});

test.each([
  '2026-02-29',
  '1900-02-29',
  '2026-13-01',
  '2026-00-10',
  '2026-04-31',
  '2026-04-00',
  '0000-01-01',
  '2026-5-4',
  '20260504',
  '2026-05-04T00:00',
  ' 2026-05-04',
  '+002026-05-04',
  'tomorrow',
  '',
])("'%s' is none", (text) => {
  expect(isDay(text)).toBe(false);
});

test('days are printed as people write them', () => {
  expect(printDay('2026-05-04')).toBe('4 May 2026');
  expect(printWeekday('2026-05-01')).toBe('Fri 1 May 2026');
  expect(printWeekday('2026-09-27')).toBe('Sun 27 September 2026');
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
