import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dateMilestones, workingDays } from '../../src/core/calendar/index.js';
import type { Milestone } from '../../src/core/model/index.js';
import { after, chain, dated, fixed, house, plainRules, rules } from './house.js';

const dates = (milestones: readonly Milestone[], slips?: ReadonlyMap<string, number>, calendar = rules) =>
  Object.fromEntries(
    (dateMilestones(house(milestones, calendar), slips).value ?? []).map(({ id, date }) => [id, date]),
  );

const codes = (milestones: readonly Milestone[], slips?: ReadonlyMap<string, number>) =>
  dateMilestones(house(milestones), slips).problems.map((problem) => problem.code);

test('a chain by hand', () => {
  // Framing: 6 Apr + 4 weeks. Drywall: 60 weekdays after 4 May is 27 Jul; Memorial Day, Juneteenth and six days of
  // shutdown go, so 8 more: 6 Aug. Trim: 25 weekdays after 6 Aug is 10 Sep; Labor Day goes: 11 Sep.
  expect(dateMilestones(house(chain))).toEqual({ value: dated, problems: [] });
});

test('a slip moves its milestone and what comes after, nothing before', () => {
  // Framing: 4 May + 2 weeks. Drywall: 60 weekdays after 18 May is 10 Aug, the same 8 days go: 20 Aug. Trim: 25 weekdays
  // after 20 Aug is 24 Sep, Labor Day goes: 25 Sep.
  const { value } = dateMilestones(house(chain), new Map([['framing', 10]]));
  expect(value?.map(({ date }) => date)).toEqual(['2026-04-06', '2026-05-18', '2026-08-20', '2026-09-25']);
  expect(value?.[1]?.basis).toBe('20 working days after Foundation, moved 10 working days later');
  expect(value?.[2]?.basis).toBe('60 working days after Framing starts');
});

test('a fixed date slips too, and earlier as well', () => {
  expect(dates(chain, new Map([['foundation', 1]])).framing).toBe('2026-05-05');
  const { value } = dateMilestones(house(chain), new Map([['foundation', -1]]));
  expect(value?.[0]).toMatchObject({ date: '2026-04-03', basis: 'fixed, moved 1 working day earlier' });
});

test('days of none and days before are said in words', () => {
  const { value } = dateMilestones(
    house([fixed('move-in', '2026-05-04', 'Move in'), after('cleaning', 'move-in', -3), after('keys', 'move-in', 0)]),
  );
  expect(value?.map(({ date, basis }) => `${date} ${basis}`)).toEqual([
    '2026-05-04 fixed',
    '2026-04-29 3 working days before Move in',
    '2026-05-04 same day as Move in',
  ]);
});

test('a note comes along', () => {
  const { value } = dateMilestones(house([{ ...fixed('framing', '2026-05-04'), note: 'Crew of four' }]));
  expect(value?.[0]?.note).toBe('Crew of four');
});

describe('what is done', () => {
  const done = (milestone: Milestone, doneOn: string): Milestone => ({ ...milestone, doneOn });
  const [foundation, framing, ...rest] = chain;

  test('nothing moves it, and what follows counts from its day', () => {
    // Framing done Thu 7 May, 3 working days late. Drywall: 60 weekdays after 7 May is 30 Jul; 8 days go: 11 Aug.
    const facts = [foundation!, done(framing!, '2026-05-07'), ...rest];
    const { value, problems } = dateMilestones(house(facts), new Map([['framing', 10]]));
    expect(value?.map(({ date }) => date)).toEqual(['2026-04-06', '2026-05-07', '2026-08-11', '2026-09-16']);
    expect(value?.[1]).toMatchObject({
      done: true,
      planned: '2026-05-04',
      basis: 'done, 3 working days later than planned',
    });
    expect(value?.[1]).not.toHaveProperty('float');
    expect(problems).toMatchObject([{ code: 'slip-done', severity: 'warning' }]);
  });

  test('a slip of what comes before stops at it', () => {
    const facts = [foundation!, done(framing!, '2026-05-04'), ...rest];
    expect(dates(facts, new Map([['foundation', 10]]))).toEqual({ ...dates(chain), foundation: '2026-04-20' });
  });

  test('no earlier than a day moves like a slip, never back', () => {
    const { value } = dateMilestones(house(chain), new Map(), new Map([['framing', '2026-05-18']]));
    expect(value?.map(({ date }) => date)).toEqual(['2026-04-06', '2026-05-18', '2026-08-20', '2026-09-25']);
    expect(dateMilestones(house(chain), new Map(), new Map([['framing', '2026-04-20']])).value).toEqual(dated);
  });
});

describe('bad input', () => {
  test('a slip of an unknown one', () => {
    const { value, problems } = dateMilestones(house(chain), new Map([['framng', 10]]));
    expect(value).toBeUndefined();
    expect(problems[0]).toMatchObject({
      code: 'slip-unknown',
      fix: "did you mean 'framing'?",
    });
  });

  test('a day off is a warning that names why', () => {
    const { value, problems } = dateMilestones(house([fixed('a', '2026-07-06', 'Roof'), after('b', 'a', 1)]));
    expect(problems[0]).toMatchObject({
      code: 'milestone-day-off',
      severity: 'warning',
      message: 'Roof is on 6 July 2026, a day off (Summer shutdown)',
    });
    expect(value?.map(({ date }) => date)).toEqual(['2026-07-06', '2026-07-13']);
  });

  test('days beyond reach', () => {
    const start = fixed('a', '2026-05-04');
    expect(codes([start, after('b', 'a', 1e9)])).toEqual(['milestone-out-of-reach']);
    expect(codes([start, after('b', 'a', -1e9)])).toEqual(['milestone-out-of-reach']);
    expect(codes([start], new Map([['a', 1e9]]))).toEqual(['milestone-out-of-reach']);
    expect(codes([start, after('b', 'a', 20_000)])).toEqual([]);
  });

  test('a calendar without a working day', () => {
    const shut = { ...rules, closed: [{ from: '2026-05-05', to: '9999-12-31', why: 'Shut' }] };
    const { problems } = dateMilestones(house([fixed('a', '2026-05-04'), after('b', 'a', 1)], shut));
    expect(problems.map(({ code }) => code)).toEqual(['milestone-out-of-reach']);
  });
});

describe('properties', () => {
  /** A forest: each milestone has a date or follows an earlier one of the list. */
  const forest = fc
    .array(fc.record({ parent: fc.nat(), days: fc.integer({ min: 0, max: 60 }), root: fc.boolean() }), {
      minLength: 1,
      maxLength: 20,
    })
    .map((sketches) =>
      sketches.map(({ parent, days, root }, index) =>
        index === 0 || root ? fixed(`m${index}`, '2026-05-04') : after(`m${index}`, `m${parent % index}`, days),
      ),
    );

  test('the order of the records does not matter', () => {
    const shuffled = forest.chain((list) =>
      fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
    );
    fc.assert(
      fc.property(shuffled, ([list, turned]) => {
        expect(dates(turned)).toEqual(dates(list));
      }),
    );
  });

  test('a slip moves exactly its milestone and all that follow it, by its days', () => {
    const slipped = fc.tuple(forest, fc.nat(), fc.integer({ min: 1, max: 40 }));
    fc.assert(
      fc.property(slipped, ([list, pick, days]) => {
        const moved = `m${pick % list.length}`;
        const before = dates(list, undefined, plainRules);
        const now = dates(list, new Map([[moved, days]]), plainRules);
        const calendar = workingDays(plainRules);
        for (const { id } of list) {
          expect(calendar.between(before[id] ?? '', now[id] ?? '')).toBe(follows(list, id, moved) ? days : 0);
        }
      }),
    );
  });

  test('a milestone that slips by its float moves the last day by nothing, one day more by one', () => {
    const picked = fc.tuple(forest, fc.nat());
    fc.assert(
      fc.property(picked, ([list, pick]) => {
        const of = (slips?: ReadonlyMap<string, number>) => dateMilestones(house(list, plainRules), slips).value ?? [];
        const before = of();
        const { id, float = 0 } = before[pick % before.length]!;
        const last = (all: typeof before) => all.map(({ date }) => date).reduce((a, b) => (a > b ? a : b));
        const calendar = workingDays(plainRules);
        expect(last(of(new Map([[id, float]])))).toBe(last(before));
        expect(calendar.between(last(before), last(of(new Map([[id, float + 1]]))))).toBe(1);
      }),
    );
  });

  function follows(list: readonly Milestone[], id: string, first: string): boolean {
    if (id === first) return true;
    const when = list.find((milestone) => milestone.id === id)?.when;
    return when?.by === 'after' && follows(list, when.after, first);
  }
});

test('a chain of 5 000 is dated', () => {
  const long = [...Array(5000).keys()].map((index) =>
    index === 0 ? fixed('m0', '2026-05-04') : after(`m${index}`, `m${index - 1}`, 1),
  );
  expect(Object.keys(dates(long.reverse())).length).toBe(5000);
});
