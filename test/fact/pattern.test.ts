import { describe, expect, it } from 'vitest';
import { patternFacts } from '../../src/core/fact/index.js';
import { len, option } from '../caution/house.js';
import { demoHouse } from '../demo-house.js';

describe('the pattern that pieces make', () => {
  it.each([
    ['stack', 'stack'],
    ['running half', 'half'],
    ['running third', 'third'],
  ])('tile laid %s', (bond, read) => {
    expect(patternFacts(option({ length: '24"', width: '12"', bond, turn: 45 }))).toEqual({
      size: [len('24"'), len('12"')],
      bond: read,
      turn: 45,
    });
  });

  it('stone by the heights of its courses', () => {
    expect(patternFacts(option({ 'course-heights': ['2"', '6"'] }))).toEqual({ courses: [len('2"'), len('6"')] });
  });

  it('says nothing of what is not recorded, or is no pattern', () => {
    expect(patternFacts(undefined)).toEqual({});
    expect(patternFacts(option({ length: '24"', bond: 'as it comes', turn: 30 }))).toEqual({});
  });

  it('is recorded for all tile and stone of the demo; a hexagon has no bond', async () => {
    const { records } = await demoHouse();
    const of = (category: string) =>
      records.options.filter((one) => one.category === category).map((one) => [one.slug, patternFacts(one)] as const);
    expect(
      of('tile')
        .filter(([, { size, bond }]) => !size || !bond)
        .map(([slug]) => slug),
    ).toEqual(['hex-porcelain-2in']);
    expect(of('stone-facing').filter(([, { courses }]) => !courses)).toEqual([]);
  });
});
