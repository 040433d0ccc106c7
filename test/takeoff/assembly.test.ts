import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Assembly, InsulationLayer } from '../../src/core/model/index.js';
import { layerMismatches, resolvePlaces, takeOff } from '../../src/core/takeoff/index.js';
import { assembliesOf } from '../../src/core/takeoff/assembly.js';
import { fromInches } from '../../src/base/units/index.js';
import { category, option, room, selection } from './room.js';

const wall: Assembly = {
  name: 'Outside wall',
  over: 'walls',
  framing: { what: 'Studs', share: { amount: 25, scale: 2 }, rPerInch: 1.25, source: 'a table' },
  layers: [
    { what: 'Films and boards', r: 2, source: 'a table' },
    { what: 'Board outside', r: 10, source: 'a drawing' },
  ],
};

const batt = (r: number, inches: number) =>
  option([{}], {
    'r-value': { text: String(r), value: { kind: 'number', number: r } },
    'thickness-in-place': { text: '', value: { kind: 'length', length: fromInches(inches) } },
  });

test('R-21 between 2x6 studs, a quarter framing, R-12 over all of it', () => {
  // Cavity 12 + 21 = 33; framing 12 + 5.5 × 1.25 = 18.875; U = .75 / 33 + .25 / 18.875 = 0.0227273 + 0.0132450 = 0.0359723.
  const [result] = assembliesOf({ assemblies: [wall] }, batt(21, 5.5), [{ id: 'north', over: 'walls' }]);
  expect(result).toMatchObject({ name: 'Outside wall', places: ['north'], labelled: 21 });
  expect([result?.cavity.r, result?.framing.r, result?.framing.fill.r]).toEqual([33, 18.875, 6.875]);
  expect(result?.transmittance).toBeCloseTo(0.0359723, 7);
  expect(result?.effective).toBeCloseTo(27.799, 3);
});

test('only the kinds of surface that are covered, and only options that give an R', () => {
  const insulated = { ...category('area'), assemblies: [wall, { ...wall, name: 'Roof', over: 'ceiling' as const }] };
  const take = (at: string, chosen = batt(21, 5.5)) =>
    takeOff(
      { selection: selection(at), category: insulated, measure: room },
      resolvePlaces(selection(at), room).places,
      chosen,
    ).takeoffs[0]?.assemblies?.map(({ name, places }) => [name, places]);
  expect(take('ceiling')).toEqual([['Roof', ['ceiling']]]);
  expect(take('walls')).toEqual([['Outside wall', ['north', 'east', 'south']]]);
  expect(take('walls', option([{}]))).toBeUndefined();
});

test('the effective R lies between that of the two ways', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 80, noNaN: true }),
      fc.double({ min: 1, max: 20, noNaN: true }),
      fc.integer({ min: 0, max: 100 }),
      (r, inches, percent) => {
        const framing = { ...wall.framing, share: { amount: percent, scale: 2 } };
        const [result] = assembliesOf({ assemblies: [{ ...wall, framing }] }, batt(r, inches), [
          { id: 'north', over: 'walls' },
        ]);
        if (!result) throw new Error('there is an assembly');
        const ways = [result.cavity.r, result.framing.r];
        expect(result.effective).toBeGreaterThanOrEqual(Math.min(...ways) - 1e-9);
        expect(result.effective).toBeLessThanOrEqual(Math.max(...ways) + 1e-9);
      },
    ),
  );
});

/** An option by its layers, with the R and the thickness that it claims. */
const layered = (
  claims: { readonly r: number; readonly inches: number; readonly continuous?: number },
  layers: readonly InsulationLayer[],
) => ({
  ...option([{}], {
    ...batt(claims.r, claims.inches).attributes,
    ...(claims.continuous !== undefined && {
      'continuous-r': { text: '', value: { kind: 'number' as const, number: claims.continuous } },
    }),
  }),
  layers,
});

const foam = (inches: number, rPerInch: number, where: InsulationLayer['where'] = 'cavity'): InsulationLayer => ({
  what: 'Foam',
  where,
  thickness: fromInches(inches),
  rPerInch,
});

describe('layers of an option', () => {
  test('framing takes its share from the cavity, and nothing from foam outside it', () => {
    // Cavity: 2" × 6.5 + 15 = 28; foam outside 2" × 5 = 10 over both ways; films and boards 2.
    // Way of the insulation 2 + 10 + 28 = 40; of the framing 2 + 10 + 5.5 × 1.25 = 18.875.
    // U = .75 / 40 + .25 / 18.875 = 0.01875 + 0.0132450 = 0.0319950.
    const [films] = wall.layers;
    const chosen = layered({ r: 28, inches: 5.5, continuous: 10 }, [
      foam(2, 5, 'continuous'),
      foam(2, 6.5),
      { what: 'Batt', where: 'cavity', r: 15, thickness: fromInches(3.5) },
    ]);
    const [result] = assembliesOf({ assemblies: [{ ...wall, layers: films ? [films] : [] }] }, chosen, [
      { id: 'north', over: 'walls' },
    ]);
    expect([result?.cavity.r, result?.framing.r]).toEqual([40, 18.875]);
    expect(result?.transmittance).toBeCloseTo(0.031995, 6);
    expect(result?.layers.map(({ what, r }) => [what, r])).toEqual([
      ['Foam', 10],
      ['Films and boards', 2],
    ]);
    expect(layerMismatches(chosen)).toEqual([]);
  });

  test('an R that they do not give is told with both figures', () => {
    // 11 1/4" × 5.4 = 60.75.
    expect(layerMismatches(layered({ r: 49, inches: 11.25 }, [foam(11.25, 5.4)]))).toEqual([
      { attribute: 'r-value', typed: 'R-49', given: 'R-60.8', why: 'Foam R-60.8' },
    ]);
    const oneLayer = option([{}], {
      ...batt(49, 11.25).attributes,
      'r-per-inch': { text: '5.4', value: { kind: 'number', number: 5.4 } },
    });
    expect(layerMismatches(oneLayer)).toEqual([
      { attribute: 'r-value', typed: 'R-49', given: 'R-60.8', why: `11 1/4" at R-5.4 for an inch` },
    ]);
  });

  test('what the framing interrupts is not continuous', () => {
    const claims = { r: 10, inches: 2, continuous: 10 };
    expect(layerMismatches(layered(claims, [foam(2, 5)])).map(({ attribute }) => attribute)).toEqual(['continuous-r']);
    expect(
      layerMismatches(layered(claims, [foam(2, 5, 'continuous')])).map(({ attribute, given }) => [attribute, given]),
    ).toEqual([['r-value', 'R-0']]);
  });

  test('a label is rounded to a whole R: half of one is no mismatch, more is', () => {
    // 5 1/2" × 3.8 = 20.9; 5" × 4.3 = 21.5; 5" × 4.31 = 21.55.
    const of = (r: number, inches: number, each: number) =>
      layerMismatches(layered({ r, inches }, [foam(inches, each)])).length;
    expect([of(21, 5.5, 3.8), of(21, 5, 4.3), of(21, 5, 4.31)]).toEqual([0, 0, 1]);
  });

  test('thicker together than the cavity is told', () => {
    const thick = layered({ r: 28, inches: 5 }, [
      foam(2, 6.5),
      { what: 'Batt', where: 'cavity', r: 15, thickness: fromInches(3.5) },
    ]);
    expect(layerMismatches(thick)).toEqual([
      { attribute: 'thickness-in-place', typed: '5"', given: '5 1/2"', why: '2" + 3 1/2"' },
    ]);
  });
});
