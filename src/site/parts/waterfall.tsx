import { scaleLinear } from 'd3-scale';
import type { VNode } from 'preact';
import type { ContractStep } from '../../core/price/index.js';
import { numberText } from '../../base/svg/index.js';
import { printMoney, printMoneyChange, wholeMoney } from '../../base/units/index.js';

/** Each step on the way from the contract sum to today as a bar from where the sum was to where it goes. The table below says the same to the
 *  cent. */
export function Waterfall({ steps }: { steps: readonly ContractStep[] }): VNode | null {
  if (steps.length < 2) return null;
  const sums = steps.map(({ running }) => running);
  const scale = scaleLinear([Math.min(...sums), Math.max(...sums)], [2, 98]);
  const percent = (at: number): string => `${numberText(at, 2)}%`;
  return (
    <div class="waterfall" aria-hidden="true">
      {steps.map(({ what, kind, amount, running }, index) => {
        const isSum = kind === 'contract' || kind === 'total';
        const before = isSum ? running : (sums[index - 1] ?? running);
        const [from, to] = [scale(Math.min(before, running)), scale(Math.max(before, running))];
        return (
          <p class={isSum ? 'fall fall-sum' : amount < 0 ? 'fall fall-less' : 'fall'}>
            <span class="fall-name">{what}</span>
            <svg width="100%" height="20" focusable="false">
              <path class="move-axis" d="M0 10H3000" />
              {isSum ? (
                <line x1={percent(to)} x2={percent(to)} y1="1" y2="19" />
              ) : (
                <rect x={percent(from)} y="4" width={percent(Math.max(to - from, 0.25))} height="12" />
              )}
            </svg>
            <span class="figure">{isSum ? printMoney(wholeMoney(running)) : printMoneyChange(wholeMoney(amount))}</span>
          </p>
        );
      })}
    </div>
  );
}
