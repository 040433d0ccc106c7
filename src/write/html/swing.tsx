import type { VNode } from 'preact';
import type { Cell } from '../../sheet/index.js';

const leaf = { single: 24, half: 12 } as const;

/** A door as on a plan: the wall across, the room that records it below, each leaf open at a right angle and its sweep. */
export function Swing({ of: { leaves, hinge, into } }: { of: Extract<Cell, { is: 'swing' }> }): VNode {
  const isDown = into !== 'far';
  const wall = isDown ? 4 : 30;
  const paths =
    leaves === 'pair'
      ? [leafPath(8, leaf.half, true, wall, isDown), leafPath(32, leaf.half, false, wall, isDown)]
      : [leafPath(hinge === 'right' ? 32 : 8, leaf.single, hinge !== 'right', wall, isDown)];
  return (
    <svg class="door-symbol" viewBox="0 0 40 34" width="40" height="34" aria-hidden="true" focusable="false">
      <path class="door-wall" d={`M0 ${wall}H8M32 ${wall}H40`} />
      <path class="door-leaf" d={paths.join('')} />
    </svg>
  );
}

/** From the hinge along the open leaf to its tip, then its sweep back to the frame. */
function leafPath(hingeAt: number, size: number, isLeft: boolean, wall: number, isDown: boolean): string {
  const tip = isDown ? wall + size : wall - size;
  const latch = isLeft ? hingeAt + size : hingeAt - size;
  const clockwise = isLeft === isDown ? 0 : 1;
  return `M${hingeAt} ${wall}V${tip}A${size} ${size} 0 0 ${clockwise} ${latch} ${wall}`;
}
