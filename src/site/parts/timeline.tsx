import type { VNode } from 'preact';
import { groupBy, type BookSelection, type JointDecision } from '../../core/book/index.js';
import { daysBetween, type DatedMilestone } from '../../core/calendar/index.js';
import { numberText } from '../../base/svg/index.js';
import { printDay, printShortMonth, type IsoDate } from '../../base/units/index.js';
import { decisionTitle } from '../../table/index.js';
import { SignMark } from '../../write/index.js';
import { useView } from '../sheet-context.js';
import { SelectionLink } from './link.js';
import { shownState } from './words.js';

type Place = (day: IsoDate) => number;

/** The job from its first day to its last: milestones reached and to come, and by trade what is open, with the days that an order takes to come.
 *  The list below says the same in words. */
export function Timeline(): VNode | null {
  const view = useView();
  const { calendar, decisions, on } = view.book;
  const rows = decisions.flatMap((decision) => {
    const first = view.selection(decision.id);
    return first ? [{ decision, first }] : [];
  });
  const days = [
    on,
    ...calendar.milestones.map(({ date }) => date),
    ...rows.flatMap(({ first }) => [first.decision.by, first.decision.orderBy, first.decision.onSite]),
  ].sort();
  const [start = on, end = on] = [days[0], days.at(-1)];
  const all = daysBetween(start, end);
  if (all === 0) return null;
  const at: Place = (day) => 1 + (98 * daysBetween(start, day)) / all;
  return (
    <div class="timeline">
      <div class="timeline-grid" aria-hidden="true">
        {monthsBetween(start, end).map((month) => (
          <span style={`left:${numberText(at(month), 2)}%`}>{printShortMonth(month)}</span>
        ))}
        <span class="timeline-today" style={`left:${numberText(at(on), 2)}%`}>
          today
        </span>
      </div>
      <section aria-label="Milestones">
        <h2>Milestones</h2>
        <ol>
          {calendar.milestones.map((milestone) => (
            <Milestone milestone={milestone} at={at} />
          ))}
        </ol>
      </section>
      {[...groupBy(rows, ({ first }) => first.trade)].map(([trade, own]) => (
        <section aria-label={`Open for ${view.tradeName(trade)}`}>
          <h2>{view.tradeName(trade)}</h2>
          <ol>
            {own.map(({ decision, first }) => (
              <Open decision={decision} first={first} at={at} />
            ))}
          </ol>
        </section>
      ))}
      <ul class="plan-key">
        <li>
          <span class="key-mark key-chosen" /> reached
        </li>
        <li>
          <span class="key-mark key-high" /> planned
        </li>
        <li>
          <span class="key-mark key-amount" /> decide by
        </li>
        <li>
          <span class="key-mark key-open" /> ordered by then, it comes
        </li>
      </ul>
    </div>
  );
}

function Milestone({
  milestone: { name, date, done, planned, float },
  at,
}: {
  milestone: DatedMilestone;
  at: Place;
}): VNode {
  const x = at(date);
  return (
    <li>
      <span class="timeline-name">
        {name} {float === 0 && <span class="why">no day to spare</span>}
      </span>
      <span class="timeline-day">{printDay(date)}</span>
      <Track>
        {planned !== undefined && planned !== date && (
          <line class="timeline-moved" x1={percent(at(planned))} x2={percent(x)} y1="9" y2="9" />
        )}
        <rect
          class={done ? 'timeline-done' : 'timeline-planned'}
          x={percent(x)}
          y="4"
          width="9"
          height="9"
          transform="translate(-4.500)"
        />
      </Track>
    </li>
  );
}

function Open({ decision, first, at }: { decision: JointDecision; first: BookSelection; at: Place }): VNode {
  const { by, orderBy, onSite } = first.decision;
  const state = shownState(first);
  return (
    <li>
      <span class="timeline-name">
        <SignMark of={state} /> <SelectionLink selection={first}>{decisionTitle(decision, useView())}</SelectionLink>
      </span>
      <span class="timeline-day">{printDay(by)}</span>
      <Track>
        <rect
          class="timeline-lead"
          x={percent(at(orderBy))}
          y="6"
          width={percent(at(onSite) - at(orderBy))}
          height="6"
        />
        <line class="timeline-by" x1={percent(at(by))} x2={percent(at(by))} y1="0" y2="18" />
      </Track>
    </li>
  );
}

function Track({ children }: { children: VNode | (VNode | false)[] }): VNode {
  return (
    <svg class="timeline-track" width="100%" height="18" aria-hidden="true" focusable="false">
      {children}
    </svg>
  );
}

const percent = (place: number): string => `${numberText(place, 2)}%`;

/** First days of months after a day, until another. */
function monthsBetween(from: IsoDate, to: IsoDate): IsoDate[] {
  const months: IsoDate[] = [];
  let [year = 0, month = 1] = from.split('-').map(Number);
  for (;;) {
    month += 1;
    if (month > 12) [year, month] = [year + 1, 1];
    const first = `${year}-${String(month).padStart(2, '0')}-01` as IsoDate;
    if (first > to) return months;
    months.push(first);
  }
}
