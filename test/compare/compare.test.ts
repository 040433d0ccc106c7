import { describe, expect, test } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import type { Caution } from '../../src/core/caution/index.js';
import { compare, type Comparison } from '../../src/core/compare/index.js';
import type { ScopeFinding } from '../../src/core/scope/index.js';
import { smallBook, type Edits } from '../book/small-house.js';

const study = 'content/rooms/study.md';
const pine = 'content/options/floor/pine.md';
const labels = { from: 'a', to: 'b' };

const between = (from: Edits, to: Edits, mixed?: { choices?: Edits; terms?: Edits }): Comparison =>
  compare({
    from: smallBook(from),
    to: smallBook(to),
    labels,
    between: {
      ...(mixed?.choices && { choices: smallBook(mixed.choices) }),
      ...(mixed?.terms && { terms: smallBook(mixed.terms) }),
    },
  });

test('a house compared with itself differs in nothing', () => {
  expect(between({}, {})).toMatchObject({
    rooms: [],
    priceBook: [],
    records: [],
    milestones: [],
    allowances: [],
    terms: [],
    cautions: [],
    scope: [],
    trades: [],
    money: { difference: 0 },
  });
});

describe('another choice', () => {
  // Oak weighs half a pound more a sq ft here, and takes two weeks longer.
  const heavier: Edits[string] = [
    ['lead: 4 weeks', 'lead: 6 weeks'],
    ['weight: 2 lb / sq ft', 'weight: 2.5 lb / sq ft'],
  ];
  const was: Edits = { 'content/options/floor/oak.md': heavier };
  const oak: Edits = { ...was, [study]: [['chosen: pine', 'chosen: oak']] };

  test('is told with both sides, what it costs and whom it touches', () => {
    const comparison = between(was, oak);
    expect(comparison.money.difference).toBe(88_200);
    expect(comparison.trades).toEqual([{ trade: 'carpentry', name: 'Carpentry', selections: 1 }]);
    expect(comparison.records).toEqual([{ path: study, kind: 'edited' }]);
    const [change] = comparison.rooms[0]?.selections ?? [];
    expect(change).toMatchObject({
      own: true,
      // The day to decide stays: framing needs to know the floor's build-up first.
      aspects: ['choice', 'cost', 'weight', 'order-by', 'lead-time'],
      from: { optionName: 'Pine strip', leadDays: 20, quantities: [{ part: 'main', unit: 'sq ft', net: 120 }] },
      to: { optionName: 'Oak strip', leadDays: 30 },
      cost: 88_200,
      contract: 88_200,
      byChoice: 88_200,
      // 120 sq ft × 0.5 lb
      pounds: 60,
      days: { lead: 10, decideBy: 0, orderBy: -10 },
    });
  });

  test('the other way round turns every sign', () => {
    const back = between(oak, was);
    expect(back.money.difference).toBe(-88_200);
    expect(back.rooms[0]?.selections[0]).toMatchObject({ cost: -88_200, contract: -88_200 });
  });
});

test("a supplier's price rise is not the owner's change", () => {
  const dearer: Edits = { [pine]: [['material: $4.00', 'material: $4.50']] };
  const both: Edits = { ...dearer, [study]: [['chosen: pine', 'chosen: oak']] };
  const choices: Edits = { [study]: [['chosen: pine', 'chosen: oak']] };
  const comparison = between({}, both, { choices, terms: choices });
  expect(comparison.money).toMatchObject({ difference: 88_200, choices: 88_200, priceBook: 0, together: 'nothing' });
  const priceOnly = between({}, dearer, { choices: {}, terms: {} });
  // 140 sq ft × $0.50 = 70, 5 % tax
  expect(priceOnly.money).toEqual({
    difference: 7_350,
    choices: 0,
    allowances: 0,
    sharedPacks: 0,
    priceBook: 7_350,
    sharedBook: 0,
    terms: 0,
    contractSum: 0,
    markup: 0,
    fee: 0,
    netChange: { allowance: 0, work: 7_350 },
    together: 'nothing',
  });
  expect(priceOnly.rooms[0]?.selections[0]).toMatchObject({ aspects: ['cost'], own: false, byChoice: 0 });
  expect(priceOnly.trades).toEqual([]);
  expect(priceOnly.priceBook).toEqual([
    {
      option: 'floor/pine',
      name: 'Pine strip',
      kind: 'changed',
      fields: [{ field: 'material', from: '$4 / sq ft', to: '$4.50 / sq ft' }],
    },
  ]);
});

test('a room that is renamed is followed by its number', () => {
  const renamed = between({}, libraryForStudy());
  expect(renamed.rooms).toMatchObject([{ room: 'library', kind: 'kept', renamedFrom: '101 Study', selections: [] }]);
  expect(renamed.records).toEqual([{ path: 'content/rooms/library.md', kind: 'renamed', renamedFrom: study }]);
});

test('an option that is renamed is followed by maker and model', () => {
  const text = smallBook().sources.find((source) => source.path === pine)?.text ?? '';
  const renamed = between(
    {},
    {
      [pine]: null,
      'content/options/floor/white-pine.md': text,
      [study]: [
        ['considering: [oak, pine]', 'considering: [oak, white-pine]'],
        ['chosen: pine', 'chosen: white-pine'],
      ],
    },
  );
  expect(renamed.rooms).toEqual([]);
  expect(renamed.priceBook).toMatchObject([{ kind: 'renamed', renamedFrom: 'floor/pine' }]);
});

test('a larger room changes quantities; a milestone that moves is told', () => {
  const comparison = between(
    {},
    {
      [study]: [[`size: 10'-0" x 12'-0"`, `size: 10'-0" x 13'-0"`]],
      'content/house.md': [['date: 2026-05-04', 'date: 2026-05-11']],
    },
  );
  const floor = comparison.rooms[0]?.selections.find((change) => change.category === 'floor');
  expect(floor?.quantities).toEqual([{ part: 'main', unit: 'sq ft', from: 120, to: 130 }]);
  expect(comparison.milestones.map((milestone) => milestone.id)).toEqual(['framing', 'drywall', 'trim']);
});

test('what a room measures, its openings and its drawings', () => {
  const comparison = between(
    {},
    {
      [study]: [
        [`ceiling: flat 9'-0"`, `ceiling: flat 10'-0"`],
        [`at: 2'-0", width: 6'-0"`, `at: 2'-0", width: 5'-0"`],
      ],
    },
  );
  const [room] = comparison.rooms;
  // Walls: 44 lin ft × 9 ft less a door of 21 and a window of 30 sq ft; then × 10 less 21 and 25.
  expect(room?.measures[0]).toEqual({
    what: 'Walls, less openings',
    unit: 'sq ft',
    from: 345,
    to: 394,
    difference: 49,
  });
  expect(room?.measures.at(-1)).toMatchObject({ what: 'Ceiling height', difference: 304_800_000 });
  expect(room?.parts).toEqual([
    { of: 'opening', id: 'W01', name: 'W01', kind: 'changed', from: `6'-0" × 5'-0"`, to: `5'-0" × 5'-0"` },
  ]);
  expect(room?.drawings.map(({ kind, id }) => `${kind} ${id}`)).toEqual([
    'plan plan',
    'wall north',
    'wall east',
    'wall south',
    'wall west',
  ]);
});

test('terms of the contract and allowances', () => {
  const comparison = between(
    {},
    {
      'content/house.md': [
        ['overage-markup: 15 %', 'overage-markup: 12 %'],
        ['sum: $100,000', 'sum: $101,000'],
        ['amount: "$1,000"', 'amount: "$1,200"'],
      ],
    },
  );
  expect(comparison.terms).toEqual([
    { field: 'contract sum', from: '$100,000', to: '$101,000' },
    { field: 'mark-up on what goes over', from: '15 %', to: '12 %' },
  ]);
  expect(comparison.allowances).toMatchObject([
    { allowance: 'ceilings', kind: 'kept', fields: [{ field: 'amount', from: '$1,000', to: '$1,200' }] },
  ]);
  expect(comparison.money).toMatchObject({ difference: 100_000, contractSum: 100_000, together: 'everything' });
});

describe('cautions and findings of scope', () => {
  const caution: Caution = {
    id: 'guard-at-drop/study/edge',
    rule: 'guard-at-drop',
    title: 'A drop without a guard',
    room: 'study',
    place: 'edge',
    placeText: 'Edge',
    selections: [],
    trades: ['carpentry'],
    seen: `The edge drops 10'-6" and no guard is selected.`,
    says: '',
    source: { document: '', edition: '', section: '', isCode: false },
    locally: '',
    ask: 'Ask the building department.',
  };
  const finding: ScopeFinding = {
    id: 'gap/study/ceiling/backing',
    kind: 'gap',
    room: 'study',
    place: 'ceiling',
    placeText: 'Ceiling',
    what: 'Nobody straps the ceiling.',
    fix: 'Name a trade.',
    trades: ['carpentry'],
    source: study,
    line: 3,
  };
  const plain = smallBook();
  const warned: Book = {
    ...plain,
    cautions: [caution],
    scope: { buildUps: [], findings: [finding] },
  };

  test('appear and go by id, and touch their trades', () => {
    const appear = compare({ from: plain, to: warned, labels });
    expect(appear.cautions).toEqual([
      {
        id: caution.id,
        kind: 'appears',
        room: 'study',
        placeText: 'Edge',
        title: 'A drop without a guard',
        to: caution.seen,
        then: 'Ask the building department.',
        trades: ['carpentry'],
      },
    ]);
    expect(appear.scope).toMatchObject([{ kind: 'appears', title: 'Nobody does it' }]);
    expect(appear.trades).toEqual([{ trade: 'carpentry', name: 'Carpentry', selections: 0 }]);
    expect(compare({ from: warned, to: plain, labels }).cautions).toMatchObject([{ kind: 'goes', from: caution.seen }]);
    expect(compare({ from: warned, to: warned, labels }).cautions).toEqual([]);
  });

  test('follow a room that was renamed; one that is accepted is told', () => {
    const renamed = smallBook(libraryForStudy());
    const library = (accepted?: Caution['accepted']): Book => ({
      ...renamed,
      cautions: [{ ...caution, id: 'guard-at-drop/library/edge', room: 'library', ...(accepted && { accepted }) }],
    });
    expect(compare({ from: warned, to: library(), labels }).cautions).toEqual([]);
    const accepted = { by: 'Architect', on: '2026-04-01', why: 'A rail comes with the bookcase.' };
    expect(compare({ from: warned, to: library(accepted), labels }).cautions).toMatchObject([
      { kind: 'changed', to: expect.stringContaining('Accepted by Architect') as string },
    ]);
  });
});

/** The study under another name, in a record of that name. */
function libraryForStudy(): Edits {
  const text = smallBook().sources.find((source) => source.path === study)?.text ?? '';
  return {
    [study]: null,
    'content/rooms/library.md': text
      .replace('name: Study', 'name: Library')
      .replaceAll('swing: study', 'swing: library'),
  };
}
