import type { Length } from '../../../base/units/index.js';
import { lengthField, type Raw } from '../field.js';

export interface WetPlace {
  readonly x: Length;
  readonly y: Length;
  /** East-west, then north-south extent. */
  readonly width: Length;
  readonly depth: Length;
}

export function read(raw: Raw): WetPlace {
  return {
    x: lengthField(raw, 'x'),
    y: lengthField(raw, 'y'),
    width: lengthField(raw, 'width'),
    depth: lengthField(raw, 'depth'),
  };
}
