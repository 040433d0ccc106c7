import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Assembly } from '../../src/core/model/index.js';
import { resolvePlaces, takeOff } from '../../src/core/takeoff/index.js';
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
