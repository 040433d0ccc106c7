import type { VNode } from 'preact';
import type { BookSelection } from '../../core/book/index.js';
import { describePush } from '../../core/calendar/index.js';
import { printMoneyChange } from '../../base/units/index.js';
import { changeWords } from '../../sheet/index.js';
import type { Candidate } from '../choice-rows.js';
import { useView } from '../sheet-context.js';
import { Swatch } from './drawing.js';
import { Day } from './figures.js';
import { Told } from './prose.js';

/** What each option of a place brings with it. */
export function Follows({
  selection,
  candidates,
}: {
  selection: BookSelection;
  candidates: readonly Candidate[];
}): VNode {
  const reasons = new Set(candidates.map(({ alternative }) => alternative.decision.reason));
  return (
    <ul class={`follows follows-${Math.min(candidates.length, 4)}`}>
      {candidates.map((candidate) => (
        <Consequences
          candidate={candidate}
          isCounted={candidate.alternative.option === selection.counted}
          saysWhen={reasons.size > 1}
        />
      ))}
    </ul>
  );
}

/** What one option brings with it, in words: where its money comes from, why its day, what must be there first, its care. */
function Consequences({
  candidate,
  isCounted,
  saysWhen,
}: {
  candidate: Candidate;
  isCounted: boolean;
  /** Where the day differs from one option to the next. */
  saysWhen: boolean;
}): VNode {
  const view = useView();
  const { alternative, option } = candidate;
  const { effects, againstToday, decision } = alternative;
  return (
    <li>
      <h3>
        <Swatch option={option} size="small" /> {option.name}
      </h3>
      {option.summary !== undefined && <p>{option.summary}</p>}
      <div>
        <h4>The total moves by {againstToday === 0 ? 'nothing' : printMoneyChange(againstToday, 'always')}</h4>
        {isCounted && againstToday === 0 ? (
          <p>The totals count it today.</p>
        ) : (
          <ul class="effects">
            {effects.map(({ what, amount, why }) => (
              <li>
                <p class="effect-line">
                  <span>{what}</span> <span class="figure">{changeWords(amount, 'always')}</span>
                </p>
                <p class="why">{why}.</p>
              </li>
            ))}
            {effects.length === 0 && <li>Nothing else changes.</li>}
          </ul>
        )}
      </div>
      {saysWhen && (
        <div>
          <h4>
            Decide by <Day day={decision.by} />
          </h4>
          <p>
            {decision.reason}.{decision.pushes > 0 && ` ${describePush(decision)}.`}
          </p>
        </div>
      )}
      <div>
        <h4>What must be there first</h4>
        {option.needs.length === 0 ? (
          <p>Nothing is recorded.</p>
        ) : (
          <ul class="plain-list">
            {option.needs.map((need) => (
              <li>
                {need.what}: {view.tradeName(need.by)}, before {view.milestoneName(need.before)}.
              </li>
            ))}
          </ul>
        )}
      </div>
      <div>
        <h4>Care</h4>
        <p>
          <Told text={option.care} />
        </p>
      </div>
    </li>
  );
}
