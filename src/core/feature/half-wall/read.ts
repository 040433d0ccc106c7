import type { Bearing } from '../../model/index.js';
import type { Length } from '../../../base/units/index.js';
import { lengthField, textField, type Raw } from '../field.js';

export interface HalfWall {
  readonly x: Length;
  readonly y: Length;
  readonly go: Bearing;
  readonly run: Length;
  readonly height: Length;
  readonly thickness: Length;
}

export function read(raw: Raw): HalfWall {
  return {
    x: lengthField(raw, 'x'),
    y: lengthField(raw, 'y'),
    go: textField(raw, 'go') as Bearing,
    run: lengthField(raw, 'run'),
    height: lengthField(raw, 'height'),
    thickness: lengthField(raw, 'thickness'),
  };
}
