import type { Length } from '../../../base/units/index.js';
import { lengthField, numberField, textField, type Raw } from '../field.js';

export interface Timber {
  readonly count: number;
  readonly length: Length;
  /** Dressed section, the smaller side first by custom. */
  readonly width: Length;
  readonly depth: Length;
  /** Sides that are seen: of a beam under a ceiling three. */
  readonly sides: 3 | 4;
  readonly species?: string;
  /** Pounds for each cubic foot. */
  readonly density?: number;
}

export function read(raw: Raw): Timber {
  const species = textField(raw, 'species');
  const density = Number.parseFloat(textField(raw, 'density'));
  return {
    count: numberField(raw, 'count', 0),
    length: lengthField(raw, 'length'),
    width: lengthField(raw, 'width'),
    depth: lengthField(raw, 'depth'),
    sides: numberField(raw, 'sides', 4) === 3 ? 3 : 4,
    ...(species === '' ? {} : { species }),
    ...(Number.isNaN(density) ? {} : { density }),
  };
}
