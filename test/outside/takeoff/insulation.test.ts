import { expect } from 'vitest';
import { layerResistance, resistanceInSeries, transmittance } from '../../../src/core/takeoff/arithmetic/index.js';
import { fromInches } from '../../../src/base/units/index.js';
import type { Assembly, Option } from '../../../src/core/model/index.js';
import { layerMismatches } from '../../../src/core/takeoff/index.js';
import { assembliesOf } from '../../../src/core/takeoff/assembly.js';
import { option } from '../../takeoff/room.js';
import { published } from '../published.js';
import { demoCategory } from './demo.js';

/** Roofs insulated above the deck; air films outside 0.17, inside (heat up) 0.61. */
const roofs =
  'ASHRAE 90.1 Appendix A, Table A2.2, https://up.codes/viewer/minnesota/mn-energy-code-2015/chapter/Normative_Appendix_A';
const films = [0.17, 0.61];
const printed = { 0: 1.282, 1: 0.562, 2: 0.36, 3: 0.265, 4: 0.209, 5: 0.173, 6: 0.147, 7: 0.129 };
for (const [insulation, u] of Object.entries(printed)) {
  published({ what: `R-${insulation} and air films: U ${u.toFixed(3)}`, source: roofs, mark: 'S' }, () => {
    const layers = [...films, Number(insulation)];
    expect((1 / resistanceInSeries(layers)).toFixed(3)).toBe(u.toFixed(3));
    expect(transmittance([{ share: 1, layers }]).toFixed(3)).toBe(u.toFixed(3));
  });
}

const walls = 'ASHRAE 90.1 section A3.4 and Table A3.4';
/** Air film, stucco, two boards of gypsum, air film. */
const rest = [0.17, 0.08, 0.56, 0.56, 0.68];

published(
  {
    what: '2x4 at 16", R-13 between, a quarter framing: U 0.089, not the 0.066 of the cavity',
    source: walls,
    mark: 'M',
  },
  () => {
    const cavity = { share: 0.75, layers: [...rest, 13] };
    const framing = { share: 0.25, layers: [...rest, 4.38] };
    expect(transmittance([cavity, framing]).toFixed(4)).toBe('0.0887');
    expect(transmittance([{ ...cavity, share: 1 }]).toFixed(3)).toBe('0.066');
  },
);

const wood = 'ASHRAE; Wood Handbook chapter 4';
for (const [name, depth, r] of [
  ['2x4', 3.5, 4.38],
  ['2x6', 5.5, 6.88],
] as const) {
  published({ what: `${name} of softwood at 1.25 for an inch: R-${r}`, source: wood, mark: 'M' }, () => {
    expect(Math.abs(layerResistance(fromInches(depth), 1.25) - r)).toBeLessThanOrEqual(0.005 + 1e-12);
  });
}

published(
  {
    what: "the demo's wall record has the framing of the table: a quarter, at 1.25 for an inch, and its outside film",
    source: walls,
    mark: 'M',
  },
  async () => {
    const [wall] = (await demoCategory('insulation')).assemblies ?? [];
    expect([wall?.framing.share, wall?.framing.rPerInch, wall?.layers[0]?.r]).toEqual([
      { amount: 25, scale: 2 },
      1.25,
      0.17,
    ]);
  },
);

published(
  {
    what: 'the table reproduced through the take-off: 2x4 at 16", R-13, U 0.089',
    source: walls,
    mark: 'M',
  },
  () => {
    const attributes = {
      'r-value': { text: '13', value: { kind: 'number', number: 13 } },
      'thickness-in-place': { text: '3 1/2"', value: { kind: 'length', length: fromInches(3.5) } },
    } as const;
    const assembly: Assembly = {
      name: 'Wall',
      over: 'walls',
      framing: { what: '2x4', share: { amount: 25, scale: 2 }, rPerInch: 1.25, source: walls },
      layers: rest.map((r) => ({ what: '', r, source: walls })),
    };
    const [result] = assembliesOf({ assemblies: [assembly] }, option([{}], attributes), [{ id: 'n', over: 'walls' }]);
    expect(result?.transmittance.toFixed(3)).toBe('0.089');
    expect(result?.effective.toFixed(1)).toBe('11.3');
  },
);

const frameWall = 'ASHRAE Handbook of Fundamentals 2005, chapter 25, example of the wood frame wall, parallel path';

published(
  {
    what: 'siding, R-4 foam outside the studs, R-13 between them, a quarter framing: 19.11 and 10.49, U 0.063',
    source: frameWall,
    mark: 'M',
  },
  () => {
    const chosen: Option = {
      ...option([{}], {
        'r-value': { text: '13', value: { kind: 'number', number: 13 } },
        'continuous-r': { text: '4', value: { kind: 'number', number: 4 } },
        'thickness-in-place': { text: '3 1/2"', value: { kind: 'length', length: fromInches(3.5) } },
      }),
      layers: [
        { what: 'Foam sheathing', where: 'continuous', r: 4, thickness: fromInches(1) },
        { what: 'Batt', where: 'cavity', r: 13, thickness: fromInches(3.5) },
      ],
    };
    const around = { air: 0.17, siding: 0.81, gypsum: 0.45, still: 0.68 };
    const assembly: Assembly = {
      name: 'Wall',
      over: 'walls',
      // The example has R-4.38 for the stud, 3 1/2" at 1.25.
      framing: { what: '2x4', share: { amount: 25, scale: 2 }, rPerInch: 1.25, source: frameWall },
      layers: Object.entries(around).map(([what, r]) => ({ what, r, source: frameWall })),
    };
    const [result] = assembliesOf({ assemblies: [assembly] }, chosen, [{ id: 'n', over: 'walls' }]);
    expect(result?.cavity.r.toFixed(2)).toBe('19.11');
    expect(Math.abs((result?.framing.r ?? 0) - 10.49)).toBeLessThanOrEqual(0.005 + 1e-12);
    expect(result?.transmittance.toFixed(3)).toBe('0.063');
    expect(layerMismatches(chosen)).toEqual([]);
  },
);
