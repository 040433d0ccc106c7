import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plusDays, workingDays } from '../../src/core/calendar/index.js';
import type { HouseCalendar, Weekday } from '../../src/core/model/index.js';
import { plainRules, rules } from './house.js';
import { atMost, processorTime } from '../processor-time.js';

describe('by hand, with the summer shutdown of 3 to 10 July 2026', () => {
  const calendar = workingDays(rules);

  test.each([
    ['2026-05-22', 1, '2026-05-26', 'over Memorial Day'],
    ['2026-07-02', 1, '2026-07-13', 'over the shutdown'],
    ['2026-07-13', -1, '2026-07-02', 'back over the shutdown'],
    ['2027-12-30', 1, '2028-01-03', 'New Year 2028 is a Saturday, kept on Friday 31 December 2027'],
    ['2028-01-03', -1, '2027-12-30', 'and back'],
    ['2026-05-02', 1, '2026-05-04', 'from a Saturday'],
    ['2026-05-02', -1, '2026-05-01', 'back from a Saturday'],
    ['2026-05-02', 0, '2026-05-02', 'nothing added moves nothing'],
    ['2026-04-06', 20, '2026-05-04', 'four weeks without a holiday'],
  ])('%s and %i: %s, %s', (date, days, expected) => {
    expect(calendar.add(date, days)).toBe(expected);
  });

  test.each([
    ['2026-05-22', '2026-05-26', 1],
    ['2026-05-26', '2026-05-22', -1],
    ['2026-05-02', '2026-05-03', 0],
    ['2026-05-01', '2026-05-03', 0],
    ['2026-05-02', '2026-05-04', 1],
    // The first working day before Saturday is Friday.
    ['2026-05-02', '2026-05-01', -1],
    ['2026-05-04', '2026-05-04', 0],
  ])('from %s to %s are %i', (from, to, expected) => {
    expect(calendar.between(from, to)).toBe(expected);
  });

  test.each([
    ['2026-07-04', 'Summer shutdown'],
    ['2026-07-10', 'Summer shutdown'],
    ['2026-11-26', 'Thanksgiving Day'],
    ['2026-05-02', 'Saturday'],
    ['2026-05-04', undefined],
    ['2026-07-13', undefined],
  ])('%s is off for %s', (date, why) => {
    expect(calendar.whyOff(date)).toBe(why);
    expect(calendar.isWorking(date)).toBe(why === undefined);
  });

  test('the nearest working day', () => {
    expect(calendar.onOrBefore('2026-07-05')).toBe('2026-07-02');
    expect(calendar.onOrAfter('2026-07-05')).toBe('2026-07-13');
    expect(calendar.onOrAfter('2026-07-13')).toBe('2026-07-13');
  });
});

test('without federal holidays the fourth of July week is worked', () => {
  const calendar = workingDays(plainRules);
  expect(calendar.isWorking('2026-07-03')).toBe(true);
  expect(calendar.add('2026-12-24', 1)).toBe('2026-12-25');
});

test('a house that works Saturdays keeps a Saturday holiday on its Saturday', () => {
  const calendar = workingDays({ ...rules, weekend: ['sunday'], closed: [] });
  expect(calendar.isWorking('2026-07-03')).toBe(true);
  expect(calendar.whyOff('2026-07-04')).toBe('Independence Day');
  // 4 July 2027 is a Sunday, kept on Monday.
  expect(calendar.whyOff('2027-07-05')).toBe('Independence Day');
});

test('a calendar without a working day ends its search', () => {
  const week: Weekday[] = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
  const never = workingDays({ ...rules, weekend: week });
  const later = never.add('2026-05-04', 3);
  const earlier = never.add('2026-05-04', -3);
  expect([later, earlier]).toEqual(['2126-12-31', '1926-01-01']);
  expect(never.isWorking(later)).toBe(false);
  expect(never.between('2026-05-04', '2027-05-04')).toBe(0);
  const shut = workingDays({ ...rules, closed: [{ from: '2026-01-01', to: '9999-12-31', why: 'Shut' }] });
  expect(shut.isWorking(shut.add('2026-05-04', 1))).toBe(false);
  expect(shut.add('2026-05-04', -1)).toBe('2025-12-31');
});

test('the ends of the calendar hold', () => {
  const calendar = workingDays(plainRules);
  expect(calendar.add('9999-12-31', 5)).toBe('9999-12-31');
  expect(calendar.add('0001-01-01', -5)).toBe('0001-01-01');
  expect(workingDays(rules).add('9999-12-01', 1)).toBe('9999-12-02');
});

describe('properties', () => {
  const day = fc.integer({ min: 0, max: 8000 }).map((days) => plusDays('2019-01-01', days));
  const week: Weekday[] = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
  const closed = fc
    .record({ from: day, length: fc.integer({ min: 0, max: 40 }) })
    .map(({ from, length }) => ({ from, to: plusDays(from, length), why: 'Closed' }));
  const someRules: fc.Arbitrary<HouseCalendar> = fc.record({
    weekend: fc.subarray(week, { maxLength: 6 }),
    holidays: fc.constantFrom('us-federal', 'none'),
    closed: fc.array(closed, { maxLength: 6 }),
    reviewDays: fc.constant(0),
  });
  const days = fc.integer({ min: -400, max: 400 });

  test('added and taken away again is the same working day', () => {
    fc.assert(
      fc.property(someRules, day, days, (house, date, count) => {
        const calendar = workingDays(house);
        const start = calendar.onOrAfter(date);
        expect(calendar.add(calendar.add(start, count), -count)).toBe(start);
      }),
    );
  });

  test('between undoes add, from any day', () => {
    fc.assert(
      fc.property(someRules, day, days, (house, date, count) => {
        const calendar = workingDays(house);
        expect(calendar.between(date, calendar.add(date, count))).toBe(count);
      }),
    );
  });

  test('add undoes between, to any working day', () => {
    fc.assert(
      fc.property(someRules, day, day, (house, from, to) => {
        const calendar = workingDays(house);
        const target = calendar.onOrBefore(to);
        fc.pre(from !== target);
        expect(calendar.add(from, calendar.between(from, target))).toBe(target);
      }),
    );
  });

  test('steps of one sign add up', () => {
    fc.assert(
      fc.property(someRules, day, fc.nat(200), fc.nat(200), fc.constantFrom(1, -1), (house, date, a, b, sign) => {
        const calendar = workingDays(house);
        expect(calendar.add(calendar.add(date, sign * a), sign * b)).toBe(calendar.add(date, sign * (a + b)));
      }),
    );
  });

  test('order of closed periods does not matter', () => {
    fc.assert(
      fc.property(someRules, day, days, (house, date, count) => {
        const turned = workingDays({ ...house, closed: [...house.closed].reverse() });
        expect(turned.add(date, count)).toBe(workingDays(house).add(date, count));
      }),
    );
  });
});

test('the years of a house are worked out once: 100 000 sums take less than a second', () => {
  const calendar = workingDays(rules);
  const took = processorTime(() => {
    for (let index = 0; index < 100_000; index++) calendar.add('2026-05-04', (index % 1000) - 500);
  });
  expect(took).toBeLessThan(atMost(1000, took));
});
