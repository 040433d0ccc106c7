import { describe, expect, it } from 'vitest';
import { cases } from './cases.js';
import { toldOf } from './small-house.js';

const study = 'content/rooms/study.md';
const foyer = 'content/rooms/foyer.md';
const house = 'content/house.md';
const board = 'content/categories/ceiling-board.md';
const fir = 'content/options/ceiling-board/fir-tg-1x6.md';

describe('what one record says about another', () => {
  cases(study, [
    [
      'standard: pine-shiplap-1x8',
      'standard: pine-shiplp-1x8',
      `rooms/study.md:17:15 option-unknown ceiling-board has no option 'pine-shiplp-1x8' | did you mean 'pine-shiplap-1x8'? Options live in content/options/ceiling-board/`,
    ],
    [
      'chosen: fir-tg-1x6',
      'chosen: oak',
      `rooms/study.md:20:13 option-unknown ceiling-board has no option 'oak' | Options live in content/options/ceiling-board/`,
    ],
    ['chosen: fir-tg-1x6', 'chosen: none'],
    // A choice need not have been considered.
    ['    considering: [fir-tg-1x6]\n', ''],
    [
      'at: ceiling',
      'at: cieling',
      `rooms/study.md:15:9 place-unknown Study has no place 'cieling' | did you mean 'ceiling'? Places here: north, east, south, west, D01, W01, bench, ceiling, floor, walls, inside-walls, outside-walls, …`,
    ],
    ['at: ceiling', 'at: bench/front'],
    [
      'at: ceiling',
      'at: east',
      `rooms/study.md:15:9 wall-open no wall stands at 'east': it is open to foyer | leave it out`,
    ],
    [
      'category: ceiling-board',
      'category: ceiling-bord',
      `rooms/study.md:16:15 category-unknown there is no category 'ceiling-bord' | did you mean 'ceiling-board'? Categories live in content/categories/`,
    ],
    [
      'allowance: wood-ceilings',
      'allowance: wood-ceiling',
      `rooms/study.md:18:16 allowance-unknown the house has no allowance 'wood-ceiling' | did you mean 'wood-ceilings'? Allowances are wood-ceilings`,
    ],
    [
      '    allowance: wood-ceilings\n',
      '',
      `house.md:23:9 (warning) allowance-unused nothing draws on the allowance 'wood-ceilings' | write allowance: wood-ceilings in the selections it pays for`,
    ],
    [
      'number: "102"',
      'number: "101"',
      'rooms/study.md:3:9 number-duplicate number 101 is also that of Foyer | numbers are unique in the house; the other is in content/rooms/foyer.md',
    ],
    [
      'level: main',
      'level: upper',
      `rooms/study.md:4:8 level-unknown the house has no level 'upper' | Levels are main`,
    ],
    [
      'east: foyer',
      'east: foyr',
      `rooms/study.md:7:15 room-unknown 'east' is open to a room 'foyr', which there is not | did you mean 'foyer'? Rooms live in content/rooms/`,
    ],
    [
      'swing: study',
      'swing: hall',
      `rooms/study.md:10:114 swing-unknown opening D01 swings into 'hall', which is on neither side of it | It can swing into study or foyer`,
    ],
    [
      'to: outside',
      'to: outsid',
      `rooms/study.md:11:102 room-unknown opening W01 leads to a room 'outsid', which there is not | did you mean 'outside'? Rooms live in content/rooms/`,
    ],
    [
      'wall: south, at',
      'wall: soth, at',
      `rooms/study.md:10:36 wall-unknown opening D01 is in a wall 'soth', which the room does not have | did you mean 'south'? Walls here: north, east, south, west`,
    ],
    [
      '- at: [D01]',
      '- at: doors\n    category: interior-door\n    standard: flush-door\n  - at: [D01]',
      `rooms/study.md:27:10 selection-duplicate 'D01' has two selections of interior-door, as part of 'doors' | keep one selection of a category for a place`,
    ],
  ]);
  cases(foyer, [
    [
      'recorded-in: study',
      'recorded-in: stdy',
      `rooms/foyer.md:13:31 room-unknown opening D01 is recorded in a room 'stdy', which there is not | did you mean 'study'? Rooms live in content/rooms/`,
    ],
    [
      'wall: north',
      'wall: west',
      `rooms/foyer.md:13:44 wall-open opening D01 is in 'west', where no wall stands: it is open to study | leave the opening out, or the open side`,
    ],
    [
      'mark: D01, recorded-in: study, wall: north',
      `mark: D01, kind: door, width: 3', height: 7', to: study, wall: north`,
      `rooms/study.md:10:13 mark-duplicate opening D01 is recorded in Foyer too | for the other side of the same opening write { mark: D01, recorded-in: foyer, wall: …, at: … }`,
    ],
    [
      `openings:\n  - { mark: D01, recorded-in: study, wall: north, at: 2'-0" }\n`,
      '',
      'rooms/study.md:10:5 (warning) opening-one-sided Foyer does not record the other side of D01, so its wall is measured without it | add to content/rooms/foyer.md: { mark: D01, recorded-in: study, wall: …, at: … }',
    ],
  ]);
  const match = (category: string, places: string): string =>
    `review: 5 days\nmatch:\n  - { name: Boards, category: ${category}, places: [${places}], why: Seen together }`;
  cases(house, [
    ['review: 5 days', match('ceiling-board', 'study/ceiling, study')],
    [
      'review: 5 days',
      match('ceiling-bord', 'study'),
      `house.md:34:31 category-unknown there is no category 'ceiling-bord' | did you mean 'ceiling-board'? Categories live in content/categories/`,
    ],
    [
      'review: 5 days',
      match('ceiling-board', 'study, studdy/ceiling'),
      `house.md:34:62 room-unknown there is no room 'studdy' | did you mean 'study'? Rooms live in content/rooms/`,
    ],
    [
      'review: 5 days',
      match('ceiling-board', 'study/cieling'),
      `house.md:34:55 place-unknown Study selects no ceiling-board at 'cieling' | did you mean 'ceiling'? It selects ceiling-board at ceiling`,
    ],
    [
      'review: 5 days',
      match('ceiling-board', 'foyer'),
      `house.md:34:55 place-unknown Foyer selects no ceiling-board | Rooms that select ceiling-board: study`,
    ],
  ]);
  cases(house, [
    [
      'after: framing',
      'after: trim',
      'house.md:35:42 milestone-cycle milestones follow each other in a ring: drywall after trim after drywall | give one of them a date',
    ],
    [
      'after: framing',
      'after: framin',
      `house.md:35:42 milestone-unknown milestone 'drywall' follows 'framin', which there is not | did you mean 'framing'? Milestones are framing, drywall, trim`,
    ],
    [
      '{ id: main, name: Main level }',
      '{ id: main, name: Main level }\n  - { id: main, name: Upper }',
      `house.md:22:11 id-duplicate levels has 'main' twice | give each its own id`,
    ],
    [
      'categories: [ceiling-board]',
      'categories: [interior-door]',
      `rooms/study.md:18:16 allowance-category allowance 'wood-ceilings' does not cover the category 'ceiling-board' | it covers interior-door; add the category to the allowance in content/house.md, or leave it out here`,
    ],
  ]);
  cases(board, [
    [
      'trade: finish-carpentry',
      'trade: finish-carpenter',
      `categories/ceiling-board.md:3:8 trade-unknown category 'ceiling-board' belongs to a trade 'finish-carpenter', which there is not | did you mean 'finish-carpentry'? Trades live in content/trades/`,
    ],
    [
      'needed-at: trim',
      'needed-at: trims',
      `categories/ceiling-board.md:6:12 milestone-unknown the house has no milestone 'trims' | did you mean 'trim'? Milestones are framing, drywall, trim`,
    ],
    [
      'milestone: drywall',
      'milestone: plaster',
      `categories/ceiling-board.md:7:27 milestone-unknown the house has no milestone 'plaster' | Milestones are framing, drywall, trim`,
    ],
    [
      'by: area',
      'by: run',
      'options/ceiling-board/fir-tg-1x6.md:6:20 unit-unsuited ceiling-board is measured by run, priced for lin ft, not for sq ft | write $… / lin ft',
      'options/ceiling-board/pine-shiplap-1x8.md:6:20 unit-unsuited ceiling-board is measured by run, priced for lin ft, not for sq ft | write $… / lin ft',
    ],
    [
      'by: area',
      'by: stone',
      `categories/ceiling-board.md:10:16 attribute-needed measuring by stone works with the attribute 'corner-covers', which is not among the attributes | add corner-covers: { label: Corner coverage, kind: number, required: true }`,
      'options/ceiling-board/fir-tg-1x6.md:6:1 parts-unsuited ceiling-board is measured by stone and priced in parts | replace price: with parts: { flats: { material: … / sq ft, labor: … / sq ft }, corners: { material: … / lin ft, labor: … / lin ft } }',
      'options/ceiling-board/pine-shiplap-1x8.md:6:1 parts-unsuited ceiling-board is measured by stone and priced in parts | replace price: with parts: { flats: { material: … / sq ft, labor: … / sq ft }, corners: { material: … / lin ft, labor: … / lin ft } }',
    ],
  ]);
  cases(fir, [
    [
      'by: framing',
      'by: framers',
      `options/ceiling-board/fir-tg-1x6.md:16:28 trade-unknown there is no trade 'framers' | Trades live in content/trades/`,
    ],
    [
      'before: drywall',
      'before: dry',
      `options/ceiling-board/fir-tg-1x6.md:16:45 milestone-unknown the house has no milestone 'dry' | Milestones are framing, drywall, trim`,
    ],
  ]);

  it('is told in one run, however much is wrong', () => {
    const told = toldOf(
      [study, 'use: study', 'use: studdy'],
      [study, 'chosen: fir-tg-1x6', 'chosen: fir'],
      [house, 'after: framing', 'after: trim'],
      [fir, 'by: framing', 'by: nobody'],
    );
    expect(told.map((line) => line.split(' ')[1])).toEqual([
      'milestone-cycle',
      'trade-unknown',
      'value-unknown',
      'option-unknown',
    ]);
  });
});

describe('the way courses run', () => {
  const laid = [board, 'measure: { by: area,', 'measure: { by: area, lay: boards,'] as const;
  const waste = '    waste: 12 %\n';
  const courses = (way: string) => [study, waste, `${waste}    courses: ${way}\n`] as const;

  it('fits the surface', () => {
    expect(toldOf(laid, courses('north-south'))).toEqual([]);
    expect(toldOf(laid, courses('vertical'))).toEqual([
      `rooms/study.md:24:14 courses-direction courses on 'ceiling' run east-west or north-south, not vertical | write courses: east-west or north-south`,
    ]);
    expect(toldOf(laid, courses('east-west'), [study, 'at: ceiling', 'at: [north, ceiling]'])).toEqual([
      `rooms/study.md:24:14 courses-direction courses on 'north' run horizontal or vertical, not east-west | give 'north' a selection of its own`,
    ]);
    expect(toldOf(laid, courses('vertical'), [study, 'at: ceiling', 'at: [walls, bench/front]'])).toEqual([]);
  });

  it('is for what is laid out', () => {
    expect(toldOf(courses('north-south'))).toEqual([
      `rooms/study.md:24:5 courses-not-laid ceiling-board is not laid out, so that it has no courses | leave courses out, or write lay: boards or lay: sheets in the measure of content/categories/ceiling-board.md`,
    ]);
  });

  it('is one of four', () => {
    expect(toldOf(laid, courses('diagonal'))[0]).toMatch(/^rooms\/study\.md:24:14 /u);
  });

  it('needs a face and stock lengths in the category', () => {
    expect(
      toldOf(laid, [
        board,
        '  stock: { label: Stock lengths, kind: lengths }\n',
        '  stock: { label: Stock, kind: text }\n',
      ]),
    ).toContain(
      `categories/ceiling-board.md:10:27 attribute-needed laying boards out works with the attribute 'stock', which is not among the attributes | add stock: { label: Stock lengths, kind: lengths, required: true }`,
    );
  });
});
