import { headings } from '../../../src/base/geometry/index.js';
import { expect } from 'vitest';
import { feet } from '../../../src/base/units/index.js';
import { measured, wall } from '../../measure/measured.js';
import { len, pitch, size } from '../../measure/room-record.js';
import { published } from '../published.js';

/** Slope length in feet of a shed ceiling over a run, as unfolded for the layout of boards. */
function slopeLength(run: string, slope: string): number {
  const measure = measured({
    shape: size(run, `10'`),
    ceiling: { form: 'shed', low: headings.west, plate: len(`8'`), pitch: pitch(slope) },
  });
  const ys = measure.ceiling.facets[0]?.shape.outline.map(({ y }) => feet(y)) ?? [];
  return Math.max(...ys) - Math.min(...ys);
}

const rafters = [
  { slope: '6/12', inches: 13.42 },
  { slope: '7/12', inches: 13.89 },
  { slope: '13/12', inches: 17.69 },
];
for (const { slope, inches } of rafters) {
  published(
    {
      what: `${slope}: ${inches} in. of rafter per foot of run`,
      source: 'NAVEDTRA 14044 fig. 2-17; Army EN5156 sec. 3; Griffith, Carpentry (1916)',
      mark: 'S',
    },
    () => expect(slopeLength(`1'`, slope) * 12).toBeCloseTo(inches, 2),
  );
}

// The handbooks multiply a factor already rounded to 0.01 in. by the run, so they may be off by 0.005 in. for each foot of it.
published(
  {
    what: '7/12 over a span of 16 ft: 9 ft 3-1/8 in.',
    source: 'NAVEDTRA 14044, https://constructionmanuals.tpub.com/14044/ 14044_64.htm',
    mark: 'S',
  },
  () => {
    expect(Math.abs(slopeLength(`8'`, '7/12') * 12 - 111.12)).toBeLessThan(8 * 0.005);
    expect(Math.round(slopeLength(`8'`, '7/12') * 12 * 8) / 8).toBe(9 * 12 + 3.125);
  },
);

published(
  { what: '13/12 over a run of 10 ft 4 in.: 182.79 in., 15 ft 3 in.', source: 'Army EN0069A / EN5156', mark: 'S' },
  () => {
    expect(Math.abs(slopeLength(`10'-4"`, '13/12') * 12 - 182.79)).toBeLessThan((10 + 4 / 12) * 0.005);
  },
);

published(
  { what: '6/12 over a span of 25 ft: 167.75 in., 13.98 ft', source: 'Griffith, Carpentry (1916)', mark: 'S' },
  () => {
    expect(Math.abs(slopeLength(`12'-6"`, '6/12') * 12 - 167.75)).toBeLessThan(12.5 * 0.005);
    expect(slopeLength(`12'-6"`, '6/12')).toBeCloseTo(13.98, 2);
  },
);

const factors: [string, number, 'S' | 'C'][] = [
  ['3/12', 1.031, 'C'],
  ['4/12', 1.0541, 'S'],
  ['5/12', 1.083, 'C'],
  ['6/12', 1.118, 'S'],
  ['7/12', 1.158, 'C'],
  ['8/12', 1.202, 'C'],
  ['9/12', 1.25, 'S'],
  ['10/12', 1.302, 'C'],
  ['12/12', 1.414, 'C'],
];
for (const [slope, factor, mark] of factors) {
  published(
    {
      what: `${slope}: sloped area is ${factor} times the plan`,
      source: 'roof slope factor tables; sqrt(rise² + 144) / 12',
      mark,
    },
    () => {
      const { ceiling } = measured({
        shape: size(`20'`, `12'`),
        ceiling: { form: 'gable', ridge: headings.east, plate: len(`8'`), pitch: pitch(slope) },
      });
      expect(Math.abs(ceiling.net / ceiling.planArea - factor)).toBeLessThan(0.0005);
    },
  );
}

const model = 'FZK-Haus, a public IFC sample building, 30° roof: facts read from the model';

published({ what: '30° slope over 11.4 x 4.7 m: 61.868855 m²', source: model, mark: 'S' }, () => {
  const slope = { rise: Math.tan(Math.PI / 6), run: 1 };
  const { ceiling } = measured({
    shape: size('11.4 m', '4.7 m'),
    ceiling: { form: 'shed', low: headings.south, plate: len('2.5 m'), pitch: slope },
  });
  expect(ceiling.net * 0.09290304).toBeCloseTo(61.868855, 5);
});

published({ what: 'gable wall = w × (h1 + (h2 − h1) / 2)', source: model, mark: 'C' }, () => {
  // 18' wide, 9' to the plate, 16'-6" to the ridge: 18 × (9 + 7.5 / 2)
  const ceiling = { form: 'gable', ridge: headings.east, plate: len(`9'`), ridgeHeight: len(`16'-6"`) } as const;
  const measure = measured({ shape: size(`24'`, `18'`), ceiling });
  expect(wall(measure, 'east').gross).toBeCloseTo(229.5, 9);
  expect(wall(measure, 'west').gross).toBeCloseTo(229.5, 9);
});
