import type { Book } from '../../src/book/index.js';
import type { Cents } from '../../src/units/index.js';
import { alternative, category, cost, option, selection, takeoff, trade } from './fixture-parts.js';
import { opening, room } from './fixture-room.js';

/** A small house made by hand: three rooms, one open choice, one upgrade of $1,240.50 and one credit of $310. */
export function makeFixture(): Book {
  return {
    format: 'bookmatch/book/1',
    on: '2026-03-09',
    house: {
      name: 'Quail Ridge',
      number: '2601',
      place: 'North Fork, Alder County',
      people: [
        { role: 'owner', name: 'The owners' },
        { role: 'builder', name: 'Project manager', contact: 'site office' },
        { role: 'architect', name: 'Designer of record' },
      ],
      metric: 'beside',
      currency: 'USD',
      climateZone: '6B',
      body: 'A small house.',
      source: 'content/house.md',
    },
    levels: [
      { id: 'main', name: 'Main level' },
      { id: 'upper', name: 'Upper level' },
    ],
    trades: [{ ...trade('flooring', 'Flooring') }, { ...trade('finish-carpentry', 'Finish carpentry') }],
    categories: [
      category('floor', 'Floor', 'flooring', 50, 'floor'),
      category('ceiling-board', 'Ceiling board', 'finish-carpentry', 40, 'ceiling'),
      category('door', 'Interior door', 'finish-carpentry', 60),
    ],
    options: [
      option('floor', 'white-oak', 'White oak plank', '#c8a878'),
      option('floor', 'maple', 'Maple strip', '#d9c39a'),
      option('ceiling-board', 'fir-tg', 'Fir tongue and groove', '#b5814c'),
      option('ceiling-board', 'pine-gap', 'Pine nickel gap', '#d6b27c'),
      option('door', 'flat-panel', 'Flat panel door', '#eceae4'),
    ],
    rooms: [
      room(
        'great-room',
        '101',
        'Great room',
        'main',
        'living',
        [24, 18.5, 9],
        ['great-room/floor/floor', 'great-room/ceiling-board/ceiling', 'great-room/door/D01'],
        {
          body: 'The room that the house **turns around**.\n\n- Boards run *north to south*\n- See [the maker](https://example.com/oak)',
          change: 124050,
          openings: [opening('D01', 'south', 3, 3, 7, 'pantry'), opening('W01', 'west', 4, 6, 5, 'outside')],
        },
      ),
      room('pantry', '102', 'Pantry', 'main', 'pantry', [8, 6, 8], ['pantry/floor/floor'], { change: -31000 }),
      room('loft', '201', 'Loft', 'upper', 'gallery', [12, 10, 8], [], {}),
    ],
    selections: [
      selection('great-room', 'floor', 'floor', 'Floor', {
        standard: 'maple',
        chosen: 'white-oak',
        chosenOn: '2026-02-20',
        change: 124050,
        takeoff: [takeoff('sq ft', 444)],
        note: 'Boards run north to south.',
      }),
      selection('great-room', 'ceiling-board', 'ceiling', 'Ceiling', {
        allowance: 'boards',
        considering: ['fir-tg', 'pine-gap'],
        alternatives: [alternative('fir-tg', 98000), alternative('pine-gap', -20500)],
      }),
      selection('great-room', 'door', 'D01', 'Door D01', {
        standard: 'flat-panel',
        chosen: 'flat-panel',
        takeoff: [takeoff('each', 1)],
      }),
      selection('pantry', 'floor', 'floor', 'Floor', {
        standard: 'white-oak',
        chosen: 'maple',
        change: -31000,
        takeoff: [takeoff('sq ft', 48)],
      }),
    ],
    orders: [
      {
        option: 'floor/white-oak',
        part: 'main',
        trade: 'flooring',
        unit: 'sq ft',
        net: 444,
        required: 466.2,
        packs: 20,
        pack: { name: 'carton', holds: 23.8 },
        ordered: 476,
        stock: [],
        rate: { amount: 1150, scale: 2 },
        supply: 'contractor',
        cost: cost(547400),
        shares: [{ selection: 'great-room/floor/floor', required: 466.2, cost: cost(547400) }],
      },
    ],
    money: {
      tax: { rate: { amount: 625, scale: 4 }, on: ['material', 'freight'] },
      overageMarkup: { amount: 15, scale: 2 },
      creditReturns: { amount: 100, scale: 2 },
      creditMarkup: false,
      ownerFurnishedInstall: 'contract',
      rounding: 'each line once, half up, to the cent',
      contingency: 2500000 as Cents,
      steps: [
        { what: 'Contract sum', kind: 'contract', amount: 98000000 as Cents, running: 98000000 as Cents },
        {
          what: '101 Great room, floor: White oak plank',
          kind: 'upgrade',
          of: 'great-room/floor/floor',
          amount: 124050 as Cents,
          running: 98124050 as Cents,
        },
        {
          what: '102 Pantry, floor: Maple strip',
          kind: 'credit',
          of: 'pantry/floor/floor',
          amount: -31000 as Cents,
          running: 98093050 as Cents,
        },
        { what: 'Total today', kind: 'total', amount: 98093050 as Cents, running: 98093050 as Cents },
      ],
      sharedPacks: 0 as Cents,
      contractSum: 98000000 as Cents,
      today: 98093050 as Cents,
      low: 98072550 as Cents,
      high: 98191050 as Cents,
      finishes: cost(700000),
      byRoom: [],
      byTrade: [],
      byCategory: [],
      allowances: [
        {
          id: 'boards',
          name: 'Wood ceilings',
          covers: ['material', 'freight', 'tax'],
          basis: 'lump sum',
          amount: 480000 as Cents,
          lines: [
            {
              selection: 'great-room/ceiling-board/ceiling',
              covered: 0 as Cents,
              low: 459500 as Cents,
              high: 578000 as Cents,
              open: true,
            },
          ],
          committed: 0 as Cents,
          openLow: 459500 as Cents,
          openHigh: 578000 as Cents,
          balance: 480000 as Cents,
          settled: false,
          overage: 0 as Cents,
          markup: 0 as Cents,
          credit: 0 as Cents,
          change: 0 as Cents,
        },
      ],
      ownerPurchases: 0 as Cents,
    },
    calendar: {
      milestones: [
        { id: 'trim', name: 'Trim', date: '2026-08-03', basis: 'fixed' },
        { id: 'drywall', name: 'Drywall', date: '2026-06-15', basis: 'fixed' },
      ],
      rules: { weekend: ['saturday', 'sunday'], holidays: 'none', closed: [], reviewDays: 5 },
    },
    sources: [],
  };
}
