import type { ComponentChildren, VNode } from 'preact';
import { groupBy, type BookSelection, type JointDecision } from '../../core/book/index.js';
import { countedInWords, printDay, printMoneyChange, type Cents, type IsoDate } from '../../base/units/index.js';
import { DecisionRow } from '../parts/decision-row.js';
import { PageLink } from '../parts/link.js';
import { pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';

/** Days after these that the start page names with how much is due. */
const laterDays = 4;

/** What is open and due next: all until a day, and how many of them are late. */
export interface Due {
  readonly by: IsoDate;
  readonly choices: readonly BookSelection[];
  readonly late: number;
}

/** What is late or due soon; where nothing is, what is due first. Undefined where all is decided. */
export function dueNext(open: readonly BookSelection[]): Due | undefined {
  const days = open.map(({ decision }) => decision.by).sort();
  const urgent = open.filter(({ decision }) => decision.state === 'due-soon').map(({ decision }) => decision.by);
  const late = open.filter(({ decision }) => decision.state === 'late');
  const lastLate = late
    .map(({ decision }) => decision.by)
    .sort()
    .at(-1);
  const by = urgent.sort().at(-1) ?? days.find((day) => lastLate === undefined || day > lastLate) ?? lastLate;
  if (by === undefined) return undefined;
  return { by, choices: open.filter(({ decision }) => decision.by <= by), late: late.length };
}

/** The answer to why somebody opens the book: what must be decided, and by when. */
export function Headline({ due }: { due: Due | undefined }): VNode {
  if (!due) return <h1>Every choice of the house is made.</h1>;
  const { choices, late, by } = due;
  const is = (count: number): string => (count === 1 ? 'is' : 'are');
  if (late === choices.length) {
    return (
      <h1>
        <span class="late">
          {countedInWords(late, 'choice')} {is(late)} late.
        </span>
      </h1>
    );
  }
  return (
    <h1>
      {countedInWords(choices.length, 'choice')} {is(choices.length)} due by {printDay(by)}.{' '}
      {late > 0 && (
        <span class="late">
          {countedInWords(late, 'one', 'of them').replace(' one', '')} {is(late)} late.
        </span>
      )}
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
