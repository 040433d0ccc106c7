import type { Unit } from './quantity.js';

const spellings: Readonly<Record<string, Unit>> = {
  'sq ft': 'sq ft',
  sqft: 'sq ft',
  sf: 'sq ft',
  ft2: 'sq ft',
  'ft²': 'sq ft',
  'square feet': 'sq ft',
  'square foot': 'sq ft',
  'lin ft': 'lin ft',
  linft: 'lin ft',
  lf: 'lin ft',
  'lineal ft': 'lin ft',
  'linear ft': 'lin ft',
  'linear feet': 'lin ft',
  'linear foot': 'lin ft',
  'lineal feet': 'lin ft',
  'lineal foot': 'lin ft',
  each: 'each',
  ea: 'each',
  lump: 'lump',
  'lump sum': 'lump',
};

export const unitChoices = "'sq ft', 'lin ft', 'each' or 'lump'";

/** The unit that a word means, or undefined: `sf`, `sq. ft.` and `ft²` are all `sq ft`. */
export function findUnit(text: string): Unit | undefined {
  const word = text.toLowerCase().replaceAll('.', '').replace(/\s+/gu, ' ').trim();
  return Object.hasOwn(spellings, word) ? spellings[word] : undefined;
}
