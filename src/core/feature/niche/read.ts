import type { Length } from '../../../base/units/index.js';
import { lengthField, textField, type Raw } from '../field.js';

export interface Niche {
  readonly wall: string;
  readonly at: Length;
  readonly width: Length;
  readonly height: Length;
  readonly sill: Length;
  readonly depth: Length;
}

export function read(raw: Raw): Niche {
  return {
    wall: textField(raw, 'wall'),
    at: lengthField(raw, 'at'),
    width: lengthField(raw, 'width'),
    height: lengthField(raw, 'height'),
    sill: lengthField(raw, 'sill'),
    depth: lengthField(raw, 'depth'),
  };
}
