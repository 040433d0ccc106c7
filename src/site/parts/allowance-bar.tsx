import type { VNode } from 'preact';
import type { LedgerEntry } from '../../core/price/index.js';
import { numberText } from '../../base/svg/index.js';
import { printMoney } from '../../base/units/index.js';

/** An allowance as a bar: solid is drawn, hatched is what is open (cheapest dark, dearest light), the tick is the
 *  amount. What runs past the tick is over. The figures stand beside it. */
export function AllowanceBar({ entry }: { entry: LedgerEntry }): VNode {
  const dearest = entry.committed + entry.openHigh;
  const full = Math.max(entry.amount, dearest, 1) * 1.02;
  const share = (cents: number): string => `${numberText((100 * cents) / full, 2)}%`;
  const over = Math.max(0, entry.committed - entry.amount);
  const label =
    `${printMoney(entry.committed)} of ${printMoney(entry.amount)} drawn` +
    (entry.openHigh > 0 ? `, ${printMoney(entry.openLow)} to ${printMoney(entry.openHigh)} still open` : '');
  const hatch = `hatch-${entry.id}`;
  return (
    <svg class="allowance-bar" role="img" aria-label={label} width="100%" height="22">
      <defs>
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V6" class="hatch-line" />
        </pattern>
      </defs>
      <rect class="bar-track" x="0" y="6" width={share(entry.amount)} height="10" />
      {entry.openHigh > 0 && (
        <rect class="bar-high" x={share(entry.committed)} y="6" width={share(entry.openHigh)} height="10" />
      )}
      {entry.openLow > 0 && (
        <rect fill={`url(#${hatch})`} x={share(entry.committed)} y="6" width={share(entry.openLow)} height="10" />
      )}
      <rect class="bar-committed" x="0" y="6" width={share(entry.committed - over)} height="10" />
      {over > 0 && <rect class="bar-over" x={share(entry.amount)} y="3" width={share(over)} height="16" />}
      <line class="bar-amount" x1={share(entry.amount)} x2={share(entry.amount)} y1="0" y2="22" />
    </svg>
  );
}
