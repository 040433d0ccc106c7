import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Assembly, Attribute, InsulationLayer, Option } from '../../../src/core/model/index.js';
import { assembliesOf } from '../../../src/core/takeoff/assembly.js';
import { cutTimbers } from '../../../src/core/takeoff/timber/cut.js';
import {
  assemblyAsPrinted,
  layerMismatches,
  resistanceWords,
  resolvePlaces,
  takeOff,
  weightInPlace,
  type PlaceQuantity,
} from '../../../src/core/takeoff/index.js';
import { fromInches, inLocale, printLength } from '../../../src/base/units/index.js';
import { category, option, room, selection } from '../../takeoff/room.js';
import { read } from './second-way/words.js';

/** Walls of layers, stone with its mortar, and timbers from stock by a second way. Heat is counted as it flows: so much through each square foot
 *  of a wall of a thousand. No publication is behind it. */

const numeric = (number: number): Attribute => ({ text: String(number), value: { kind: 'number', number } });
const length = (size: number): Attribute => ({ text: '', value: { kind: 'length', length: fromInches(size) } });
const tenths = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 10, max: most * 10 }).map((count) => count / 10);

describe('heat through a wall', () => {
  const assembly = (percent: number, rPerInch: number, layers: readonly number[], depth?: number): Assembly => ({
    name: 'Outside wall',
    over: 'walls',
    framing: {
      what: 'Studs',
      share: { amount: percent, scale: 2 },
      rPerInch,
      source: '',
      ...(depth !== undefined && { depth: fromInches(depth) }),
    },
    layers: layers.map((r) => ({ what: '', r, source: '' })),
  });
  const walls = fc.record({
    r: fc.integer({ min: 5, max: 60 }),
    thick: tenths(2, 14),
    percent: fc.integer({ min: 0, max: 30 }),
    rPerInch: fc.constantFrom(1, 1.25, 0.9),
    layers: fc.array(tenths(0.1, 12), { minLength: 1, maxLength: 4 }),
    depth: fc.option(tenths(3, 12), { nil: undefined }),
  });

  test('a thousand square feet, framing and cavity, foot by foot; framing is as deep as it is, else as what is between', () => {
    fc.assert(
      fc.property(walls, ({ r, thick, percent, rPerInch, layers, depth }) => {
        const batt = option([{}], { 'r-value': numeric(r), 'thickness-in-place': length(thick) });
        const [wall] = assembliesOf({ assemblies: [assembly(percent, rPerInch, layers, depth)] }, batt, [
          { id: 'north', over: 'walls' },
        ]);
        if (!wall) throw new Error('there is a wall');
        const around = layers.reduce((sum, layer) => sum + layer, 0);
        const stud = (depth ?? thick) * rPerInch;
        // British thermal units in an hour for each degree.
        let flow = 0;
        for (let foot = 0; foot < 1000; foot += 1) flow += 1 / (around + (foot < percent * 10 ? stud : r));
        expect(wall.transmittance).toBeCloseTo(flow / 1000, 9);
        expect(wall.effective).toBeCloseTo(1000 / flow, 6);
        expect([wall.cavity.share, wall.framing.share]).toEqual([
          expect.closeTo(1 - percent / 100, 9),
          expect.closeTo(percent / 100, 9),
        ]);
        expect([wall.cavity.r, wall.framing.r, wall.framing.fill.r]).toEqual([
          expect.closeTo(around + r, 9),
          expect.closeTo(around + stud, 9),
          expect.closeTo(stud, 9),
        ]);
        const words = String(read(1000 / flow, 2));
        expect(resistanceWords(wall)).toBe(`Outside wall R-${words} with its framing`);
      }),
    );
  });

  test('as printed the layers of each way add up to it, and one over U is the whole', () => {
    fc.assert(
      fc.property(walls, fc.boolean(), ({ r, thick, percent, rPerInch, layers }, metric) => {
        const batt = option([{}], { 'r-value': numeric(r), 'thickness-in-place': length(thick) });
        const odd = layers.map((layer, index) => layer + (index === 0 ? 0.123 : 0.0457));
        const [wall] = assembliesOf({ assemblies: [assembly(percent, rPerInch, odd)] }, batt, [
          { id: 'north', over: 'walls' },
        ]);
        if (!wall) throw new Error('there is a wall');
        const told = inLocale({ units: metric ? 'metric' : 'customary', currency: 'USD' }, () =>
          assemblyAsPrinted(wall),
        );
        const unit = metric ? 0.1761102 : 1;
        expect(told.effective).toBeCloseTo(wall.effective * unit, 9);
        expect(told.transmittance).toBeCloseTo(wall.transmittance / unit, 9);
        for (const { way } of told.ways) {
          const sum = [...told.layers, way.fill].reduce((total, { r: each }) => total + read(each, told.digits), 0);
          // Eight digits are the most; what is turned into another system may need more.
          if (told.digits < 8) expect(read(sum, told.digits)).toBe(read(way.r, told.digits));
          else expect(metric).toBe(true);
        }
        expect(told.ways.map(({ way }) => way.r)).toEqual(
          [wall.cavity, wall.framing].map((way) => expect.closeTo(way.r * unit, 9) as number),
        );
        expect(read(1 / read(told.transmittance, told.digitsOfU), 2)).toBe(read(told.effective, 2));
        expect(told.digits).toBeGreaterThanOrEqual(2);
        expect(told.digitsOfU).toBeGreaterThanOrEqual(4);
      }),
    );
  });

  test('what an option claims beside what its layers give: half of one is rounding', () => {
    const foam = (inches: number, rPerInch: number, where: InsulationLayer['where']): InsulationLayer => ({
      what: 'Foam',
      where,
      thickness: fromInches(inches),
      rPerInch,
    });
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 40 }),
        tenths(1, 6),
        fc.integer({ min: 3, max: 7 }),
        tenths(0.5, 3),
        (typed, inches, rPerInch, outside) => {
          const given = inches * rPerInch;
          fc.pre(Math.abs(Math.abs(typed - given) - 0.5) > 1e-6);
          const chosen: Option = {
            ...option([{}], {
              'r-value': numeric(typed),
              'continuous-r': numeric(outside * 5),
              'thickness-in-place': length(inches + 1),
            }),
            layers: [
              foam(inches, rPerInch, 'cavity'),
              foam(outside, 5, 'continuous'),
              { what: 'Air', where: 'cavity', r: 0, thickness: fromInches(1) },
            ],
          };
          const isOff = Math.abs(typed - given) > 0.5;
          expect(layerMismatches(chosen).map(({ attribute }) => attribute)).toEqual(isOff ? ['r-value'] : []);
          const thick = { ...chosen, attributes: { ...chosen.attributes, 'thickness-in-place': length(inches + 2) } };
          const [told] = layerMismatches(thick).filter(({ attribute }) => attribute === 'thickness-in-place');
          expect(told?.given).toBe(printLength(fromInches(inches + 1)));
        },
      ),
    );
  });
});

describe('stone', () => {
  const stone = (covers: number): Option =>
    option([{ part: 'flats' }, { part: 'corners', unit: 'lin ft' }], { 'corner-covers': numeric(covers) });
  const taken = (covers: number) => {
    const at = selection('breast');
    const { places } = resolvePlaces(at, room);
    return takeOff({ selection: at, category: category('stone'), measure: room }, places, stone(covers)).takeoffs;
  };

  // By hand: faces of 54 less a firebox of 10.5, 18 and 18; 18 ft of corners.
  test.each([
    [0.5, 'a foot of corner covers 0.5 sq ft'],
    [0.75, 'a foot of corner covers 0.75 sq ft'],
  ])('corners that cover %d come off the largest face', (covers, why) => {
    const [flats, corners] = taken(covers);
    expect([flats?.net, flats?.covered, corners?.net]).toEqual([79.5 - 18 * covers, 79.5, expect.closeTo(18, 6)]);
    const front = flats?.places.find(({ place }) => place === 'breast/front');
    expect(front?.adjustments.at(-1)).toEqual({ what: 'Corner pieces', amount: -18 * covers, why });
  });

  test('in a metric house a metre of corner covers 0.3048 times as many square metres', () => {
    inLocale({ units: 'metric', currency: 'CHF' }, () => {
      for (const covers of [0.5, 0.75, 1.2]) {
        const metre = read((covers * 0.09290304) / 0.3048, 2);
        const front = taken(covers)[0]?.places.find(({ place }) => place === 'breast/front');
        expect(front?.adjustments.at(-1)?.why).toBe(`a metre of corner covers ${metre} m²`);
      }
    });
  });

  test('its weight in place is its own with what it is set in', () => {
    fc.assert(
      fc.property(
        tenths(1, 20),
        fc.option(tenths(1, 6), { nil: undefined }),
        fc.option(tenths(1, 6), { nil: undefined }),
        (pounds, mortar, lath) => {
          const attributes = {
            ...(mortar !== undefined && { 'mortar-weight': numeric(mortar) }),
            ...(lath !== undefined && { 'lath-weight': numeric(lath) }),
          };
          const of = (per: 'sq ft' | 'each') => weightInPlace({ ...option([{}], attributes), weight: { pounds, per } });
          expect(of('sq ft')?.pounds).toBeCloseTo(
            [pounds, mortar ?? 0, lath ?? 0].reduce((a, b) => a + b),
            9,
          );
          expect(of('each')?.pounds).toBe(pounds);
          expect(weightInPlace(option([{}], attributes))).toBeUndefined();
        },
      ),
    );
  });
});

describe('timbers', () => {
  test('are cut from lengths that hold them and an eighth of an inch for each cut; what is longer is asked for', () => {
    const lengths = fc.array(fc.integer({ min: 20, max: 330 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(lengths, fc.constantFrom([96, 144, 192, 240], [120, 288]), (pieces, stock) => {
        const chosen = option([{}], {
          stock: { text: '', value: { kind: 'lengths', lengths: stock.map(fromInches) } },
        });
        const places = pieces.map((piece, index): PlaceQuantity => ({
          ...{ place: `p${index}`, name: '', gross: 0, adjustments: [], net: 0 },
          timber: { count: 1 + (index % 2), length: fromInches(piece) },
        }));
        const cutting = cutTimbers(places, chosen);
        const all = pieces.flatMap((piece, index) => (index % 2 === 0 ? [piece] : [piece, piece]));
        const longest = Math.max(...stock);
        const long = [...new Set(all.filter((piece) => piece > longest))].sort((a, b) => a - b);
        const inches = (size: number): number => size / fromInches(1);
        const cut = (cutting?.cuts ?? []).flatMap(({ length: size, count }) =>
          Array.from({ length: count }, () => inches(size)),
        );
        expect(cut.sort((a, b) => a - b)).toEqual([...all].sort((a, b) => a - b));
        expect(cutting?.departures).toEqual(
          long.map(
            (size) =>
              `${all.filter((one) => one === size).length} of ${printLength(fromInches(size))}, longer than any that is sold (${printLength(fromInches(longest))}): ask for that length`,
          ),
        );
        const bought = (cutting?.stock ?? []).reduce((sum, { length: size, count }) => sum + inches(size) * count, 0);
        expect(bought).toBeGreaterThanOrEqual(all.reduce((sum, piece) => sum + piece, 0));
        // No more than one board for each, the shortest that holds it.
        const each = all.map((piece) =>
          Math.min(...[...stock, piece > longest ? piece : Infinity].filter((size) => size >= piece)),
        );
        expect(bought).toBeLessThanOrEqual(each.reduce((sum, size) => sum + size, 0));
        for (const { from, length: size } of cutting?.cuts ?? []) expect(from).toBeGreaterThanOrEqual(size);
      }),
    );
    const two = (size: number) =>
      cutTimbers(
        [{ place: 'p', name: '', gross: 0, adjustments: [], net: 0, timber: { count: 2, length: fromInches(size) } }],
        option([{}], { stock: { text: '', value: { kind: 'lengths', lengths: [120, 144].map(fromInches) } } }),
      )?.stock;
    // Two of 5'-11 15/16" with a cut of 1/8" come out of 12 ft; of 6 ft they do not.
    expect(two(71.9375)).toEqual([{ length: fromInches(144), count: 1 }]);
    expect(two(72)).toEqual([{ length: fromInches(120), count: 2 }]);
  });
});
