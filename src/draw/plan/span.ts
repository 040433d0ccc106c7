import type { RoomMeasure } from '../../core/model/index.js';

/** How far a room reaches on plan to its inside faces, in nanometres: walls and dimensions stand around that. */
export function planSpan({ plan }: RoomMeasure): { readonly width: number; readonly height: number } {
  const xs = plan.map(({ x }) => x);
  const ys = plan.map(({ y }) => y);
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
}
