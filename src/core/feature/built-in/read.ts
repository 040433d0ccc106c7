import type { Length } from '../../../base/units/index.js';
import { lengthField, textField, type Raw } from '../field.js';

export interface BuiltIn {
  readonly wall: string;
  readonly at: Length;
  readonly width: Length;
  readonly depth: Length;
  readonly height: Length;
}

export function read(raw: Raw): BuiltIn {
  return {
    wall: textField(raw, 'wall'),
    at: lengthField(raw, 'at'),
    width: lengthField(raw, 'width'),
    depth: lengthField(raw, 'depth'),
    height: lengthField(raw, 'height'),
  };
}
