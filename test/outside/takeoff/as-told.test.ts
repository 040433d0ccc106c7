import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Attribute, Convention, Option, SupplyRule } from '../../../src/core/model/index.js';
import { countsOf } from '../../../src/core/takeoff/count.js';
import { suppliesOf } from '../../../src/core/takeoff/supply.js';
import { poolCounts, supplyWords, takeoffAsPrinted, type Takeoff } from '../../../src/core/takeoff/index.js';
import { fromInches, inLocale, type Area } from '../../../src/base/units/index.js';
import { category, option } from '../../takeoff/room.js';
import { areas, numberIn, read, takeoff } from './second-way/words.js';

/** What is told of a quantity, worked again from the words with a calculator: it must come to the figure that is printed beside them. No
 *  publication is behind it. */

const length = (size: number): Attribute => ({ text: '', value: { kind: 'length', length: fromInches(size) } });
const numeric = (number: number): Attribute => ({ text: String(number), value: { kind: 'number', number } });
const textual = (text: string): Attribute => ({ text, value: { kind: 'text', text } });
const rule = (counted: NonNullable<Convention['counted']>): Convention => category('area', { counted }).measure;

const shares = fc.integer({ min: 0, max: 30 }).map((count) => count / 200);
const coats = fc.integer({ min: 1, max: 4 });

interface Said {
  readonly area: number;
  readonly times: number;
  readonly waste: number;
}

/** `617.75 sq ft × 2 coats and 8 % waste`. */
function said(why: string, unit = 'sq ft'): Said {
  const found = new RegExp(`^([\\d,.]+) ${unit}(?: × (\\d+) (?:coats|layers))?(?: and ([\\d.]+) % waste)?,`, 'u').exec(
    why,
  );
  if (!found) throw new Error(why);
  return {
    area: numberIn(found[1]),
    times: found[2] === undefined ? 1 : numberIn(found[2]),
    waste: numberIn(found[3] ?? '0') / 100,
  };
}

const worked = ({ area, times, waste }: Said): number => area * times * (1 + waste);

describe('as the trade counts it', () => {
  test('gallons', () => {
    fc.assert(
      fc.property(
        areas,
        coats,
        shares,
        fc.integer({ min: 200, max: 450 }),
        fc.boolean(),
        (net, times, waste, spread, whole) => {
          const paint = option([{}], { coverage: numeric(spread) });
          const [count] = countsOf(rule('gallons'), paint, {
            net: [(net / 3) as Area, ((2 * net) / 3) as Area],
            times,
            waste,
            whole,
          });
          expect(count?.amount).toBeCloseTo((net * times * (1 + waste)) / spread, 9);
          expect(count?.why).toContain(`, ${spread} sq ft to a gallon`);
          expect(read(worked(said(count?.why ?? '')) / spread)).toBe(read(count?.amount ?? NaN));
          expect(count?.whole).toBe(whole ? Math.ceil((count?.amount ?? NaN) - 1e-9) : undefined);
        },
      ),
    );
    expect(
      countsOf(rule('gallons'), option([{}], { coverage: numeric(0) }), {
        net: [1 as Area],
        times: 1,
        waste: 0,
        whole: true,
      }),
    ).toEqual([]);
  });

  test('gallons of a metric house are litres, in cans of any size', () => {
    inLocale({ units: 'metric', currency: 'CHF' }, () => {
      const paint = option([{}], { coverage: numeric(400) });
      const [count] = countsOf(rule('gallons'), paint, { net: [1076.391 as Area], times: 2, waste: 0.1, whole: true });
      // 100 m² in two coats with a tenth more at 400 × 0.09290304 / 3.785411784 = 9.817 m² for a litre.
      expect(count?.why).toBe('100 m² × 2 coats and 10 % waste, 9.82 m² / L');
      expect([count?.whole, (count?.amount ?? 0) * 3.785411784]).toEqual([undefined, expect.closeTo(220 / 9.81698, 2)]);
    });
  });

  test('boards, by length and by board feet', () => {
    const sizes = fc.constantFrom([1, 6, 5.125], [1, 8, 6.875], [2, 6, 4.9375], [0.5, 4, 3] as const);
    fc.assert(
      fc.property(areas, coats, shares, sizes, (net, times, waste, [thick = 1, wide = 1, face = 1]) => {
        const boards = option([{}], { face: length(face), nominal: textual(`${thick}x${wide}`) });
        const [lineal, board] = countsOf(rule('boards'), boards, { net: [net as Area], times, waste, whole: false });
        const covered = net * times * (1 + waste);
        expect(lineal?.amount).toBeCloseTo(covered / (face / 12), 6);
        // Twelve by twelve by one inch is one; what is thinner is sawn from an inch.
        expect(board?.amount).toBeCloseTo((((covered / (face / 12)) * wide) / 12) * Math.max(thick, 1), 6);
        expect(read((worked(said(lineal?.why ?? '')) * 12) / face)).toBe(read(lineal?.amount ?? NaN));
        expect(read((worked(said(board?.why ?? '')) * wide * Math.max(thick, 1)) / face)).toBe(
          read(board?.amount ?? NaN),
        );
      }),
    );
    const bare = countsOf(rule('boards'), option([{}], { face: length(5) }), {
      net: [10 as Area],
      times: 1,
      waste: 0,
      whole: false,
    });
    expect(bare.map(({ unit }) => unit)).toEqual(['lin ft']);
  });

  test('sheets of each length, as if all were of it; for the house walls and ceilings apart, then waste, then whole', () => {
    const lengths: Attribute = {
      text: '',
      value: { kind: 'lengths', lengths: [8, 10, 12].map((feet) => fromInches(feet * 12)) },
    };
    const sheets = option([{}], { face: length(48), stock: lengths });
    fc.assert(
      fc.property(areas, areas, coats, shares, (walls, ceiling, times, waste) => {
        const counted = countsOf(rule('sheets'), sheets, {
          net: [walls as Area, ceiling as Area],
          times,
          waste,
          whole: true,
        });
        counted.forEach(({ amount, whole, why }, index) => {
          const sheet = [32, 40, 48][index] ?? NaN;
          expect(amount).toBeCloseTo(((walls + ceiling) * times * (1 + waste)) / sheet, 6);
          const each = [walls, ceiling].map((area) => Math.ceil((area * times) / sheet - 1e-9));
          expect(whole).toBe(Math.ceil(((each[0] ?? 0) + (each[1] ?? 0)) * (1 + waste) - 1e-9));
          expect(why).toContain(`${sheet} sq ft to a sheet`);
        });
        expect(counted).toHaveLength(3);
      }),
    );
  });

  test('for the house, from what its places take: coats are in the areas, and waste is what is more', () => {
    const lengths: Attribute = { text: '', value: { kind: 'lengths', lengths: [fromInches(96)] } };
    const sheets = option([{}], { face: length(48), stock: lengths });
    fc.assert(
      fc.property(areas, areas, coats, shares, (walls, ceiling, times, waste) => {
        const takeoffs = [
          takeoff([['north', walls]], times, waste),
          takeoff(
            [
              ['ceiling', ceiling],
              ['south', walls],
            ],
            times,
            waste,
          ),
        ];
        const [count] = poolCounts(rule('sheets'), sheets, takeoffs);
        const each = [2 * walls, ceiling].map((area) => Math.ceil((area * times) / 32 - 1e-9));
        const all = ((each[0] ?? 0) + (each[1] ?? 0)) * (1 + waste);
        expect(Math.abs((count?.whole ?? 0) - Math.ceil(all - 1e-6))).toBe(0);
        expect(count?.amount).toBeCloseTo(((2 * walls + ceiling) * times * (1 + waste)) / 32, 6);
      }),
    );
    expect(poolCounts(rule('sheets'), sheets, [takeoff([['north', 0]], 1, 0)])).toEqual([]);
    const counted = (unit: string, amount: number, whole?: number): Takeoff => ({
      ...takeoff([['stair', 1]], 1, 0),
      counts: [{ unit, amount, ...(whole !== undefined && { whole }), why: `${amount}`, source: '' }],
    });
    const none = category('railing').measure;
    expect(
      poolCounts(none, sheets, [
        counted('balusters', 5, 5),
        counted('lin ft', 2.5),
        counted('balusters', 7, 7),
        counted('lin ft', 3),
      ]),
    ).toEqual([
      { unit: 'balusters', amount: 12, whole: 12, why: '5; 7', source: '' },
      { unit: 'lin ft', amount: 5.5, why: '2.5; 3', source: '' },
    ]);
  });
});

describe('what is used up', () => {
  const tape: SupplyRule = {
    what: 'Tape',
    usage: { amount: 380, unit: 'lin ft', per: 1000, of: 'sq ft' },
    when: [],
    waste: { amount: 0, scale: 2 },
    source: '',
  };
  const tile = (long: number, joint: number, thick: number): Option => ({
    ...option([{}], { length: length(long), width: length(long), joint: length(joint), coats: numeric(3) }),
    thickness: fromInches(thick),
  });
  /** `844.5 sq ft × 3 (coats…) at 380 lin ft for 1,000 sq ft, and 10 % waste`. */
  const byWords = (words: string): number => {
    const factors = [...words.matchAll(/ × ([\d,.]+) \(/gu)].map(([, factor]) => numberIn(factor));
    const [, amount, per = '1'] = / at ([\d,.]+) [a-z ]+? for (?:a )?([\d,.]+)?/u.exec(words) ?? [];
    const [, waste = '0'] = / and ([\d.]+) % waste/u.exec(words) ?? [];
    const quantity = numberIn(/^[\d,.]+/u.exec(words)?.[0]);
    return (
      factors.reduce((product, factor) => product * factor, quantity) *
      (numberIn(amount) / numberIn(per)) *
      (1 + numberIn(waste) / 100)
    );
  };

  test('leads from the words to what is required', () => {
    fc.assert(
      fc.property(
        areas,
        fc.integer({ min: 1, max: 900 }),
        fc.constantFrom(1, 9, 100, 1000),
        fc.integer({ min: 0, max: 20 }),
        fc.boolean(),
        fc.constantFrom([12, 0.25, 0.5], [3, 0.125, 0.375], [6, 0.1875, 0.375] as const),
        fc.constantFrom('plain' as const, 'times' as const, 'joints' as const),
        (quantity, amount, per, percent, isRun, [long = 1, joint = 1, thick = 1], kind) => {
          const of = kind === 'joints' ? 'cu ft' : isRun ? 'lin ft' : 'sq ft';
          const unit = kind !== 'joints' && isRun ? ('lin ft' as const) : ('sq ft' as const);
          const each: SupplyRule = {
            ...tape,
            usage: { amount, unit: 'lb', per, of },
            waste: { amount: percent, scale: 2 },
            ...(kind === 'times' && { timesBy: 'coats' }),
          };
          const [supply] = suppliesOf([each], tile(long, joint, thick), { quantity, unit });
          if (!supply) throw new Error('nothing is used');
          const cell = (long + joint) ** 2;
          const joints = (1 - long ** 2 / cell) * (thick / 12);
          const times = kind === 'times' ? 3 : kind === 'joints' ? joints : 1;
          const net = (quantity * times * amount) / per;
          expect(supply.net).toBeCloseTo(net, 5);
          expect(supply.required).toBeCloseTo(net * (1 + percent / 100), 5);
          expect(supply.waste.percent).toBeCloseTo(percent, 9);
          expect(read(byWords(supplyWords(supply)))).toBe(read(supply.required));
        },
      ),
      { numRuns: 300 },
    );
  });

  test('goes with corners and hinges where there are any', () => {
    const bead: SupplyRule = {
      ...tape,
      usage: { amount: 1, unit: 'lin ft', per: 1, of: 'lin ft' },
      goesWith: 'outside-corners',
    };
    const beside = { 'outside-corners': 18, pairs: 0, hinges: 0 };
    const area = { quantity: 100, unit: 'sq ft' } as const;
    expect(suppliesOf([bead], option([{}]), area, beside)[0]).toMatchObject({ net: 18, required: 18 });
    expect(suppliesOf([bead], option([{}]), area, { ...beside, 'outside-corners': 0 })).toEqual([]);
    expect(suppliesOf([bead], option([{}]), area)).toEqual([]);
  });
});

test('a take-off as printed adds up, place by place, and leads to what is required', () => {
  const cents = fc.integer({ min: 0, max: 600_000 }).map((count) => count / 700);
  fc.assert(
    fc.property(
      fc.array(fc.tuple(cents, cents, cents), { minLength: 1, maxLength: 4 }),
      coats,
      shares,
      fc.boolean(),
      (list, times, waste, metric) => {
        const places = list.map(([gross, one, other], index) => ({
          ...{ place: `p${index}`, name: '', gross, net: Math.max(0, gross - one - other / 10) },
          adjustments: [one, other / 10].map((amount) => ({ what: 'Opening', amount: -amount, why: '' })),
        }));
        const net = places.reduce((sum, place) => sum + place.net, 0);
        const exact: Takeoff = { ...takeoff([], times, waste), places, net, required: net * times * (1 + waste) };
        const unit = metric ? 0.09290304 : 1;
        const last = metric ? 2 : 1;
        const told = inLocale({ units: metric ? 'metric' : 'customary', currency: 'USD' }, () =>
          takeoffAsPrinted(exact),
        );
        const add = (values: readonly number[]): number =>
          read(
            values.reduce((sum, value) => sum + value, 0),
            6,
          );
        // Each figure is its own rounding; what that leaves is a step of its own.
        const amounts = told.places.map((place) => [place.gross, ...place.adjustments.map(({ amount }) => amount)]);
        told.places.forEach((place, index) => expect(add([...(amounts[index] ?? []), place.left])).toBe(place.net));
        expect(add([...amounts.flat(), told.left])).toBe(told.net);
        const gross = places.reduce((sum, place) => sum + place.gross, 0);
        for (const [printed, exactly] of [
          [told.gross, gross],
          [told.less, gross - net],
          [told.net, net],
        ] as const)
          expect(Math.abs(printed - exactly * unit)).toBeLessThanOrEqual(0.5 * 10 ** -told.digits + 1e-9);
        expect(read(told.net * times * (1 + waste), last)).toBe(read(told.required, last));
        expect(told.required).toBeCloseTo(exact.required * unit, 6);
        places.forEach(({ net: own, gross, adjustments }, index) => {
          const rest = own - adjustments.reduce((sum, { amount }) => sum + amount, gross);
          expect(told.places[index]?.adjustments.length).toBe(rest > 1e-6 ? 3 : 2);
        });
      },
    ),
    { numRuns: 200 },
  );
});
