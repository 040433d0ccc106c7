import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { weigh } from '../../src/core/book/weigh.js';
import type { FeatureMeasure, Option } from '../../src/core/model/index.js';
import { resolvePlaces, takeOff } from '../../src/core/takeoff/index.js';
import { cuttingWords, cutTimbers } from '../../src/core/takeoff/timber/cut.js';
import { fromFeet, fromInches, type Length } from '../../src/base/units/index.js';
import { category, option, room, selection } from './room.js';

const sold = (...lengths: number[]): Option =>
  option([{ unit: 'lin ft' }], { stock: { text: '', value: { kind: 'lengths', lengths: lengths.map(fromFeet) } } });
const pieces = (length: Length, count: number) => ({
  place: 'beams',
  name: 'Beams',
  gross: 0,
  adjustments: [],
  net: 0,
  timber: { count, length },
});

describe('timbers are cut from the lengths that are sold', () => {
  test('one from each where two do not fit', () => {
    // 25 ft from 26; 20 is too short and 30 is more than needed.
    const cut = cutTimbers([pieces(fromFeet(25), 3)], sold(20, 26, 30));
    expect(cut?.stock).toEqual([{ length: fromFeet(26), count: 3 }]);
    expect(cut && cuttingWords(cut)).toEqual([`3 of 26'-0", cut into 3 of 25'-0"`]);
  });

  test('several from one, with the saw cuts between them', () => {
    // Three of 7'-2" and two cuts of 1/8" are 21'-6 1/4": one of 24 ft. Two of 12 ft are 24 ft and a cut: two of 16.
    expect(cutTimbers([pieces(fromInches(86), 3)], sold(16, 20, 24))?.stock).toEqual([
      { length: fromFeet(24), count: 1 },
    ]);
    expect(cutTimbers([pieces(fromFeet(12), 2)], sold(16, 24))?.stock).toEqual([{ length: fromFeet(16), count: 2 }]);
  });

  test('one that is longer than any is asked for by its own length', () => {
    const cut = cutTimbers([pieces(fromFeet(31), 2), pieces(fromFeet(19), 1)], sold(20, 26));
    expect(cut?.stock).toEqual([
      { length: fromFeet(20), count: 1 },
      { length: fromFeet(31), count: 2 },
    ]);
    expect(cut?.departures).toEqual([`2 of 31'-0", longer than any that is sold (26'-0"): ask for that length`]);
  });

  test('no more is bought than each by itself would take', () => {
    // 74", twice 107" and 214": from 10 ft, 10 ft, 10 ft and 24 ft, 54 ft. Both of 107" out of one of 24 ft would make 58.
    const own = [pieces(fromInches(74), 1), pieces(fromInches(107), 2), pieces(fromInches(214), 1)];
    expect(cutTimbers(own, sold(10, 24))?.stock).toEqual([
      { length: fromFeet(10), count: 3 },
      { length: fromFeet(24), count: 1 },
    ]);
  });

  test('nothing is said where no lengths are recorded', () => {
    expect(cutTimbers([pieces(fromFeet(12), 2)], option([{ unit: 'lin ft' }]))).toBeUndefined();
  });

  test('every piece is cut, and no board is shorter than what is cut from it', () => {
    const feet = fc.integer({ min: 2, max: 30 });
    fc.assert(
      fc.property(fc.array(feet, { minLength: 1, maxLength: 8 }), (lengths) => {
        const stock = [16, 20, 24, 30];
        const cut = cutTimbers(
          lengths.map((length) => pieces(fromFeet(length), 1)),
          sold(...stock),
        );
        const sum = (list: readonly { length: Length; count: number }[] = []) =>
          list.reduce((all, { length, count }) => all + length * count, 0);
        expect(cut?.cuts.reduce((all, { count }) => all + count, 0)).toBe(lengths.length);
        expect(sum(cut?.cuts)).toBe(lengths.reduce((all, length) => all + fromFeet(length), 0));
        expect(sum(cut?.stock)).toBeGreaterThanOrEqual(sum(cut?.cuts));
        for (const { length, from } of cut?.cuts ?? []) expect(from).toBeGreaterThanOrEqual(length);
      }),
    );
  });
});

describe('a timber has one weight', () => {
  const length = fromFeet(19);
  const trusses: FeatureMeasure = {
    kind: 'timber',
    id: 'trusses',
    name: 'Trusses',
    faces: [],
    runs: [{ id: 'trusses/length', name: 'Total length', length: fromFeet(76), pieces: Array<Length>(4).fill(length) }],
    counts: [],
    covers: [],
    facts: [],
    data: {
      count: 4,
      length,
      width: fromInches(7.5),
      depth: fromInches(11.5),
      ends: [0, 0],
      isMetric: false,
      density: 36,
    },
  };
  const measure = { ...room, features: [trusses] };
  const at = selection('trusses');
  const take = (of: Option) =>
    takeOff({ selection: at, category: category('run'), measure }, resolvePlaces(at, measure).places, of).takeoffs;

  test('by its own density where the option has no weight', () => {
    // 7.5 × 11.5 / 144 × 19 = 11.3802 cu ft each, × 36 = 409.7 lb
    const of = option([{ unit: 'lin ft' }]);
    expect(take(of)[0]?.places[0]?.timber?.pounds).toBeCloseTo(409.6875, 4);
    expect(weigh(of, take(of))).toBeCloseTo(4 * 409.6875, 4);
  });

  test('by the weight of the option, piece by piece and all together', () => {
    // 21 lb a foot: 399 lb each, 1,596 lb
    const of: Option = { ...option([{ unit: 'lin ft' }]), weight: { pounds: 21, per: 'lin ft' } };
    expect(take(of)[0]?.places[0]?.timber?.pounds).toBeCloseTo(399, 9);
    expect(weigh(of, take(of))).toBeCloseTo(1596, 9);
  });
});
