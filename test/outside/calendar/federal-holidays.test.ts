import { execFileSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { federalHolidays } from '../../../src/core/calendar/index.js';
import { published } from '../published.js';
import { statuteHolidays } from './statute.js';

const weekend = ['saturday', 'sunday'] as const;
const statute = '5 U.S.C. 6103(a), as quoted from the United States Code, 2022 edition';

/** Kept in a year: its own observed days that stay in it, and next New Year's Day when it is kept in December. */
function observedIn(year: number): string[] {
  return [...statuteHolidays(year), ...statuteHolidays(year + 1)]
    .map((holiday) => holiday.observed)
    .filter((date) => date.startsWith(`${year}-`))
    .sort();
}

for (const year of [2024, 2025, 2026, 2027, 2028, 2029, 2030]) {
  published({ what: `federal holidays of ${year}, observed`, source: `${statute}, and (b)`, mark: 'S2' }, () => {
    expect([...federalHolidays(year, weekend).keys()].sort()).toEqual(observedIn(year));
  });

  published({ what: `federal holidays of ${year}, as the law names them`, source: statute, mark: 'S2' }, () => {
    const legal = statuteHolidays(year).map((holiday) => holiday.legal);
    expect([...federalHolidays(year, []).keys()].sort()).toEqual(legal.sort());
  });
}

const short = (year: number): string =>
  [...federalHolidays(year, weekend).keys()]
    .sort()
    .map((day) => day.slice(5))
    .join(' ');

published(
  { what: 'eleven days of 2026', source: 'npm @18f/us-federal-holidays 4.0.0, its list as printed', mark: 'S' },
  () => {
    expect(short(2026)).toBe('01-01 01-19 02-16 05-25 06-19 07-03 09-07 10-12 11-11 11-26 12-25');
  },
);

published(
  {
    what: "2027, and New Year's Day 2028 on 31 December",
    source: 'npm @18f/us-federal-holidays 4.0.0, its list as printed',
    mark: 'S',
  },
  () => {
    expect(short(2027)).toBe('01-01 01-18 02-15 05-31 06-18 07-05 09-06 10-11 11-11 11-25 12-24 12-31');
    expect(federalHolidays(2027, weekend).get('2027-12-31')).toBe("New Year's Day");
    expect(federalHolidays(2028, weekend).has('2028-01-01')).toBe(false);
  },
);

published({ what: 'the last Monday in May 2027 is the fifth', source: statute, mark: 'C' }, () => {
  expect(federalHolidays(2027, weekend).get('2027-05-31')).toBe('Memorial Day');
  expect(federalHolidays(2027, weekend).has('2027-05-24')).toBe(false);
});

test('1971 to 2100 agree with the statute, Juneteenth from 2021 on', () => {
  for (let year = 1971; year <= 2100; year++) {
    const expected = observedIn(year).filter((day) => year >= 2021 || !/-06-(18|19|20)$/.test(day));
    expect([...federalHolidays(year, weekend).keys()].sort()).toEqual(expected);
  }
});

test('a house that works on Saturdays keeps a Saturday holiday on its day, 1990 to 2060', () => {
  for (let year = 1990; year <= 2060; year++) {
    const kept = [...statuteHolidays(year - 1), ...statuteHolidays(year), ...statuteHolidays(year + 1)]
      .filter(({ name }) => year >= 2021 || !name.startsWith('Juneteenth'))
      .map(({ legal, observed }) => (observed < legal ? legal : observed))
      .filter((day) => day.startsWith(`${year}-`));
    expect([...federalHolidays(year, ['sunday']).keys()].sort()).toEqual(kept.sort());
  }
});

test('before the Uniform Monday Holiday Act took effect, in 1971, there are none', () => {
  expect(federalHolidays(1970, weekend).size).toBe(0);
  expect(federalHolidays(1971, weekend).size).toBeGreaterThan(0);
});

test('the package gives the same days in every time zone, clock change at midnight or not', () => {
  const script = `
    const { allForYear } = require('@18f/us-federal-holidays');
    const days = [];
    for (let year = 1971; year <= 2040; year++) days.push(...allForYear(year).map((holiday) => holiday.dateString));
    process.stdout.write(days.join(' '));`;
  const zones = [
    'UTC',
    'America/New_York',
    'Pacific/Kiritimati',
    'Pacific/Pago_Pago',
    'America/Sao_Paulo',
    'Asia/Beirut',
  ];
  const lists = zones.map((zone) =>
    execFileSync(process.execPath, ['-e', script], { encoding: 'utf8', env: { ...process.env, TZ: zone } }),
  );
  expect(lists[0]).toContain('2026-07-03');
  expect(new Set(lists).size).toBe(1);
});
