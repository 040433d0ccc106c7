import type { Length } from '../../../base/units/index.js';
import { lengthField, textField, type Raw } from '../field.js';

export interface DropEdge {
  readonly wall: string;
  readonly at: Length;
  readonly run: Length;
  readonly drop: Length;
}

export function read(raw: Raw): DropEdge {
  return {
    wall: textField(raw, 'wall'),
    at: lengthField(raw, 'at'),
    run: lengthField(raw, 'run'),
    drop: lengthField(raw, 'drop'),
  };
}
