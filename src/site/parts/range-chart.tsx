import { scaleLinear } from 'd3-scale';
import type { VNode } from 'preact';
import type { Book } from '../../core/book/index.js';
import { numberText } from '../../base/svg/index.js';
import { printMoney, type Cents } from '../../base/units/index.js';

/** Per cent of the width that stay free on each side, for the words. */
const edge = 13;

/** Contract sum, today's total, and where it can still go, on one scale. Places are per cent of the width, so that the
 *  words keep their size on a phone. The text beside the chart says the same. */
export function RangeChart({ money }: { money: Book['money'] }): VNode {
  const { contractSum, today, low, high } = money;
  const values = [contractSum, today, low, high];
  const scale = scaleLinear([Math.min(...values), Math.max(...values)], [edge, 100 - edge]).nice(4);
  const [first = 0, last = 0] = scale.domain();
  const x = (cents: number): string => `${numberText(scale(cents), 2)}%`;
  const label = `Contract ${printMoney(contractSum)}; today ${printMoney(today)}; with what is open between ${printMoney(low)} and ${printMoney(high)}`;
  return (
    <svg class="range" role="img" aria-label={label}>
      <line class="range-axis" x1={x(first)} x2={x(last)} y1="92" y2="92" />
      {scale.ticks(4).map((tick, index) => (
        <g class="range-tick">
          <line x1={x(tick)} x2={x(tick)} y1="92" y2="98" />
          <text class={index % 2 === 0 ? undefined : 'range-minor'} x={x(tick)} y="115" text-anchor="middle">
            {printMoney(tick as Cents)}
          </text>
        </g>
      ))}
      {low !== high && (
        <>
          <line class="range-span" x1={x(low)} x2={x(high)} y1="74" y2="74" />
          <line class="range-open" x1={x(low)} x2={x(low)} y1="67" y2="81" />
          <line class="range-open" x1={x(high)} x2={x(high)} y1="67" y2="81" />
        </>
      )}
      <line class="range-contract" x1={x(contractSum)} x2={x(contractSum)} y1="18" y2="92" />
      <line class="range-today" x1={x(today)} x2={x(today)} y1="38" y2="92" />
      <text class="range-word" x={x(contractSum)} y="12" text-anchor={anchor(scale(contractSum))}>
        Contract
      </text>
      <text class="range-word range-word-today" x={x(today)} y="32" text-anchor={anchor(scale(today))}>
        Today
      </text>
    </svg>
  );
}

/** Words run toward the middle, so that none leaves a narrow screen. */
function anchor(percent: number): 'start' | 'end' {
  return percent < 50 ? 'start' : 'end';
}
