import { describe, expect, test } from 'vitest';
import { orderStatement, sumLaid, type LayoutSummary, type Takeoff } from '../../src/core/takeoff/index.js';
import { layOut, summarize } from '../../src/core/takeoff/layout/index.js';
import { fromInches } from '../../src/base/units/index.js';
import { boards, feetOf, rectangle, sheets } from './layout/shapes.js';

const plane = { place: 'ceiling', name: 'Ceiling', direction: 0, run: 'east-west', startsAt: 'the eave' };

/** Six courses of 7'-10" in boards of 8'-0" that cover 6". */
const ceiling = (endTrim: number) =>
  layOut(
    boards(
      [rectangle(94, 36)],
      { face: fromInches(6), stock: feetOf(8, 10), endTrim: fromInches(endTrim) },
      { joints: 'long-spans' },
    ),
  );

/** A wall of 8' × 6' in sheets of 4' × 8': one whole, one ripped to 2'-0". */
const wall = (orderBy: LayoutSummary['orderBy']) =>
  summarize(
    layOut(sheets([rectangle(96, 72)], { face: fromInches(48), stock: feetOf(8) })),
    { lay: 'sheets', orderBy },
    [plane],
  );

describe('what comes off the ends of boards', () => {
  test('is bought and not laid', () => {
    // 2" off 8'-0" leaves 7'-10", just enough. Bought 6 × 8' × 6" = 24 sq ft, laid 23.5, trimmed 6 × 2" × 6" = 0.5.
    const { surface, stock, boards: each } = ceiling(2);
    expect(stock).toEqual([{ length: fromInches(96), count: 6 }]);
    const foot = fromInches(12) ** 2;
    expect([surface.bought, surface.covered, surface.endTrim].map((area) => area / foot)).toEqual([24, 23.5, 0.5]);
    // Each piece lies an inch from both ends of its board.
    expect(each.map(({ pieces }) => pieces.map(({ along, length }) => [along, length]))).toEqual(
      Array.from({ length: 6 }, () => [[fromInches(1), fromInches(94)]]),
    );
  });

  test('asks for a longer board where too little is left', () => {
    // 3" off 8'-0" leaves 7'-9".
    expect(ceiling(3).stock).toEqual([{ length: fromInches(120), count: 6 }]);
  });

  test('as long as the board leaves nothing to lay', () => {
    expect(ceiling(120).notLaid).toBe('nothing is left of any stock length once its ends are off');
  });
});

describe('which count is the order', () => {
  const area = { required: 51.84, wasteWords: 'with 8 % waste' };

  test('pieces: the area is their check, and what is bought adds up', () => {
    // Two sheets are 64 sq ft: 48 on the wall, and a strip of 2' × 8' = 16.
    expect(orderStatement(wall('pieces'), area)).toEqual({
      order: `Order by pieces, as laid: 2 at 8'-0", 64 sq ft`,
      check: 'Check by area: 51.8 sq ft with 8 % waste; the pieces are 12.2 sq ft more',
      short: 'Order by the pieces. Check by area: 51.8 sq ft, 12.2 sq ft less',
      why: 'Of the pieces 48 sq ft is covered, 16 strips that no other course takes',
    });
  });

  test('area: the pieces are its check', () => {
    const { order, check, short } = orderStatement(wall('area'), area);
    expect(short).toBe('Order by area. Check by the pieces: 64 sq ft, 12.2 sq ft more');
    expect(order).toBe('Order by area: 51.8 sq ft with 8 % waste');
    expect(check).toBe(
      `Check as laid: 2 at 8'-0", 64 sq ft; the pieces are 12.2 sq ft more, so the packs of the whole house must make up for it`,
    );
  });

  test('for the house, the places together, unless one of them is not laid', () => {
    const notLaid: Takeoff = {
      part: 'main',
      unit: 'sq ft',
      places: [],
      gross: 48,
      net: 48,
      factors: [],
      waste: { percent: 8, why: '' },
      required: 51.84,
      rule: '',
      source: '',
    };
    const laid = { ...notLaid, layout: wall('pieces') };
    expect(sumLaid([laid, laid])).toMatchObject({
      orderBy: 'pieces',
      stock: [{ length: fromInches(96), count: 4 }],
      surface: { bought: 128, covered: 96, strips: 32 },
    });
    expect(sumLaid([laid, notLaid])).toBeUndefined();
  });
});
