import { expect } from 'vitest';
import { countsOf } from '../../../src/core/takeoff/count.js';
import { fromInches, type Area } from '../../../src/base/units/index.js';
import { category, option } from '../../takeoff/room.js';
import { published } from '../published.js';

const estimator =
  'WWPA coverage estimator, rows drop siding and tongue and groove, https://www.edmundallen.com/products/coverage-estimator';

for (const [nominal, face, lineal, board] of [
  ['1x4', 3.125, '3.84', '1.28'],
  ['1x6', 5.125, '2.34', '1.17'],
  ['1x8', 6.875, '1.75', '1.16'],
  ['1x10', 8.875, '1.35', '1.13'],
] as const) {
  published({ what: `${nominal}, face ${face}": factors ${lineal} and ${board}`, source: estimator, mark: 'S' }, () => {
    const boards = option([{}], {
      face: { text: '', value: { kind: 'length', length: fromInches(face) } },
      nominal: { text: nominal, value: { kind: 'text', text: nominal } },
    });
    const area = { net: [1 as Area], times: 1, waste: 0, whole: false };
    const counts = countsOf(category('area', { counted: 'boards' }).measure, boards, area);
    expect(counts.map(({ amount }) => amount.toFixed(2))).toEqual([lineal, board]);
  });
}

published(
  {
    what: '1,000 sq ft of 1x8 with a face of 7": 1,714 lin ft',
    source: 'twincreeksloghomes.com/lumber-conversion-tips',
    mark: 'S',
  },
  () => {
    const boards = option([{}], { face: { text: '', value: { kind: 'length', length: fromInches(7) } } });
    const area = { net: [1000 as Area], times: 1, waste: 0, whole: false };
    const [lineal] = countsOf(category('area', { counted: 'boards' }).measure, boards, area);
    expect(Math.floor(lineal?.amount ?? 0)).toBe(1714);
  },
);
