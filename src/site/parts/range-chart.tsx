import { scaleLinear } from 'd3-scale';
import type { VNode } from 'preact';
import type { Book } from '../../core/book/index.js';
import { numberText } from '../../base/svg/index.js';
import { printMoney } from '../../base/units/index.js';

/** Per cent of the width that stay free on each side, for the words, and that two words need between them. */
const edge = 12;
const apart = 16;

/** Contract sum, today's total, and where it can still go, on one scale. Places are per cent of the width, so that the
 *  words keep their size on a phone. The text beside the chart says the same. */
export function RangeChart({ money }: { money: Book['money'] }): VNode {
  const { contractSum, today, low, expected, high } = money;
  const values = [contractSum, today, low, high];
  const scale = scaleLinear([Math.min(...values), Math.max(...values)], [edge, 100 - edge]);
  const x = (cents: number): string => `${numberText(scale(cents), 2)}%`;
  const label = `Contract ${printMoney(contractSum)}; today ${printMoney(today)}; with what is open between ${printMoney(low)} and ${printMoney(high)}`;
  const isClose = Math.abs(scale(contractSum) - scale(today)) < apart;
  const word = (cents: number, words: string, y: number, away?: number) => (
    <text x={x(cents)} y={y} text-anchor={away === undefined ? 'middle' : scale(cents) < scale(away) ? 'end' : 'start'}>
      {words}
    </text>
  );
  return (
    <svg class="range" role="img" aria-label={label}>
      <path class="range-axis" d="M0 30H3000" />
      {low !== high && (
        <>
          <rect
            class="range-span"
            x={x(low)}
            y="24"
            width={`${numberText(scale(high) - scale(low), 2)}%`}
            height="12"
          />
          <line class="range-expected" x1={x(expected)} x2={x(expected)} y1="24" y2="36" />
          {word(low, 'lowest', 52, expected)}
          {word(expected, 'expected', 52, low)}
          {word(high, 'highest', 14)}
        </>
      )}
      <line class="range-contract" x1={x(contractSum)} x2={x(contractSum)} y1="19" y2="41" />
      <line class="range-today" x1={x(today)} x2={x(today)} y1="17" y2="43" />
      {word(contractSum, 'contract', 14, isClose ? today : undefined)}
      {word(today, 'today', 14, isClose ? contractSum : undefined)}
    </svg>
  );
}
