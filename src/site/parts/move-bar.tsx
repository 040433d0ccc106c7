import type { VNode } from 'preact';
import { numberText } from '../../base/svg/index.js';

/** From where to where a total may move, about a tick at nothing, on a scale that ends at `most` on both sides. In cents; the figures stand
 *  beside it. */
export function MoveBar({ low, high, most }: { low: number; high: number; most: number }): VNode {
  const x = (cents: number): number => 50 + (most === 0 ? 0 : (49 * cents) / most);
  const percent = (at: number): string => `${numberText(at, 2)}%`;
  const [from, to] = [x(low), x(high)];
  return (
    <svg class="move-bar" width="100%" height="18" aria-hidden="true" focusable="false">
      <path class="move-axis" d="M0 11H2000" />
      <rect class="move-span" x={percent(from)} y="6.500" width={percent(to - from)} height="9" />
      <line class="move-end" x1={percent(from)} x2={percent(from)} y1="3.500" y2="17" />
      <line class="move-end" x1={percent(to)} x2={percent(to)} y1="3.500" y2="17" />
      <line class="move-zero" x1="50%" x2="50%" y1="0" y2="17" />
    </svg>
  );
}
