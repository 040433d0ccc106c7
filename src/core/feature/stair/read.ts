import type { Bearing } from '../../model/index.js';
import type { Length } from '../../../base/units/index.js';
import { lengthField, numberField, textField, type Raw } from '../field.js';

export type StairSide = 'left' | 'right';

export interface Stair {
  /** Floor to floor. */
  readonly rise: Length;
  readonly risers: number;
  readonly going: Length;
  readonly width: Length;
  /** Guards along the slope, on newels. */
  readonly rails: number;
  /** The side of the one guard, as one goes up; absent: the side without a wall, if one of the two has none. */
  readonly railSide?: StairSide;
  /** Rails held to a wall by brackets. */
  readonly handrails: number;
  readonly x: Length;
  readonly y: Length;
  /** The way up. */
  readonly go: Bearing;
  /** Slug of the room that it arrives in, where it is recorded. */
  readonly to?: string;
}

export function read(raw: Raw): Stair {
  const [to, side] = [textField(raw, 'to'), textField(raw, 'rail-side')];
  return {
    rise: lengthField(raw, 'rise'),
    risers: numberField(raw, 'risers', 2),
    going: lengthField(raw, 'going'),
    width: lengthField(raw, 'width'),
    rails: numberField(raw, 'rails', 1),
    ...(side !== '' && { railSide: side === 'left' ? 'left' : 'right' }),
    handrails: numberField(raw, 'handrails', 0),
    x: lengthField(raw, 'x'),
    y: lengthField(raw, 'y'),
    go: textField(raw, 'go') as Bearing,
    ...(to !== '' && { to }),
  };
}
