import type { Bearing } from '../../model/index.js';
import type { Length } from '../../../base/units/index.js';
import { lengthField, numberField, textField, type Raw } from '../field.js';

export interface Stair {
  /** Floor to floor. */
  readonly rise: Length;
  readonly risers: number;
  readonly going: Length;
  readonly width: Length;
  readonly rails: number;
  readonly x: Length;
  readonly y: Length;
  /** The way up. */
  readonly go: Bearing;
  /** Slug of the room that it arrives in, where it is recorded. */
  readonly to?: string;
}

export function read(raw: Raw): Stair {
  const to = textField(raw, 'to');
  return {
    rise: lengthField(raw, 'rise'),
    risers: numberField(raw, 'risers', 2),
    going: lengthField(raw, 'going'),
    width: lengthField(raw, 'width'),
    rails: numberField(raw, 'rails', 1),
    x: lengthField(raw, 'x'),
    y: lengthField(raw, 'y'),
    go: textField(raw, 'go') as Bearing,
    ...(to !== '' && { to }),
  };
}
