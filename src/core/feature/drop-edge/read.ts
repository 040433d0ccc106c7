import type { Length } from '../../../base/units/index.js';
import { lengthField, optionalLength, textField, type Raw } from '../field.js';

/** Along an open side of the room, or along a side of a hole in its floor. */
export interface DropEdge {
  readonly wall?: string;
  readonly void?: string;
  readonly side?: string;
  readonly at: Length;
  /** Absent: to the end of the side. */
  readonly run?: Length;
  readonly drop: Length;
}

/** From where to where along its side an edge runs. */
export function edgeStretch({ at, run }: DropEdge, side: Length): { readonly from: Length; readonly to: Length } {
  return { from: at, to: run === undefined ? side : ((at + run) as Length) };
}

export function read(raw: Raw): DropEdge {
  const [wall, hole, side] = [textField(raw, 'wall'), textField(raw, 'void'), textField(raw, 'side')];
  const run = optionalLength(raw, 'run');
  return {
    ...(wall !== '' && { wall }),
    ...(hole !== '' && { void: hole }),
    ...(side !== '' && { side }),
    at: lengthField(raw, 'at'),
    ...(run !== undefined && { run }),
    drop: lengthField(raw, 'drop'),
  };
}
