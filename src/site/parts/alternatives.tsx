import type { VNode } from 'preact';
import type { Alternative, BookSelection } from '../../core/book/index.js';
import { changeWords } from '../../sheet/index.js';
import { printAmount, printMoney, printMoneyChange } from '../../base/units/index.js';
import { useView } from '../sheet-context.js';
import { quantityText } from './arithmetic.js';
import { Swatch } from './drawing.js';
import { Day } from './figures.js';
import { OptionLink } from './link.js';

/** Options that could stand in one place, side by side, with the exact effect of each on the house. */
export function Alternatives({ selection }: { selection: BookSelection }): VNode {
  return (
    <ul class="alternatives">
      {selection.alternatives.map((alternative) => (
        <AlternativeColumn selection={selection} alternative={alternative} />
      ))}
    </ul>
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
  const { isChosen, isStandard, cost, againstStandard, againstToday, takeoff, pounds, decision } = alternative;
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
        <p class="maker">
          {option.maker} {option.model}
        </p>
      </div>
      <dl>
        <div class="difference">
          <dt>House total</dt>
          <dd>{total}</dd>
        </div>
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
          <dd>
            {takeoff.length === 0
              ? 'nothing'
              : takeoff.map((part) => quantityText(part.required, part.unit)).join(' + ')}
          </dd>
        </div>
        <div>
          <dt>Lead time</dt>
          <dd>{option.leadDays === 0 ? 'from stock' : `${option.leadDays} working days`}</dd>
        </div>
        <div>
          <dt>Weight in place</dt>
          <dd>{pounds === undefined ? 'not recorded' : `${printAmount(pounds, 0)} lb`}</dd>
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
