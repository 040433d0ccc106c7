import type { Alternative, BookOption, BookSelection } from '../../src/book/index.js';
import type { Decision } from '../../src/calendar/index.js';
import { makeCost } from '../../src/price/index.js';
import type { Takeoff } from '../../src/takeoff/index.js';
import type { Cents, Unit } from '../../src/units/index.js';
import { boards, hostile, oak, odd, shiplap } from './fixture-products.js';

const cents = (amount: number): Cents => amount as Cents;

function takeoff(part: string, unit: Unit, gross: number, net: number, waste: number): Takeoff {
  return {
    part,
    unit,
    gross,
    net,
    places: [
      {
        place: 'ceiling',
        name: 'Ceiling',
        gross,
        net,
        adjustments: gross === net ? [] : [{ what: 'Chimney breast', amount: net - gross, why: 'stands in front' }],
      },
    ],
    factors: [],
    waste: { percent: waste, why: 'of the option' },
    required: net * (1 + waste / 100),
    rule: 'Net area of the surface, openings not taken off.',
    source: 'common practice, no source',
  };
}

const decision = (by: string, state: Decision['state'], slack: number): Decision => ({
  by,
  state,
  slack,
  milestone: 'drywall',
  milestoneName: 'Drywall',
  because: 'fixes-early',
  reason: 'Hung boards need backing: Drywall 18 May 2026, 5 working days for review',
  orderBy: '2026-05-18',
  onSite: '2026-06-29',
  pushes: state === 'late' ? 3 : 0,
});

const alternative = (of: BookOption, facts: Partial<Alternative>): Alternative => ({
  option: of.slug,
  isStandard: false,
  isChosen: false,
  takeoff: [takeoff('main', 'sq ft', 444, 430, 10)],
  cost: makeCost({ material: 355200, freight: 18500, tax: 23356, labor: 182040 }),
  pounds: 932.4,
  lots: [{ part: 'main', unit: 'sq ft', packs: 20, pack: { name: 'bundle', holds: 24 }, ordered: 480 }],
  againstStandard: cents(124000),
  againstToday: cents(0),
  houseTotal: cents(148724310),
  effects: [{ what: 'Allowance Wood ceilings', amount: cents(0), why: '$3,970.56 of $3,967.86 drawn then' }],
  decision: decision('2026-05-11', 'open', 12),
  ...facts,
});

function selection(room: string, of: string, place: string, facts: Partial<BookSelection>): BookSelection {
  return {
    id: `${room}/${of}/${place}`,
    room,
    category: of,
    trade: 'finish-carpentry',
    places: [{ id: place, name: place }],
    placeText: place.charAt(0).toUpperCase() + place.slice(1),
    considering: [],
    supply: 'contractor',
    state: 'open',
    takeoff: [takeoff('main', 'sq ft', 444, 430, 10)],
    cost: makeCost({}),
    change: cents(0),
    alternatives: [],
    decision: decision('2026-05-11', 'open', 12),
    source: `content/rooms/${room}.md`,
    line: 9,
    ...facts,
  };
}

export const boardCost = makeCost({ material: 355200, freight: 18500, tax: 23356, labor: 182040 });
export const floorCost = makeCost({ material: 100000, freight: 0, tax: 6250, labor: 50000 });

export const selections: readonly BookSelection[] = [
  selection('great-room', 'ceiling-board', 'ceiling', {
    standard: shiplap.slug,
    allowance: 'wood-ceilings',
    chosen: boards.slug,
    counted: boards.slug,
    state: 'chosen',
    chosenOn: '2026-03-02',
    chosenBy: 'The owners',
    cost: boardCost,
    change: cents(124000),
    pounds: 932.4,
    note: `Boards run across the short way. ${hostile}`,
    alternatives: [
      alternative(shiplap, { isStandard: true, againstStandard: cents(0), againstToday: cents(-124000) }),
      alternative(boards, { isChosen: true }),
    ],
    decision: decision('2026-05-11', 'decided', 12),
  }),
  selection('great-room', 'wood-floor', 'floor', {
    standard: oak.slug,
    counted: oak.slug,
    cost: floorCost,
    state: 'open',
    considering: ['odd'],
    alternatives: [
      alternative(oak, { isStandard: true, againstStandard: cents(0) }),
      alternative(odd, { againstStandard: cents(46510), againstToday: cents(46510) }),
    ],
    decision: decision('2026-04-20', 'late', -3),
  }),
  selection('study', 'wood-floor', 'floor', {
    chosen: oak.slug,
    counted: oak.slug,
    state: 'ordered',
    supply: 'owner-furnished',
    cost: floorCost,
    chosenOn: '2026-03-09',
    decision: decision('2026-05-11', 'decided', 12),
  }),
  selection('study', 'ceiling-board', 'ceiling', {
    state: 'none',
    takeoff: [],
    decision: decision('2026-05-11', 'decided', 12),
  }),
  selection('loft', 'wood-floor', 'floor', {
    standard: oak.slug,
    counted: oak.slug,
    cost: floorCost,
    alternatives: [alternative(oak, { isStandard: true, againstStandard: cents(0) })],
    decision: decision('2026-05-04', 'due-soon', 4),
  }),
];
