import { scaleLinear } from 'd3-scale';
import type { VNode } from 'preact';
import type { Book } from '../../core/book/index.js';
import { numberText } from '../../base/svg/index.js';
import { printMoney } from '../../base/units/index.js';

/** Per cent of the width that stay free on each side, for the words, and that two words need between them. */
const edge = 12;
const apart = 16;
/** What lies closer is one mark, with one word. */
const same = 0.5;

type Anchor = 'start' | 'middle' | 'end';

/** Contract sum, today's total, and where it can still go, on one scale. Places are per cent of the width, so that the
 *  words keep their size on a phone. The text beside the chart says the same. */
export function RangeChart({ money }: { money: Book['money'] }): VNode {
  const { contractSum, today, low, expected, high } = money;
  const values = [contractSum, today, low, high];
  const scale = scaleLinear([Math.min(...values), Math.max(...values)], [edge, 100 - edge]);
  const x = (cents: number): string => `${numberText(scale(cents), 2)}%`;
  const label = `Contract ${printMoney(contractSum)}; today ${printMoney(today)}; with what is open between ${printMoney(low)} and ${printMoney(high)}`;
  const between = (a: number, b: number): number => Math.abs(scale(a) - scale(b));
  const isClose = between(contractSum, today) < apart;
  const word = (cents: number, words: string, y: number, anchor: Anchor = 'middle') => (
    <text x={x(cents)} y={y} text-anchor={anchor}>
      {words}
    </text>
  );
  const awayFrom = (cents: number, other: number): Anchor => (scale(cents) < scale(other) ? 'end' : 'start');
  // A longer word keeps within the chart.
  const inward = (cents: number): Anchor => (scale(cents) < 50 ? 'start' : 'end');
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
          {between(low, expected) < same ? (
            word(low, 'lowest and expected', 52, inward(low))
          ) : (
            <>
              {word(low, 'lowest', 52, awayFrom(low, expected))}
              {word(expected, 'expected', 52, awayFrom(expected, low))}
            </>
          )}
          {word(high, 'highest', 14)}
        </>
      )}
      <line class="range-contract" x1={x(contractSum)} x2={x(contractSum)} y1="19" y2="41" />
      <line class="range-today" x1={x(today)} x2={x(today)} y1="17" y2="43" />
      {between(contractSum, today) < same ? (
        word(today, 'contract and today', 14, inward(today))
      ) : (
        <>
          {word(contractSum, 'contract', 14, isClose ? awayFrom(contractSum, today) : 'middle')}
          {word(today, 'today', 14, isClose ? awayFrom(today, contractSum) : 'middle')}
        </>
      )}
    </svg>
  );
}
