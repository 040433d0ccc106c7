import { describe, expect, test } from 'vitest';
import type { Caution } from '../../src/core/caution/index.js';
import type { Option } from '../../src/core/model/index.js';
import { category, feature, measuredBy, option, room, seenBy, selection } from './house.js';

const facing = category(['kind', 'setting', 'bed'], { slug: 'stone', trade: 'masonry', ...measuredBy('stone') });

function stone(
  rule: string,
  kind: string,
  of: Partial<Option> & { readonly bed?: string },
  bearsOn?: string,
): readonly Caution[] {
  const { bed, ...more } = of;
  const chosen = option({ kind, ...(bed !== undefined && { bed }) }, more);
  const breast = feature('chimney-breast', 'breast', { ...(bearsOn !== undefined && { bearsOn }) });
  return seenBy(rule, room({ selections: [selection(['breast'], facing, chosen)], measure: { features: [breast] } }));
}

const weighs = (pounds: number): Partial<Option> => ({ weight: { pounds, per: 'sq ft' } });

describe('adhered stone', () => {
  test.each([
    [14.9, 0],
    [15, 0],
    [15.1, 1],
  ])('of %d lb on a square foot: %i', (pounds, count) => {
    expect(stone('adhered-facing', 'thin natural', { ...weighs(pounds), bed: '1"' })).toHaveLength(count);
  });

  test.each([
    ['2 9/16"', 0],
    ['2 5/8"', 0],
    ['2 11/16"', 1],
  ])('%s thick: %i', (bed, count) => {
    expect(stone('adhered-facing', 'cast', { ...weighs(10), bed })).toHaveLength(count);
  });

  test('of unknown weight or thickness is asked about', () => {
    const [caution] = stone('adhered-facing', 'cast', {});
    expect(caution?.seen).toContain('the weight is not recorded');
    expect(caution?.seen).toContain('the thickness is not recorded');
  });

  test('full-bed stone is none of it', () => {
    expect(stone('adhered-facing', 'full bed', { ...weighs(42), bed: '4"' })).toHaveLength(0);
  });
});

describe('full-bed stone', () => {
  test.each([
    ['concrete', 0],
    ['framing', 1],
    [undefined, 1],
  ])('that stands on %s: %i', (bearsOn, count) => {
    expect(stone('full-bed-support', 'full bed', { ...weighs(42), bed: '4"' }, bearsOn)).toHaveLength(count);
  });

  test.each([
    [49.9, 0],
    [50, 0],
    [50.1, 1],
  ])('of %d lb on a square foot: %i', (pounds, count) => {
    expect(stone('full-bed-support', 'full bed', { ...weighs(pounds), bed: '4"' }, 'concrete')).toHaveLength(count);
  });

  test.each([
    ['4 15/16"', 0],
    ['5"', 0],
    ['5 1/16"', 1],
  ])('%s thick: %i', (bed, count) => {
    expect(stone('full-bed-support', 'full bed', { ...weighs(42), bed }, 'concrete')).toHaveLength(count);
  });

  test('on a wall, where nothing says what carries it, is asked about', () => {
    const chosen = option({ kind: 'full bed', bed: '4"' }, weighs(42));
    const [caution] = seenBy('full-bed-support', room({ selections: [selection(['north'], facing, chosen)] }));
    expect(caution?.seen).toContain('what it stands on is not recorded');
  });

  test('says what it weighs in place', () => {
    const chosen = option({ kind: 'full bed', bed: '4"' }, weighs(42));
    const placed = selection(['north'], facing, chosen, { pounds: 6400.4 });
    expect(seenBy('full-bed-support', room({ selections: [placed] }))[0]?.seen).toContain('6,400 lb');
  });
});
