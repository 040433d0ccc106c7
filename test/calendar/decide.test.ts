import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dateMilestones,
  decide,
  describePush,
  describeSlack,
  dueSoonDays,
  plusDays,
  workingDays,
  type DecideInput,
} from '../../src/core/calendar/index.js';
import { category, chain, dated, house, option, rules } from './house.js';

const calendar = workingDays(rules);
const boards = category('trim', { milestone: 'drywall', why: 'Hung boards need backing before the board goes up' });
const doors = category('trim', { milestone: 'framing', why: 'Door height fixes the rough openings' });
const on = '2026-03-02';

const decideOn = (day: string, input: Partial<DecideInput> = {}) =>
  decide({ category: doors, options: [option('Fir door', 10)], chosen: false, ...input }, dated, calendar, day)
    .decision;

describe('which day', () => {
  test('a long lead time comes before what is fixed early', () => {
    // On site 11 Sep; 30 working days before, over Labor Day, is 30 Jul; 5 before that is 23 Jul. Drywall 6 Aug less 5 is
    // 30 Jul: later.
    expect(decideOn(on, { category: boards, options: [option('Alder nickel-gap 1x8', 30)] })).toMatchObject({
      by: '2026-07-23',
      orderBy: '2026-07-30',
      onSite: '2026-09-11',
      milestone: 'trim',
      milestoneName: 'Trim',
      because: 'lead-time',
      reason:
        'Alder nickel-gap 1x8 takes 30 working days to come: on site 11 September 2026 for Trim, 5 working days for review',
    });
  });

  test('what is fixed early comes before a short lead time', () => {
    // 10 working days before 11 Sep is 27 Aug, 5 before that 20 Aug: later than 30 Jul.
    expect(decideOn(on, { category: boards, options: [option('Pine shiplap 1x8', 10)] })).toMatchObject({
      by: '2026-07-30',
      orderBy: '2026-08-27',
      milestone: 'drywall',
      because: 'fixes-early',
      reason: 'Hung boards need backing before the board goes up: Drywall on 6 August 2026, 5 working days for review',
    });
  });

  test('door height fixes the rough openings', () => {
    expect(decideOn(on)).toMatchObject({
      by: '2026-04-27',
      reason: 'Door height fixes the rough openings: Framing starts on 4 May 2026, 5 working days for review',
    });
  });

  test('open choices count the longest lead time and name it', () => {
    const options = [option('Fir', 5), option('Alder', 30), option('Pine', 10)];
    const decision = decideOn(on, { category: category('trim'), options });
    expect(decision.by).toBe('2026-07-23');
    expect(decision.reason).toMatch(/^Alder takes 30 working days to come, the longest of 3 considered: /);
    const turned = decideOn(on, { category: category('trim'), options: [...options].reverse() });
    expect(turned).toEqual(decision);
  });

  test('nothing to order and nothing to wait for', () => {
    // 5 working days before 11 Sep, over Labor Day, is 3 Sep.
    const none = decideOn(on, { category: category('trim'), options: [] });
    expect(none).toMatchObject({ by: '2026-09-03', orderBy: '2026-09-11' });
    expect(none.reason).toBe('Nothing to order: on site 11 September 2026 for Trim, 5 working days for review');
    const stock = decideOn(on, { category: category('trim'), options: [option('Pine', 0)] });
    expect(stock.reason).toMatch(/^Pine comes from stock: /);
  });

  test('a tie goes to the lead time', () => {
    const both = category('framing', { milestone: 'framing', why: 'Door height fixes the rough openings' });
    expect(decideOn(on, { category: both, options: [option('Fir door', 0)] })).toMatchObject({
      by: '2026-04-27',
      because: 'lead-time',
    });
  });

  test('without review days the reason does not speak of them', () => {
    const quick = workingDays({ ...rules, reviewDays: 0 });
    const { decision } = decide({ category: doors, options: [], chosen: false }, dated, quick, on);
    expect(decision.by).toBe('2026-05-04');
    expect(decision.reason).toBe('Door height fixes the rough openings: Framing starts on 4 May 2026');
  });

  test('a milestone on a day off takes delivery the working day before', () => {
    const sunday = [{ id: 'trim', name: 'Trim', date: '2026-09-13', basis: 'fixed' }];
    const { decision } = decide({ category: category('trim'), options: [], chosen: false }, sunday, calendar, on);
    expect([decision.onSite, decision.by]).toEqual(['2026-09-11', '2026-09-03']);
  });
});

describe('all that bears on it', () => {
  const needing = (name: string, lead: number, ...needs: readonly [id: string, before: string][]) => ({
    ...option(name, lead),
    needs: needs.map(([id, before]) => ({ id, what: `What ${id} is`, by: 'framing', before })),
  });
  const rail = category('trim', { milestone: 'drywall', why: 'Posts need backing' });

  test("an option's need comes before the category's fixing, and both are told with the earliest first", () => {
    // Framing Mon 4 May less 5 is Mon 27 Apr; drywall Thu 6 Aug less 5 is 30 Jul; 11 Sep less 10 and 5 is 20 Aug.
    const options = [needing('Cable', 10, ['blocking', 'framing']), needing('Glass', 5, ['blocking', 'framing'])];
    const decision = decideOn(on, { category: rail, options });
    expect(decision).toMatchObject({
      by: '2026-04-27',
      because: 'need',
      milestone: 'framing',
      reason: 'What blocking is: Framing starts on 4 May 2026, 5 working days for review',
    });
    expect(decision.bounds.map(({ by, because }) => [by, because])).toEqual([
      ['2026-04-27', 'need'],
      ['2026-07-30', 'fixes-early'],
      ['2026-08-20', 'lead-time'],
    ]);
  });

  test('a need that some options have is told with their names', () => {
    const options = [needing('Cable', 10, ['bracing', 'framing']), needing('Pickets', 5)];
    expect(decideOn(on, { category: rail, options }).reason).toMatch(/^What bracing is, for Cable: Framing starts/);
  });

  test('what is done and what is kept open no longer bears on it, and is told', () => {
    const decision = decideOn(on, {
      category: rail,
      options: [needing('Cable', 10, ['blocking', 'framing'])],
      needsDone: [{ need: 'blocking', on: '2026-02-20', by: 'The framer' }],
      keptOpen: [{ milestone: 'drywall', on: '2026-02-25', why: 'Backing is everywhere' }],
    });
    expect(decision.bounds.map(({ because }) => because)).toEqual(['lead-time']);
    expect(decision.lifted).toEqual([
      { what: 'Posts need backing', milestone: 'Drywall', by: 'Backing is everywhere, 25 February 2026' },
      { what: 'What blocking is', milestone: 'Framing starts', by: 'The framer, 20 February 2026' },
    ]);
  });

  test('several early fixings: the earliest sets the day', () => {
    const two = category('trim', { milestone: 'drywall', why: 'Backing' }, { milestone: 'framing', why: 'Headers' });
    expect(decideOn(on, { category: two })).toMatchObject({ by: '2026-04-27', milestone: 'framing' });
  });

  test('needed at a milestone of its own', () => {
    const decision = decideOn(on, {
      category: category('framing'),
      options: [{ ...option('Box beam', 10), neededAt: 'trim' }],
    });
    expect(decision).toMatchObject({ onSite: '2026-09-11', orderBy: '2026-08-27', by: '2026-08-20' });
  });

  test('measured first: ordered that day at the earliest, and late for its milestone by the rest', () => {
    // 35 working days after Thu 6 Aug, over Labor Day, is Fri 25 Sep: 10 after Fri 11 Sep.
    const measured = { ...category('trim'), measuredAfter: 'drywall' };
    const decision = decideOn(on, { category: measured, options: [option('Glass', 35)] });
    expect(decision).toMatchObject({ orderBy: '2026-08-06', onSite: '2026-09-25', waits: 10, by: '2026-07-30' });
    expect(decision.reason).toMatch(
      /^Glass takes 35 working days to come once it is measured after Drywall on 6 August/,
    );
    const quick = decideOn(on, { category: measured, options: [option('Cable', 10)] });
    expect(quick).toMatchObject({ orderBy: '2026-08-27', onSite: '2026-09-11' });
    expect(quick).not.toHaveProperty('waits');
  });

  test('ships its time on the road before it is on site', () => {
    const { ships } = decideOn(on, { category: rail, options: [{ ...option('Stone', 30), transitDays: 4 }] });
    // Labor Day is Mon 7 Sep: 4 working days before Fri 11 Sep is Fri 4 Sep.
    expect(ships).toBe('2026-09-04');
  });

  describe('a milestone that is done', () => {
    const facts = dated.map((each) =>
      each.id === 'framing' ? { ...each, date: '2026-05-06', done: true as const } : each,
    );
    const decideThen = (input: Partial<DecideInput>) =>
      decide(
        { category: doors, options: [option('Fir door', 10)], chosen: false, ...input },
        facts,
        calendar,
        '2026-06-01',
      );

    test('is not pushed, however late the choice', () => {
      const { decision, late } = decideThen({});
      expect(decision).toMatchObject({ state: 'late', milestone: 'framing', pushes: 0 });
      expect(decision.bounds[0]).toMatchObject({ done: true });
      expect(decision).not.toHaveProperty('pushed');
      expect(late.size).toBe(0);
    });

    test('leaves what else the choice is late for', () => {
      const { decision, late } = decideThen({ options: [option('Alder door', 80)] });
      expect(decision.pushed).toEqual({ id: 'trim', name: 'Trim' });
      expect(late).toEqual(new Map([['trim', decision.pushesTo]]));
    });

    test('takes an option out that needed something before it, as long as another is left', () => {
      const dead = needing('Tall door', 10, ['headers', 'framing']);
      const { decision } = decideThen({ category: category('trim'), options: [dead, option('Door', 5)] });
      expect(decision).toMatchObject({ state: 'open', because: 'lead-time' });
      const alone = decideThen({ category: category('trim'), options: [dead] }).decision;
      expect(alone).toMatchObject({ state: 'late', because: 'need' });
    });
  });
});

describe('how it stands, doors by Mon 27 April 2026', () => {
  test.each([
    ['2026-04-10', 'open', 11, undefined],
    ['2026-04-11', 'due-soon', 10, undefined],
    ['2026-04-13', 'due-soon', 10, undefined],
    ['2026-04-24', 'due-soon', 1, undefined],
    ['2026-04-26', 'due-soon', 0, undefined],
    ['2026-04-27', 'due-soon', 0, undefined],
    ['2026-04-28', 'late', -1, '2026-05-05'],
    ['2026-04-30', 'late', -3, '2026-05-07'],
    // Saturday counts as Monday.
    ['2026-05-02', 'late', -5, '2026-05-11'],
  ])('on %s: %s, %i', (day, state, slack, pushesTo) => {
    const decision = decideOn(day);
    expect(decision).toMatchObject({ state, slack, pushes: Math.max(0, -slack), by: '2026-04-27' });
    expect(decision.pushesTo).toBe(pushesTo);
  });

  test.each([
    [12, '12 working days left'],
    [1, '1 working day left'],
    [0, 'last working day'],
    [-1, '1 working day late'],
    [-15, '15 working days late'],
  ])('%i days off: %s', (slack, words) => {
    expect(describeSlack(slack)).toBe(words);
  });

  test('a late one tells what it moves, and how far the last of them goes', () => {
    const late = decideOn('2026-04-30');
    expect(describePush(late)).toBe('Decided today, it moves Framing starts by 3 working days, to 7 May 2026');
    const move = (name: string, to: string) => ({ id: name, name, from: '2026-05-04', to, days: 3 });
    const framing = move('Framing starts', '2026-05-07');
    const one = { ...late, moves: [framing, move('Trim', '2026-09-16')] };
    expect(describePush(one)).toMatch(/, to 7 May 2026, and Trim to 16 September 2026$/);
    const two = { ...one, moves: [...one.moves, move('Hand-over', '2026-10-02')] };
    expect(describePush(two)).toMatch(/; 2 more milestones move too, the last, Hand-over, to 2 October 2026$/);
    expect(describePush(decideOn('2026-04-10'))).toBe('');
  });

  test('due soon begins at the constant', () => {
    expect(dueSoonDays).toBe(10);
  });

  test('a decided one pushes nothing, however late the day', () => {
    const decision = decideOn('2026-06-01', { chosen: true });
    expect(decision).toMatchObject({ state: 'decided', pushes: 0 });
    expect(decision).not.toHaveProperty('pushesTo');
  });
});

describe('properties', () => {
  const day = fc.integer({ min: 0, max: 600 }).map((days) => plusDays('2026-01-01', days));
  const leads = fc.array(fc.nat(120), { maxLength: 4 });
  const early = fc.constantFrom(undefined, 'foundation', 'framing', 'drywall');
  const sketch = fc.record({ day, leads, early });

  const decideSketch = ({
    day: when,
    leads: all,
    early: fixes,
  }: {
    day: string;
    leads: number[];
    early?: string | undefined;
  }) =>
    decide(
      {
        category: category('trim', ...(fixes === undefined ? [] : [{ milestone: fixes, why: 'Fixed' }])),
        options: all.map((lead, index) => option(`O${index}`, lead)),
        chosen: false,
      },
      dated,
      calendar,
      when,
    ).decision;

  test('deciding on the last day moves nothing; the working day after pushes by one', () => {
    fc.assert(
      fc.property(sketch, (input) => {
        const { by } = decideSketch(input);
        expect(decideSketch({ ...input, day: by })).toMatchObject({ slack: 0, pushes: 0 });
        expect(decideSketch({ ...input, day: calendar.add(by, 1) })).toMatchObject({ state: 'late', pushes: 1 });
      }),
    );
  });

  test('what a late decision pushes is what review and delivery from that day come to', () => {
    fc.assert(
      fc.property(sketch, (input) => {
        const decision = decideSketch(input);
        const lead = decision.because === 'lead-time' ? Math.max(0, ...input.leads) : 0;
        const start = calendar.onOrAfter(input.day);
        const ready = calendar.add(start, rules.reviewDays + lead);
        const milestone = dated.find(({ id }) => id === decision.milestone)?.date ?? '';
        expect(decision.pushes).toBe(Math.max(0, calendar.between(milestone, ready)));
        if (decision.pushes > 0) expect(decision.pushesTo).toBe(ready);
      }),
    );
  });

  test('by is never after the order day less review, nor after the early milestone less review', () => {
    fc.assert(
      fc.property(sketch, (input) => {
        const decision = decideSketch(input);
        expect(decision.by <= calendar.add(decision.orderBy, -rules.reviewDays)).toBe(true);
        const fixes = dated.find(({ id }) => id === input.early)?.date;
        if (fixes !== undefined) expect(decision.by <= calendar.add(fixes, -rules.reviewDays)).toBe(true);
      }),
    );
  });

  test('one more option never makes it later', () => {
    fc.assert(
      fc.property(sketch, fc.nat(120), (input, lead) => {
        expect(decideSketch({ ...input, leads: [...input.leads, lead] }).by <= decideSketch(input).by).toBe(true);
      }),
    );
  });
});

test('a category whose milestone nobody dated is a fault of the program', () => {
  expect(() => decideOn(on, { category: category('roof') })).toThrow(/'roof'/);
});

test('a dated house decides as its records do', () => {
  const milestones = dateMilestones(house(chain)).value ?? [];
  expect(decide({ category: doors, options: [], chosen: false }, milestones, calendar, on).decision.by).toBe(
    '2026-04-27',
  );
});
