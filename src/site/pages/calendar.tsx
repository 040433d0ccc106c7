import type { VNode } from 'preact';
import type { BookSelection } from '../../core/book/index.js';
import { describePush, describeSlack, type DatedMilestone } from '../../core/calendar/index.js';
import { isOnSite, lastPromise } from '../../core/model/index.js';
import { byText, capital, lower, printDay, printMonth, type IsoDate } from '../../base/units/index.js';
import { choiceTitle, criticalWords, dayRules, decisionTitle, rangeWords, standingWords } from '../../table/index.js';
import { BlocksHtml } from '../../write/index.js';
import { Day } from '../parts/figures.js';
import { SelectionLink } from '../parts/link.js';
import { Phrase } from '../parts/prose.js';
import { StateMark } from '../parts/state-mark.js';
import { Timeline } from '../parts/timeline.js';
import { counted, shownState } from '../parts/words.js';
import { anchorOf } from '../paths.js';
import { placeLinks } from '../place-links.js';
import { useSheet, useView } from '../sheet-context.js';
import type { View } from '../view.js';

type Entry =
  | { readonly day: IsoDate; readonly kind: 'milestone'; readonly milestone: DatedMilestone }
  | { readonly day: IsoDate; readonly kind: 'decision'; readonly selection: BookSelection }
  | { readonly day: IsoDate; readonly kind: 'promised'; readonly selection: BookSelection }
  | { readonly day: IsoDate; readonly kind: 'today' };

/** Milestones and the last days to decide, in the order they come. */
export function CalendarPage(): VNode {
  const { view, path } = useSheet();
  const { book } = view;
  const open = book.selections.filter((selection) => selection.state === 'open');
  const late = open.filter((selection) => shownState(selection) === 'late');
  const months = byMonth(
    [...entries(book.calendar.milestones, open, book.on), ...promises(book.selections)].sort(byDay),
  );
  return (
    <>
      <h1>Calendar</h1>
      <p class="lead">
        {counted(open.length, 'choice')} to make.{' '}
        {late.length === 0 ? 'None is late.' : `${counted(late.length, 'is', 'are')} late.`} Days are working days of
        this job; a choice is due early enough to order it, or before the work that it fixes.
      </p>
      <Timeline />
      <p>{criticalWords(view)}</p>
      {late.length > 0 && (
        <section class="late-list" aria-labelledby="late-title">
          <h2 id="late-title">Late</h2>
          <ol class="agenda">
            {late.map((selection) => (
              <DecisionLine selection={selection} />
            ))}
          </ol>
        </section>
      )}
      <section aria-labelledby="months-title">
        <h2 id="months-title">Month by month</h2>
        {months.map((month) => (
          <MonthOf month={month} />
        ))}
      </section>
      <section aria-labelledby="days-title">
        <h2 id="days-title">Which days count</h2>
        <BlocksHtml blocks={[dayRules(view)]} links={placeLinks(view, path)} />
      </section>
    </>
  );
}

/** Open where today is, or something is late or due soon: what is past, and what is far away, is said in a line until it is asked for. */
function MonthOf({ month: { month, name, list } }: { month: Month }): VNode {
  const isNear = list.some(
    (entry) =>
      entry.kind === 'today' ||
      (entry.kind === 'decision' && ['late', 'due-soon'].includes(shownState(entry.selection))),
  );
  return (
    <details class="month" id={anchorOf('month', month)} open={isNear}>
      <summary>
        <h3>{name}</h3> <span class="why">{monthWords(list)}</span>
      </summary>
      <ol class="agenda">
        {list.map((entry) => (
          <EntryLine entry={entry} />
        ))}
      </ol>
    </details>
  );
}

/** `5 to decide, 2 promised: Framing starts, Roof on`. */
function monthWords(list: readonly Entry[]): string {
  const of = (kind: Entry['kind']): number => list.filter((entry) => entry.kind === kind).length;
  const counts = [
    ...(of('decision') > 0 ? [`${of('decision')} to decide`] : []),
    ...(of('promised') > 0 ? [`${of('promised')} promised`] : []),
  ];
  const milestones = list.flatMap((entry) => (entry.kind === 'milestone' ? [entry.milestone.name] : []));
  return [counts.join(', '), milestones.join(', ')].filter((part) => part !== '').join(' · ');
}

function EntryLine({ entry }: { entry: Entry }): VNode {
  if (entry.kind === 'today') {
    return (
      <li class="agenda-today">
        <p class="agenda-day">
          <Day day={entry.day} />
        </p>
        <p>The day this book is computed for</p>
      </li>
    );
  }
  if (entry.kind === 'promised') return <PromisedLine day={entry.day} selection={entry.selection} />;
  if (entry.kind === 'decision') return <DecisionLine selection={entry.selection} />;
  return (
    <li class="agenda-milestone">
      <p class="agenda-day">
        <Day day={entry.day} />
      </p>
      <div>
        <p class="agenda-name">{entry.milestone.name}</p>
        <p class="why">
          {capital(entry.milestone.basis)}. {entry.milestone.float === 0 && 'It drives the last day of the job. '}
          {entry.milestone.note !== undefined && <Phrase text={entry.milestone.note} />}
        </p>
      </div>
    </li>
  );
}

/** A day on which a supplier promised something on site. */
function PromisedLine({ day, selection }: { day: IsoDate; selection: BookSelection }): VNode {
  const view = useView();
  const option = view.option(selection.category, selection.chosen);
  return (
    <li class="agenda-milestone">
      <p class="agenda-day">
        <Day day={day} />
      </p>
      <div>
        <p class="agenda-name">
          <SelectionLink selection={selection}>
            {option?.name}, {view.roomName(selection.room)}
          </SelectionLink>
        </p>
        <p class="why">
          Promised on site. {standingWords(selection.facts)}; needed on {printDay(selection.decision.onSite)}.
        </p>
      </div>
    </li>
  );
}

function DecisionLine({ selection }: { selection: BookSelection }): VNode {
  const view = useView();
  const { decision } = selection;
  const room = view.room(selection.room);
  return (
    <li class="agenda-decision">
      <p class="agenda-day">
        <Day day={decision.by} />
        <span class="due-slack">{describeSlack(decision.slack)}</span>
      </p>
      <div>
        <p class="agenda-name">
          <SelectionLink selection={selection}>
            {room?.number} {room?.name}: {lower(choiceTitle(selection, view))}
          </SelectionLink>
        </p>
        <p class="why">
          {decision.reason}. Order by {printDay(decision.orderBy)}, on site {printDay(decision.onSite)}.
          {decision.pushes > 0 && ` ${describePush(decision)}.`}
        </p>
        <p class="why">{moneyWords(selection, view)}</p>
      </div>
      <StateMark selection={selection} />
    </li>
  );
}

/** What the decision that it belongs to moves: `Moves the total by −$5,321.34 to +$5,983.09, with 1 more on Stone`. */
function moneyWords({ id }: BookSelection, view: View): string {
  const decision = view.decisionOf(id);
  if (!decision) return '';
  const moved = `Moves the total by ${rangeWords({ low: decision.low.change, high: decision.high.change })}`;
  return decision.choices.length === 1 ? `${moved}.` : `${moved}, decided together: ${decisionTitle(decision, view)}.`;
}

function entries(milestones: readonly DatedMilestone[], open: readonly BookSelection[], on: IsoDate): Entry[] {
  const all: Entry[] = [
    ...milestones.map((milestone): Entry => ({ day: milestone.date, kind: 'milestone', milestone })),
    ...open.map((selection): Entry => ({ day: selection.decision.by, kind: 'decision', selection })),
    { day: on, kind: 'today' },
  ];
  return all;
}

/** What is promised and not on site yet. */
function promises(selections: readonly BookSelection[]): Entry[] {
  return selections.flatMap((selection): Entry[] => {
    const { facts } = selection;
    const promise = lastPromise(facts);
    return !promise || isOnSite(facts) ? [] : [{ day: promise.promised, kind: 'promised', selection }];
  });
}

function byDay(a: Entry, b: Entry): number {
  return byText(a.day, b.day);
}

interface Month {
  /** `2026-05` and `May 2026`. */
  readonly month: string;
  readonly name: string;
  readonly list: readonly Entry[];
}

function byMonth(list: readonly Entry[]): Month[] {
  const months = new Map<string, Entry[]>();
  for (const entry of list) {
    const month = entry.day.slice(0, 7);
    months.set(month, [...(months.get(month) ?? []), entry]);
  }
  return [...months].map(([month, own]) => ({ month, name: printMonth(`${month}-01`), list: own }));
}
