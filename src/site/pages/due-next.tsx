import type { ComponentChildren, VNode } from 'preact';
import { groupBy, type JointDecision } from '../../core/book/index.js';
import { countedInWords, printDay, printMoneyChange, type Cents } from '../../base/units/index.js';
import { headline, type Due } from '../../table/index.js';
import { DecisionRow } from '../parts/decision-row.js';
import { PageLink } from '../parts/link.js';
import { pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';

/** Days after these that the start page names with how much is due. */
const laterDays = 4;

/** The answer first: what must be decided, and by when. */
export function Headline({ due }: { due: Due | undefined }): VNode {
  const said = headline(due);
  return (
    <h1>
      {said.due} {said.late !== '' && <span class="late">{said.late}</span>}
    </h1>
  );
}

/** Decisions one under the other, with what they move on one scale. */
export function Decisions({
  decisions,
  children,
}: {
  decisions: readonly JointDecision[];
  children: ComponentChildren;
}): VNode {
  const most = Math.max(...decisions.flatMap(({ low, high }) => [Math.abs(low.change), Math.abs(high.change)]), 0);
  const end = Math.ceil(most / 10_000) * 10_000;
  return (
    <>
      <div class="decide-head">
        <p class="why">{children}</p>
        <p class="decide-scale" aria-hidden="true">
          <span>moves today’s total by</span>
          <span class="scale-ends">
            <span>{printMoneyChange(-end as Cents)}</span> <span>0</span> <span>{printMoneyChange(end as Cents)}</span>
          </span>
        </p>
      </div>
      <ol class="decide-list">
        {decisions.map((decision, index) => (
          <DecisionRow decision={decision} most={end} isFirst={index === 0} />
        ))}
      </ol>
    </>
  );
}

/** What is due until a day, and how much comes after it. */
export function DueNext({ due }: { due: Due }): VNode {
  const { decisions } = useView().book;
  const now = decisions.filter(({ by }) => by <= due.by);
  const later = decisions.filter(({ by }) => by > due.by);
  const days = groupBy(later, ({ by }) => by);
  return (
    <section class="due" aria-label="To decide">
      <Decisions decisions={now}>
        {now.length < due.choices.length
          ? `They make ${countedInWords(now.length, 'decision').toLowerCase()}: choices on one allowance, or of one product that is bought together, are priced together.`
          : 'From the cheapest to the dearest of what is considered, priced as whole houses.'}
      </Decisions>
      <p class="due-later">
        {later.length > 0 && <span>Then</span>}
        {[...days].slice(0, laterDays).map(([day, those]) => (
          <span>
            <strong>{printDay(day)}</strong> {those.reduce((count, { choices }) => count + choices.length, 0)}
          </span>
        ))}
        <PageLink to={pagePaths.choices}>All that is open, by day</PageLink>
      </p>
    </section>
  );
}
