import { describe, expect, test } from 'vitest';
import type { Caution, RoomView } from '../../src/core/caution/index.js';
import type { Option } from '../../src/core/model/index.js';
import { category, feature, measuredBy, option, room, seenBy, selection } from './house.js';

const facing = category(['kind', 'setting', 'bed', 'mortar-weight', 'lath-weight'], {
  slug: 'stone',
  trade: 'masonry',
  ...measuredBy('stone'),
});

function stone(
  rule: string,
  kind: string,
  of: Partial<Option> & { readonly bed?: string; readonly mortar?: number | null; readonly lath?: number },
  bearsOn?: string,
  use?: RoomView['use'],
): readonly Caution[] {
  const { bed, mortar = 0, lath, ...more } = of;
  const setting = {
    ...(mortar !== null && { 'mortar-weight': mortar }),
    ...(lath !== undefined && { 'lath-weight': lath }),
  };
  const chosen = option({ kind, ...setting, ...(bed !== undefined && { bed }) }, more);
  const breast = feature('chimney-breast', 'breast', { ...(bearsOn !== undefined && { bearsOn }) });
  const selections = [selection(['breast'], facing, chosen)];
  return seenBy(rule, room({ selections, measure: { features: [breast] }, ...(use && { use }) }));
}

const weighs = (pounds: number): Partial<Option> => ({ weight: { pounds, per: 'sq ft' } });

describe('adhered stone', () => {
  test.each([
    [13, 5.4, 1.5, 0],
    [13, 5.5, 1.5, 0],
    [13, 5.6, 1.5, 1],
    [20, 0, 0, 0],
    [20.1, 0, 0, 1],
    // A sum of floats that comes out a hair over the limit.
    [12.1, 5.9, 2, 0],
  ])('of %d lb on a square foot with %d of mortar and %d of lath: %i', (pounds, mortar, lath, count) => {
    expect(stone('adhered-facing', 'thin natural', { ...weighs(pounds), mortar, lath, bed: '1"' })).toHaveLength(count);
  });

  test('over the limit by its mortar alone says what weighs what', () => {
    const [caution] = stone('adhered-facing', 'thin natural', { ...weighs(14), mortar: 7, lath: 3, bed: '1"' });
    const words = '24 lb on a square foot (14 of stone, 7 of mortar and 3 of lath and scratch coat)';
    expect(caution?.seen).toBe(`The option: ${words}.`);
  });

  test('whose mortar is not recorded is asked about, however light, as stone alone', () => {
    const [caution] = stone('adhered-facing', 'thin natural', { ...weighs(10), mortar: null, bed: '1"' });
    expect(caution?.seen).toContain('10 lb on a square foot, the stone alone: what its mortar weighs is not recorded');
  });

  test.each([
    [14.9, 0],
    [15, 0],
    [15.1, 1],
  ])('outside has a limit of its own, of the stone alone: %d lb: %i', (pounds, count) => {
    const thin = { ...weighs(pounds), mortar: 9, bed: '1"' };
    expect(stone('adhered-facing-outside', 'thin natural', thin, undefined, 'porch')).toHaveLength(count);
    expect(stone('adhered-facing', 'thin natural', thin, undefined, 'porch')).toHaveLength(0);
    expect(stone('adhered-facing-outside', 'thin natural', thin)).toHaveLength(0);
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
    [44, 6, 0],
    [44, 6.1, 1],
  ])('of %d lb with %d of mortar: %i', (pounds, mortar, count) => {
    expect(stone('full-bed-support', 'full bed', { ...weighs(pounds), mortar, bed: '4"' }, 'concrete')).toHaveLength(
      count,
    );
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
