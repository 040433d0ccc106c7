import type { Length } from '../../../base/units/index.js';
import { lengthField, textField, type Raw } from '../field.js';

export interface Skylight {
  /** Lower left corner in plan, from the south-west corner of the room. */
  readonly x: Length;
  readonly y: Length;
  /** Clear, along the level and up the slope. */
  readonly width: Length;
  readonly length: Length;
  /** Of the shaft, square to the ceiling. */
  readonly depth: Length;
  /** How its upper and lower sides go. */
  readonly head: 'square' | 'level' | 'plumb';
  readonly foot: 'square' | 'plumb';
}

export function read(raw: Raw): Skylight {
  const [head, foot] = [textField(raw, 'head'), textField(raw, 'foot')];
  return {
    x: lengthField(raw, 'x'),
    y: lengthField(raw, 'y'),
    width: lengthField(raw, 'width'),
    length: lengthField(raw, 'length'),
    depth: lengthField(raw, 'depth'),
    head: head === 'level' || head === 'plumb' ? head : 'square',
    foot: foot === 'plumb' ? foot : 'square',
  };
}
