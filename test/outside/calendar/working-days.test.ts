import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decide, plusDays, workingDays } from '../../../src/core/calendar/index.js';
import { category, dated, option, rules } from '../../calendar/house.js';
import { iso, shift, statuteHolidays } from './statute.js';

/** The same house, worked out the slow way: one day after the other with `Date`, holidays from the statute's text. */
const holidays = new Set(
  [...Array(14).keys()].flatMap((index) => statuteHolidays(2020 + index).map((holiday) => holiday.observed)),
);

function works(date: Date): boolean {
  const day = iso(date);
  if (date.getUTCDay() === 0 || date.getUTCDay() === 6 || holidays.has(day)) return false;
  return !rules.closed.some((period) => day >= period.from && day <= period.to);
}

function walk(from: string, days: number): string {
  let date = new Date(`${from}T00:00:00Z`);
  for (let left = Math.abs(days); left > 0;) {
    date = shift(date, Math.sign(days));
    if (works(date)) left -= 1;
  }
  return iso(date);
}

function count(from: string, to: string): number {
  if (from > to) return -[...daysFrom(to, from)].filter(works).length;
  return [...daysFrom(from, to)].map((date) => shift(date, 1)).filter(works).length;
}

/** Days from `from` up to but not with `to`. */
function* daysFrom(from: string, to: string): Generator<Date> {
  for (let date = new Date(`${from}T00:00:00Z`); iso(date) < to; date = shift(date, 1)) yield date;
}

const calendar = workingDays(rules);
const day = fc.integer({ min: 0, max: 2500 }).map((days) => plusDays('2024-01-01', days));

test('adding agrees with a walk day by day', () => {
  fc.assert(
    fc.property(day, fc.integer({ min: -300, max: 300 }), (date, days) => {
      expect(calendar.add(date, days)).toBe(walk(date, days));
    }),
  );
});

test('counting agrees with a walk day by day', () => {
  fc.assert(
    fc.property(day, day, (from, to) => {
      expect(calendar.between(from, to)).toBe(count(from, to));
    }),
  );
});

test('each day of 2024 to 2030 is worked or not as the walk says', () => {
  for (const date of daysFrom('2024-01-01', '2031-01-01')) {
    expect(`${iso(date)} ${calendar.isWorking(iso(date))}`).toBe(`${iso(date)} ${works(date)}`);
  }
});

test('a decide-by day walked: trim 11 Sep 2026, 6 weeks of lead time, 5 days for review, backing before drywall', () => {
  const boards = category('trim', { milestone: 'drywall', why: 'Hung boards need backing before the board goes up' });
  for (const lead of [0, 10, 24, 25, 26, 30, 60]) {
    const { decision } = decide(
      { category: boards, options: [option('Alder', lead)], chosen: false },
      dated,
      calendar,
      '2026-03-02',
    );
    const byLead = walk(walk('2026-09-11', -lead), -5);
    const byDrywall = walk('2026-08-06', -5);
    expect([lead, decision.by]).toEqual([lead, byLead < byDrywall ? byLead : byDrywall]);
  }
});

test('a need and a measure on site walked: blocking before framing 4 May 2026, made 35 days after drywall 6 Aug', () => {
  const railing = { ...category('trim'), measuredAfter: 'drywall' };
  const needs = [{ id: 'blocking', what: 'Blocking', by: 'framing', before: 'framing' }];
  for (const lead of [10, 25, 26, 35]) {
    const product = { ...option('Railing', lead), needs };
    const { decision } = decide(
      { category: railing, options: [product], chosen: false },
      dated,
      calendar,
      '2026-03-02',
    );
    expect(decision.by).toBe(walk('2026-05-04', -5));
    const free = walk('2026-09-11', -lead);
    const ordered = free < '2026-08-06' ? '2026-08-06' : free;
    expect([lead, decision.orderBy, decision.onSite]).toEqual([
      lead,
      ordered,
      free < '2026-08-06' ? walk(ordered, lead) : '2026-09-11',
    ]);
    expect(decision.waits ?? 0).toBe(count('2026-09-11', decision.onSite));
  }
});
