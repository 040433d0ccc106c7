import type { VNode } from 'preact';
import { makerText } from '../../core/fact/index.js';
import type { Alternative, BookSelection } from '../../core/book/index.js';
import { printLeadTime } from '../../core/calendar/index.js';
import { changeWords } from '../../sheet/index.js';
import { printMoney, printMoneyChange, printWeight } from '../../base/units/index.js';
import { leftWords, rangeWords } from '../../table/index.js';
import { useView } from '../sheet-context.js';
import { neededText } from './arithmetic.js';
import { Swatch } from './drawing.js';
import { Day } from './figures.js';
import { OptionLink } from './link.js';
import { RestWords } from './rest-words.js';

/** Options that could stand in one place, side by side, with the exact effect of each on the house. */
export function Alternatives({ selection }: { selection: BookSelection }): VNode {
  return (
    <>
      <RestWords selection={selection} />
      <ul class="alternatives">
        {selection.alternatives.map((alternative) => (
          <AlternativeColumn selection={selection} alternative={alternative} />
        ))}
      </ul>
    </>
  );
}

function AlternativeColumn({
  selection,
  alternative,
}: {
  selection: BookSelection;
  alternative: Alternative;
}): VNode | null {
  const view = useView();
  const option = view.option(selection.category, alternative.option);
  if (!option) return null;
  const { isChosen, isStandard, cost, againstStandard, againstToday, takeoff, pounds, decision, left } = alternative;
  const range = view.rangeOf(selection.id, alternative.option);
  const role = isChosen ? 'Chosen' : isStandard ? 'Standard' : 'Considered';
  const total = alternative.option === selection.counted ? 'as counted today' : changeWords(againstToday);
  return (
    <li class={isChosen ? 'alternative is-chosen' : 'alternative'}>
      <Swatch option={option} />
      <div class="alternative-name">
        <p class="role">{role}</p>
        <p>
          <OptionLink option={option} />
        </p>
        <p class="maker">{makerText(option)}</p>
      </div>
      <dl>
        <div class="difference">
          <dt>House total</dt>
          <dd>{total}</dd>
        </div>
        {range && (
          <div>
            <dt>Over what else may be chosen</dt>
            <dd>{rangeWords(range)}</dd>
          </div>
        )}
        {left && (
          <div>
            <dt>Left in the allowance after this</dt>
            <dd>{leftWords(left.after)}</dd>
          </div>
        )}
        <div>
          <dt>{selection.standard === undefined ? 'Against none' : 'Against the standard'}</dt>
          <dd>{againstStandard === 0 ? 'no difference' : printMoneyChange(againstStandard)}</dd>
        </div>
        <div>
          <dt>Cost in place</dt>
          <dd>{printMoney(cost.total)}</dd>
        </div>
        <div>
          <dt>Needs</dt>
          <dd>{takeoff.length === 0 ? 'nothing' : takeoff.map(neededText).join(' + ')}</dd>
        </div>
        <div>
          <dt>Lead time</dt>
          <dd>{printLeadTime(option.leadDays)}</dd>
        </div>
        <div>
          <dt>Weight in place</dt>
          <dd>{pounds === undefined ? 'not recorded' : printWeight(pounds)}</dd>
        </div>
        <div>
          <dt>Decide by</dt>
          <dd>
            <Day day={decision.by} />
          </dd>
        </div>
      </dl>
    </li>
  );
}
