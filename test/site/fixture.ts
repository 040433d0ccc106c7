import { makeSchedules } from '../../src/book/index.js';
import type { Book, BookRoom } from '../../src/book/index.js';
import type { RoomMeasure } from '../../src/model/index.js';
import { makeCost } from '../../src/price/index.js';
import type { Cents } from '../../src/units/index.js';
import { boards, categories, hostile, options } from './fixture-products.js';
import { box, opening } from './fixture-room.js';
import { boardCost, selections } from './fixture-selections.js';

export { hostile };

const cents = (amount: number): Cents => amount as Cents;

const record = (path: string, text: string) => ({ path, text });

const rooms: readonly [RoomMeasure, RoomMeasure, RoomMeasure] = [
  box(
    'great-room',
    24,
    18.5,
    12,
    [
      opening({
        mark: 'D01',
        kind: 'door',
        wall: 'south',
        at: 3,
        width: 3,
        height: 8,
        to: 'study',
        swing: 'great-room',
      }),
      opening({ mark: 'W01', kind: 'window', wall: 'west', at: 4, width: 6, height: 5, sill: 2.5, to: 'outside' }),
    ],
    { wall: 'east', to: 'kitchen' },
  ),
  box('study', 12, 11, 9, [
    opening({ mark: 'D01', kind: 'door', wall: 'north', at: 2, width: 3, height: 8, to: 'great-room', own: false }),
  ]),
  box('loft', 16, 10, 8, []),
];

const names = ['Great room', 'Study', 'Loft'] as const;

const bookRooms = rooms.map((measure, index): BookRoom => {
  const own = selections.filter((candidate) => candidate.room === measure.room);
  return {
    slug: measure.room,
    number: measure.room === 'loft' ? '201' : `10${index + 1}`,
    name: names[index] ?? '',
    level: measure.room === 'loft' ? 'upper' : 'main',
    use: 'living',
    body: index === 0 ? 'The room the house is about.\n\n- faces the bench\n- warm in winter' : '',
    measure,
    selections: own.map(({ id }) => id),
    cost: makeCost({
      material: own.reduce((sum, { cost }) => sum + cost.material, 0),
      freight: own.reduce((sum, { cost }) => sum + cost.freight, 0),
      tax: own.reduce((sum, { cost }) => sum + cost.tax, 0),
      labor: own.reduce((sum, { cost }) => sum + cost.labor, 0),
    }),
    change: cents(own.reduce((sum, { change }) => sum + change, 0)),
    open: own.filter(({ state }) => state === 'open').length,
    source: `content/rooms/${measure.room}.md`,
  };
});

const finishes = makeCost({ material: 655200, freight: 18500, tax: 42106, labor: 332040 });

const unscheduled: Omit<Book, 'schedules'> = {
  format: 'bookmatch/book/1',
  on: '2026-04-23',
  house: {
    name: 'Larch Hollow',
    number: '2614',
    place: 'Tamarack Bench, Alder County',
    people: [
      { role: 'owner', name: 'The owners' },
      { role: 'builder', name: 'Project manager', contact: 'site office' },
    ],
    metric: 'beside',
    currency: 'USD',
    climateZone: '6B',
    body: 'A house on a bench above the creek.',
    source: 'content/house.md',
  },
  levels: [
    { id: 'main', name: 'Main level' },
    { id: 'upper', name: 'Upper level' },
  ],
  trades: [
    {
      slug: 'finish-carpentry',
      name: 'Finish carpentry',
      contact: "Finish carpenter's foreman",
      sections: ['06 20 00'],
      needsToKnow: [],
      scopeIn: [],
      scopeOut: [],
      schedules: [],
      body: '',
      source: 'content/trades/finish-carpentry.md',
    },
  ],
  categories,
  options,
  rooms: bookRooms,
  selections,
  supplies: [],
  orders: [
    {
      option: boards.id,
      part: 'main',
      trade: 'finish-carpentry',
      unit: 'sq ft',
      net: 430,
      required: 473,
      packs: 20,
      pack: { name: 'bundle', holds: 24 },
      ordered: 480,
      stock: [],
      rate: { amount: 74, scale: 1 },
      supply: 'contractor',
      cost: boardCost,
      shares: [{ selection: 'great-room/ceiling-board/ceiling', required: 473, cost: boardCost }],
    },
  ],
  money: {
    tax: { rate: { amount: 625, scale: 4 }, on: ['material', 'freight'] },
    overageMarkup: { amount: 15, scale: 2 },
    creditReturns: { amount: 1, scale: 0 },
    creditMarkup: false,
    ownerFurnishedInstall: 'contract',
    rounding: 'each line once, half up, to the cent',
    contingency: cents(2500000),
    steps: [
      {
        what: 'Contract sum',
        kind: 'contract',
        amount: cents(148600000),
        running: cents(148600000),
        why: 'as reckoned',
      },
      {
        what: 'Wood ceilings: over the allowance',
        kind: 'allowance',
        of: 'wood-ceilings',
        amount: cents(310),
        running: cents(148600310),
        why: 'as reckoned',
      },
      {
        what: '101 Great room, ceiling: Alder nickel-gap 1x8',
        kind: 'upgrade',
        of: 'great-room/ceiling-board/ceiling',
        amount: cents(124000),
        running: cents(148724310),
        why: 'as reckoned',
      },
      { what: 'Total today', kind: 'total', amount: cents(148724310), running: cents(148724310), why: 'as reckoned' },
    ],
    sharedPacks: 0 as Cents,
    contractSum: cents(148600000),
    agreed: { steps: [], changeOrders: cents(0), current: cents(148600000), notCovered: cents(124310) },
    today: cents(148724310),
    low: cents(148724310),
    high: cents(148770820),
    expected: cents(148724310),
    forecast: {
      low: { total: cents(148724310), why: 'as picked', lines: [], together: cents(0) },
      expected: { total: cents(148724310), why: 'as picked', lines: [], together: cents(0) },
      high: { total: cents(148724310), why: 'as picked', lines: [], together: cents(0) },
    },
    upgrades: cents(124000),
    credits: cents(0),
    net: cents(124000),
    finishes,
    byRoom: bookRooms.map(({ slug, cost, change }) => ({ of: slug, cost, change })),
    byTrade: [{ of: 'finish-carpentry', cost: finishes, change: cents(124000) }],
    byCategory: [
      { of: 'ceiling-board', cost: boardCost, change: cents(124000) },
      {
        of: 'wood-floor',
        cost: makeCost({ material: 300000, freight: 0, tax: 18750, labor: 150000 }),
        change: cents(0),
      },
    ],
    allowances: [
      {
        id: 'wood-ceilings',
        name: 'Wood ceilings',
        covers: ['material', 'freight', 'tax'],
        coversText: 'Covers material.',
        basis: 'lump sum',
        amount: cents(396786),
        lines: [
          {
            selection: 'great-room/ceiling-board/ceiling',
            option: boards.id,
            covered: cents(397056),
            low: cents(397056),
            high: cents(397056),
            open: false,
            why: 'material $3,970.56',
          },
        ],
        committed: cents(397056),
        openLow: cents(0),
        openHigh: cents(0),
        balance: cents(-270),
        settled: true,
        overage: cents(270),
        markup: cents(40),
        retained: cents(0),
        credit: cents(0),
        figures: [{ what: 'Allowance', amount: cents(980000), why: 'lump sum' }],
        change: cents(310),
        note: hostile,
      },
      {
        id: 'floors',
        name: 'Floors',
        covers: ['material'],
        coversText: 'Covers material.',
        basis: '132 sq ft × $9.00',
        amount: cents(980000),
        lines: [],
        committed: cents(420000),
        openLow: cents(120000),
        openHigh: cents(310000),
        balance: cents(560000),
        settled: false,
        overage: cents(0),
        markup: cents(0),
        retained: cents(0),
        credit: cents(0),
        figures: [{ what: 'Allowance', amount: cents(980000), why: 'lump sum' }],
        change: cents(0),
      },
    ],
    ownerPurchases: cents(106250),
  },
  calendar: {
    milestones: [
      { id: 'framing', name: 'Framing starts', date: '2026-05-04', basis: '20 working days after Foundation' },
      { id: 'drywall', name: 'Drywall', date: '2026-05-18', basis: '10 working days after Framing starts' },
      { id: 'trim', name: 'Trim', date: '2026-06-29', basis: 'fixed', note: hostile },
    ],
    rules: {
      weekend: ['saturday', 'sunday'],
      holidays: 'us-federal',
      closed: [{ from: '2026-07-03', to: '2026-07-10', why: 'Summer shutdown' }],
      reviewDays: 5,
    },
  },
  cautions: [
    {
      id: 'guard-at-drop/loft/edge',
      rule: 'guard-at-drop',
      title: 'Guard at a drop',
      room: 'loft',
      place: 'edge',
      placeText: 'Loft edge',
      selections: [],
      trades: [],
      seen: `No guard is selected. ${hostile}`,
      says: 'A guard of 36 inches.',
      source: { document: 'A code', edition: '2018', section: 'R312' },
      ask: 'the building office',
    },
    {
      id: 'floor-build-up/great-room/D01',
      rule: 'floor-build-up',
      title: 'Floors that meet',
      room: 'great-room',
      place: 'D01',
      placeText: 'Door D01',
      selections: ['great-room/wood-floor/floor'],
      trades: [],
      seen: 'They meet half an inch apart.',
      says: 'Up to a quarter inch.',
      source: { document: 'common practice, no source', edition: '', section: 'a strip' },
      ask: 'the flooring foreman',
      accepted: { by: 'Architect', on: '2026-03-01', why: hostile },
    },
  ],
  scope: { buildUps: [], findings: [] },
  issues: [],
  changeOrders: [],
  sources: [
    record('content/house.md', '---\nname: Larch Hollow\n---\n\nA house on a bench above the creek.\n'),
    ...['great-room', 'study', 'loft'].map((slug) =>
      record(
        `content/rooms/${slug}.md`,
        `---\nname: ${slug}\nnumber: "1"\nlevel: main\nuse: living\nsize: 24'-0" x 18'-6"\nceiling: flat 9'-0"\nselections:\n  - at: ceiling\n    category: ceiling-board\n    note: |\n      two\n      lines\n---\n\n# Notes\n\n${hostile}\n`,
      ),
    ),
    ...options.map(({ source, name }) => record(source, `---\nname: ${JSON.stringify(name)}\n---\n`)),
    ...categories.map(({ source }) => record(source, '---\nname: x\n---\n')),
    record('content/trades/finish-carpentry.md', '---\nname: Finish carpentry\n---\n'),
  ],
};

/** A small house made by hand for the pages' own tests; its sums are not asserted anywhere. */
export const fixtureBook: Book = { ...unscheduled, schedules: makeSchedules(unscheduled) };
