import { expect, test } from 'vitest';
import {
  dateMilestones,
  decide,
  slipEffects,
  workingDays,
  type HouseDates,
  type Slips,
} from '../../src/core/calendar/index.js';
import { category, chain, house, option, rules } from './house.js';

const calendar = workingDays(rules);
const boards = category('trim', { milestone: 'drywall', why: 'Hung boards need backing' });
const stone = category('framing', { milestone: 'foundation', why: 'Stone fixes the ledge' });

function datesWith(slips: Slips, on = '2026-07-27'): HouseDates {
  const milestones = dateMilestones(house(chain), slips).value ?? [];
  const decideOne = (of: typeof boards) =>
    decide({ category: of, options: [option('Pine', 10)], chosen: false }, milestones, calendar, on).decision;
  return {
    milestones,
    decisions: [
      { id: 'great-room/ceiling-board/ceiling', decision: decideOne(boards) },
      { id: 'great-room/stone/breast', decision: decideOne(stone) },
    ],
  };
}

test('framing slips by ten days: what follows moves, what comes before stays', () => {
  // Dates counted by hand in date-milestones.test.ts. Boards: drywall less 5, so 30 Jul becomes 13 Aug. Stone stays: the
  // foundation does not move.
  expect(slipEffects(datesWith(new Map()), datesWith(new Map([['framing', 10]])), calendar)).toEqual({
    milestones: [
      { id: 'framing', name: 'Framing starts', from: '2026-05-04', to: '2026-05-18', days: 10 },
      { id: 'drywall', name: 'Drywall', from: '2026-08-06', to: '2026-08-20', days: 10 },
      { id: 'trim', name: 'Trim', from: '2026-09-11', to: '2026-09-25', days: 10 },
    ],
    decisions: [
      {
        id: 'great-room/ceiling-board/ceiling',
        from: '2026-07-30',
        to: '2026-08-13',
        days: 10,
        stateFrom: 'due-soon',
        stateTo: 'open',
      },
    ],
  });
});

test('the way back is the same with the sign turned', () => {
  const [plain, slipped] = [datesWith(new Map()), datesWith(new Map([['drywall', 7]]))];
  const there = slipEffects(plain, slipped, calendar);
  const back = slipEffects(slipped, plain, calendar);
  expect(there.milestones.map(({ id, days }) => [id, days])).toEqual([
    ['drywall', 7],
    ['trim', 7],
  ]);
  expect(back.milestones.map(({ days }) => days)).toEqual([-7, -7]);
  expect(back.decisions.map(({ days }) => days)).toEqual(there.decisions.map(({ days }) => -days));
});

test('no slip, no effect; what is on one side only is left out', () => {
  const plain = datesWith(new Map());
  expect(slipEffects(plain, plain, calendar)).toEqual({ milestones: [], decisions: [] });
  expect(slipEffects({ milestones: [], decisions: [] }, plain, calendar)).toEqual({ milestones: [], decisions: [] });
});
