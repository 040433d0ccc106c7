import { isMetric } from './locale.js';
import { unitName } from './metric.js';
import type { Unit } from './quantity.js';

/** A unit as people write it: what the program counts in, and how many of that it is. */
interface WrittenUnit {
  readonly unit: Unit;
  /** 10⁸ or 10⁴ over this many: square metres and metres are whole numbers of these, exactly. Absent: one. Source: 1 ft = 0.3048 m, NIST
   *  SP 811 B.8. */
  readonly metric?: { readonly over: number; readonly scale: number };
}

const squareFeet: WrittenUnit = { unit: 'sq ft' };
const feet: WrittenUnit = { unit: 'lin ft' };
const squareMetres: WrittenUnit = { unit: 'sq ft', metric: { over: 9_290_304, scale: 8 } };
const metres: WrittenUnit = { unit: 'lin ft', metric: { over: 3048, scale: 4 } };
const each: WrittenUnit = { unit: 'each' };
const lump: WrittenUnit = { unit: 'lump' };

const spellings: Readonly<Record<string, WrittenUnit>> = {
  'sq ft': squareFeet,
  sqft: squareFeet,
  sf: squareFeet,
  ft2: squareFeet,
  'ft²': squareFeet,
  'square feet': squareFeet,
  'square foot': squareFeet,
  'lin ft': feet,
  linft: feet,
  lf: feet,
  'lineal ft': feet,
  'linear ft': feet,
  'linear feet': feet,
  'linear foot': feet,
  'lineal feet': feet,
  'lineal foot': feet,
  'm²': squareMetres,
  m2: squareMetres,
  'sq m': squareMetres,
  sqm: squareMetres,
  'square metre': squareMetres,
  'square meter': squareMetres,
  'square metres': squareMetres,
  'square meters': squareMetres,
  m: metres,
  lm: metres,
  'lin m': metres,
  metre: metres,
  meter: metres,
  metres,
  meters: metres,
  each,
  ea: each,
  lump,
  'lump sum': lump,
};

export function unitChoices(): string {
  const area = isMetric() ? 'm2' : unitName('sq ft');
  return `'${area}', '${unitName('lin ft')}', 'each' or 'lump'`;
}

/** What a word for a unit means, or undefined: `sf`, `sq. ft.` and `ft²` are all `sq ft`. */
export function writtenUnit(text: string): WrittenUnit | undefined {
  const word = text.toLowerCase().replaceAll('.', '').replace(/\s+/gu, ' ').trim();
  return Object.hasOwn(spellings, word) ? spellings[word] : undefined;
}

/** Of an amount that is written in the unit, how many the program counts: 10.76… sq ft for a square metre. */
export function unitsIn({ metric }: WrittenUnit): number {
  return metric ? 10 ** metric.scale / metric.over : 1;
}
