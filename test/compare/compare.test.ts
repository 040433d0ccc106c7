import { describe, expect, test } from 'vitest';
import { compare } from '../../src/compare/index.js';
import type { Comparison } from '../../src/compare/index.js';
import { smallBook } from '../book/small-house.js';
import type { Edits } from '../book/small-house.js';

const study = 'content/rooms/study.md';
const pine = 'content/options/floor/pine.md';
const labels = { from: 'a', to: 'b' };

const between = (from: Edits, to: Edits, mixed?: Edits): Comparison =>
  compare({
    from: smallBook(from),
    to: smallBook(to),
    labels,
    ...(mixed && { newRoomsAtOldPrices: smallBook(mixed) }),
  });

test('a house compared with itself differs in nothing', () => {
  expect(between({}, {})).toMatchObject({
    rooms: [],
    priceBook: [],
    records: [],
    milestones: [],
    trades: [],
    money: { difference: 0 },
  });
});

describe('another choice', () => {
  const oak: Edits = { [study]: [['chosen: pine', 'chosen: oak']] };

  test('is told with both sides, what it costs and whom it touches', () => {
    const comparison = between({}, oak);
    expect(comparison.money.difference).toBe(88_200);
    expect(comparison.trades).toEqual(['carpentry']);
    expect(comparison.records).toEqual([{ path: study, kind: 'edited' }]);
    const [change] = comparison.rooms[0]?.selections ?? [];
    expect(change).toMatchObject({
      aspects: ['choice', 'cost'],
      from: { optionName: 'Pine strip' },
      to: { optionName: 'Oak strip' },
      cost: 88_200,
      contract: 88_200,
    });
  });

  test('the other way round turns every sign', () => {
    const back = between(oak, {});
    expect(back.money.difference).toBe(-88_200);
    expect(back.rooms[0]?.selections[0]).toMatchObject({ cost: -88_200, contract: -88_200 });
  });
});

test("a supplier's price rise is not the owner's change", () => {
  const dearer: Edits = { [pine]: [['material: $4.00', 'material: $4.50']] };
  const both: Edits = { ...dearer, [study]: [['chosen: pine', 'chosen: oak']] };
  const comparison = between({}, both, { [study]: [['chosen: pine', 'chosen: oak']] });
  expect(comparison.money).toEqual({ difference: 88_200, byChoice: 88_200, byPriceBook: 0 });
  const priceOnly = between({}, dearer, {});
  // 140 sq ft × $0.50 = 70, 5 % tax
  expect(priceOnly.money).toEqual({ difference: 7_350, byChoice: 0, byPriceBook: 7_350 });
  expect(priceOnly.rooms[0]?.selections[0]?.aspects).toEqual(['cost']);
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
  const text = smallBook().sources.find((source) => source.path === study)?.text ?? '';
  const renamed = between(
    {},
    {
      [study]: null,
      'content/rooms/library.md': text
        .replace('name: Study', 'name: Library')
        .replaceAll('swing: study', 'swing: library'),
    },
  );
  expect(renamed.rooms).toMatchObject([{ room: 'library', kind: 'kept', renamedFrom: '101 Study', selections: [] }]);
  expect(renamed.records.map((record) => record.kind)).toEqual(['added', 'removed']);
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
