import { expect, test } from 'vitest';
import type { SupplyRule } from '../../src/core/model/index.js';
import { poolSupplies, resolvePlaces, sumSupplies, takeOff } from '../../src/core/takeoff/index.js';
import { suppliesOf } from '../../src/core/takeoff/supply.js';
import { fromInches } from '../../src/base/units/index.js';
import { category, option, room, selection } from './room.js';

const tape: SupplyRule = {
  what: 'Joint tape',
  usage: { amount: 380, unit: 'lin ft', per: 1000, of: 'sq ft' },
  when: [],
  pack: { name: 'roll', holds: 50 },
  waste: { amount: 10, scale: 2 },
  source: 'a handbook',
};

const board = option([{}]);

const tile = {
  ...option([{}], {
    length: { text: '12"', value: { kind: 'length', length: fromInches(12) } },
    width: { text: '12"', value: { kind: 'length', length: fromInches(12) } },
    joint: { text: '1/4"', value: { kind: 'length', length: fromInches(0.25) } },
    grout: { text: 'warm gray', value: { kind: 'text', text: 'warm gray' } },
    coats: { text: '2', value: { kind: 'number', number: 2 } },
  }),
  thickness: fromInches(0.5),
};

test('tape goes with the net area, and waste comes on top', () => {
  // 500 / 1000 × 380 = 190; × 1.1 = 209.
  const [supply] = suppliesOf([tape], board, { quantity: 500, unit: 'sq ft' });
  expect(supply).toMatchObject({ what: 'Joint tape', unit: 'lin ft', net: 190, waste: { percent: 10 } });
  expect(supply?.required).toBeCloseTo(209, 9);
});

test('grout fills the joints: 12" tiles, half an inch thick, a quarter of an inch apart', () => {
  // A tile and its joint take 12.25² = 150.0625 sq in, of which 144 are tile: 4.04 % joint. × 1/24 ft = 0.0016834 cu ft.
  const grout: SupplyRule = {
    ...tape,
    what: 'Grout',
    usage: { amount: 110, unit: 'lb', per: 1, of: 'cu ft' },
    namedBy: 'grout',
  };
  const [supply] = suppliesOf([grout], tile, { quantity: 100, unit: 'sq ft' });
  expect(supply?.what).toBe('Grout, warm gray');
  expect(supply?.net).toBeCloseTo(100 * (1 - 144 / 150.0625) * (1 / 24) * 110, 9);
  expect(supply?.factors[0]?.why).toBe('cu ft of joint in a sq ft: 1/4" around pieces of 1\'-0" × 1\'-0", 1/2" thick');
});

test('only with options that say so, times what they say, and only where the unit is measured', () => {
  const says = (text: string): SupplyRule => ({ ...tape, when: [{ attribute: 'grout', says: [text] }] });
  const area = { quantity: 1000, unit: 'sq ft' } as const;
  expect(suppliesOf([says('white')], tile, area)).toEqual([]);
  expect(suppliesOf([says('warm gray')], tile, area)).toHaveLength(1);
  expect(suppliesOf([tape], tile, { quantity: 10, unit: 'lin ft' })).toEqual([]);
  expect(suppliesOf([{ ...tape, timesBy: 'coats' }], tile, area)[0]?.net).toBe(760);
});

test('packs are counted once for the house: 94 lin ft twice are 4 rolls of 50', () => {
  // The ceiling of the room is 224 sq ft: 224 × 0.38 × 1.1 = 93.632. Twice that is 187.264.
  const at = selection('ceiling');
  const { takeoffs } = takeOff(
    { selection: at, category: category('area', { supplies: [tape] }), measure: room },
    resolvePlaces(at, room).places,
    board,
  );
  const used = ['one/board/ceiling', 'two/board/ceiling'].map((id) => ({
    selection: id,
    trade: 'drywall',
    takeoff: takeoffs,
  }));
  const [pool] = poolSupplies(used);
  expect(pool?.required).toBeCloseTo(187.264, 9);
  expect(pool?.packs).toBe(4);
  expect(pool?.shares.map((share) => share.selection)).toEqual(['one/board/ceiling', 'two/board/ceiling']);
  expect(sumSupplies(used)[0]?.packs).toBeUndefined();
});
