import type { Length } from '../../../base/units/index.js';
import { lengthField, textField, type Raw } from '../field.js';

export interface Soffit {
  readonly wall: string;
  readonly at: Length;
  readonly length: Length;
  readonly depth: Length;
  readonly drop: Length;
}

export function read(raw: Raw): Soffit {
  return {
    wall: textField(raw, 'wall'),
    at: lengthField(raw, 'at'),
    length: lengthField(raw, 'length'),
    depth: lengthField(raw, 'depth'),
    drop: lengthField(raw, 'drop'),
  };
}
