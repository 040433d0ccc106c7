import type { DatedMilestone } from '../../src/core/calendar/index.js';
import type { Category, House, HouseCalendar, Milestone, Option } from '../../src/core/model/index.js';
import type { Origin, Path } from '../../src/base/problem/index.js';

/** A house with a calendar and little else. Its origin answers with the depth and index of the path asked for. */

export const rules: HouseCalendar = {
  weekend: ['saturday', 'sunday'],
  holidays: 'us-federal',
  closed: [{ from: '2026-07-03', to: '2026-07-10', why: 'Summer shutdown' }],
  reviewDays: 5,
};

export const plainRules: HouseCalendar = { ...rules, holidays: 'none', closed: [] };

const place = (path: Path): { line: number; column: number } => ({
  line: Number(path[1] ?? 0) + 1,
  column: path.length,
});

const origin: Origin = { file: 'content/house.md', text: '', at: place, key: place };

export function house(milestones: readonly Milestone[], calendar: HouseCalendar = rules): House {
  return {
    name: 'Larch Hollow',
    number: '2614',
    place: 'Alder County',
    shared: [],
    people: [],
    units: 'customary',
    beside: false,
    currency: 'USD',
    climateZone: '6B',
    matches: [],
    contract: {
      sum: 0 as House['contract']['sum'],
      date: '2026-02-16',
      tax: [],
      markupOn: 'each-line',
      overageMarkup: { amount: 0, scale: 0 },
      workMarkup: { amount: 0, scale: 0 },
      creditReturns: { amount: 1, scale: 0 },
      creditMarkup: false,
      contingency: 0 as House['contract']['contingency'],
      ownerFurnishedInstall: 'contract',
      rounding: 'half-up',
    },
    levels: [],
    allowances: [],
    calendar,
    milestones,
    acceptances: [],
    body: '',
    origin,
  };
}

export const fixed = (id: string, date: string, name = id): Milestone => ({ id, name, when: { by: 'date', date } });

export const after = (id: string, before: string, days: number, name = id): Milestone => ({
  id,
  name,
  when: { by: 'after', after: before, days },
});

/** Foundation Mon 6 Apr, framing Mon 4 May, drywall Thu 6 Aug, trim Fri 11 Sep 2026: counted by hand in
 *  date-milestones.test.ts. */
export const chain: readonly Milestone[] = [
  fixed('foundation', '2026-04-06', 'Foundation'),
  after('framing', 'foundation', 20, 'Framing starts'),
  after('drywall', 'framing', 60, 'Drywall'),
  after('trim', 'drywall', 25, 'Trim'),
];

export const dated: readonly DatedMilestone[] = [
  { id: 'foundation', name: 'Foundation', date: '2026-04-06', float: 0, basis: 'fixed' },
  { id: 'framing', name: 'Framing starts', date: '2026-05-04', float: 0, basis: '20 working days after Foundation' },
  { id: 'drywall', name: 'Drywall', date: '2026-08-06', float: 0, basis: '60 working days after Framing starts' },
  { id: 'trim', name: 'Trim', date: '2026-09-11', float: 0, basis: '25 working days after Drywall' },
];

export function category(neededAt: string, ...fixesEarly: Category['fixesEarly']): Category {
  return {
    slug: 'ceiling-board',
    name: 'Ceiling board',
    trade: 'finish-carpentry',
    section: '06 20 00',
    measure: { by: 'area', openings: { rule: 'none' }, times: 1, words: '', source: '' },
    sequence: 70,
    neededAt,
    fixesEarly,
    layer: 'finish',
    attributes: [],
    body: '',
    origin,
  };
}

export function option(name: string, leadDays: number): Option {
  return {
    slug: name.toLowerCase(),
    category: 'ceiling-board',
    name,
    maker: 'Invented Mill',
    model: '',
    summary: '',
    parts: [],
    freight: 0 as Option['freight'],
    leadDays,
    attributes: {},
    needs: [],
    swatch: { pattern: 'boards', colors: [] },
    specification: { general: '', products: '', execution: '' },
    care: '',
    body: '',
    origin,
  };
}
