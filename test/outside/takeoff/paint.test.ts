import { expect } from 'vitest';
import { paintFor } from '../../../src/core/takeoff/arithmetic/index.js';
import type { Area } from '../../../src/base/units/index.js';
import { published } from '../published.js';
import { demoCategory } from './demo.js';

const painters = 'trade texts on painting: 250 sq ft to a gallon on rough walls, 300 or 350 on smooth ones';

for (const [spread, cans] of [
  [250, 8],
  [300, 7],
  [350, 6],
] as const) {
  published(
    { what: `1,000 sq ft in two coats at ${spread} sq ft: ${cans} gallons`, source: painters, mark: 'M' },
    () => {
      expect(paintFor(1000 as Area, 2, spread).cans).toBe(cans);
    },
  );
}

published(
  {
    what: 'the demo leaves openings in and counts gallons by coats',
    source: 'painters of old measure walls as solid',
    mark: 'M',
  },
  async () => {
    const { measure } = await demoCategory('paint');
    expect([measure.openings, measure.counted, measure.timesBy]).toEqual([{ rule: 'none' }, 'gallons', 'coats']);
  },
);
