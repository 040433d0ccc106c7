import { describe, expect, test } from 'vitest';
import { parseUsage } from '../../src/base/units/index.js';

describe('what is used with what', () => {
  test.each([
    ['5 gal / 1,000 sq ft', { amount: 5, unit: 'gal', per: 1000, of: 'sq ft' }],
    ['380 lf per 1000 sf', { amount: 380, unit: 'lin ft', per: 1000, of: 'sq ft' }],
    ['1 each / lin ft', { amount: 1, unit: 'each', per: 1, of: 'lin ft' }],
    ['0.5 fl oz/each', { amount: 0.5, unit: 'fl oz', per: 1, of: 'each' }],
    ['110 lb / cu ft', { amount: 110, unit: 'lb', per: 1, of: 'cu ft' }],
  ])('%s', (text, usage) => {
    expect(parseUsage(text)).toEqual({ ok: true, value: usage });
  });

  test.each([
    '5 gal',
    '5 / 1,000 sq ft',
    'gal / sq ft',
    '5 gal / 1,000',
    '5 gal / yard',
    '0 gal / sq ft',
    '5 gal / 0 sq ft',
  ])('%s is not read', (text) => {
    expect(parseUsage(text).ok).toBe(false);
  });
});
