import { fromFeet } from '../../../../src/base/units/index.js';
import type { CeilingForm, Shape, WallArc, WallLean } from '../../../../src/core/model/index.js';
import { recorded, rectangle } from './plan.js';

export const [wide, deep] = [16, 12];
export const names = ['north', 'east', 'south', 'west'];
export const flat = (height: number): CeilingForm => ({ form: 'flat', height: fromFeet(height) });

/** A plain room whose outline is written clockwise or counter-clockwise. */
export function plain(
  isClockwise: boolean,
  more: (name: string) => { readonly arc?: WallArc; readonly leans?: WallLean },
): Shape {
  const clockwise = [...rectangle(0, 0, wide, deep)].reverse();
  const corners = clockwise.map((at, index) => ({ at: recorded(at), wall: names[index] ?? '' }));
  // The other way round each wall begins where it ended.
  const other = [...corners].reverse().map(({ at }, index) => ({ at, wall: names[(6 - index) % 4] ?? '' }));
  return {
    by: 'outline',
    corners: (isClockwise ? corners : other).map((corner) => ({ ...corner, ...more(corner.wall) })),
  };
}
