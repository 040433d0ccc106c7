import type { VNode } from 'preact';
import type { BookSelection, JointDecision } from '../../core/book/index.js';
import { describeSlack } from '../../core/calendar/index.js';
import { lower, printDay } from '../../base/units/index.js';
import { choiceTitle, decisionTitle, rangeWords } from '../../table/index.js';
import { Day } from '../parts/figures.js';
import { ChoiceLink, PageLink, SelectionLink } from '../parts/link.js';
import { StateMark } from '../parts/state-mark.js';
import { pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';

/** Decisions that the start page lists. */
const shown = 8;

/** What is open, by the day that it has to be decided. */
export function DueNext({ open }: { open: readonly BookSelection[] }): VNode {
  const view = useView();
  const next = view.book.decisions.slice(0, shown);
  const told = next.reduce((count, { choices }) => count + choices.length, 0);
  return (
    <section class="due" aria-labelledby="due-title">
      <h2 id="due-title">Open and due next</h2>
      {next.length === 0 ? (
        <p>Every choice of the house is made.</p>
      ) : (
        <ol class="due-list">
          {next.map((decision) => (
            <DueDecision decision={decision} />
          ))}
        </ol>
      )}
      {next.length > 0 && (
        <p class="why">
          Choices on one allowance, or of one product that is bought together, are one decision. What it moves is from
          the cheapest to the dearest of what is considered, priced as whole houses.
        </p>
      )}
      <p>
        <PageLink to={pagePaths.calendar} class="onward">
          {open.length > told ? `All ${open.length} open choices in the calendar` : 'The whole calendar'}
        </PageLink>
      </p>
    </section>
  );
}

function DueDecision({ decision }: { decision: JointDecision }): VNode | null {
  const view = useView();
  const selections = decision.choices.flatMap(({ selection }) => view.selection(selection) ?? []);
  const [first] = selections;
  if (!first) return null;
  return (
    <li>
      <p class="due-day">
        <Day day={first.decision.by} />
        <span class="due-slack">{describeSlack(first.decision.slack)}</span>
      </p>
      <div class="due-what">
        <p class="due-name">
          {selections.length === 1 ? (
            <SelectionLink selection={first}>
              {view.room(first.room)?.name}: {lower(choiceTitle(first, view))}
            </SelectionLink>
          ) : (
            decisionTitle(decision, view)
          )}
        </p>
        <p class="why">{first.decision.reason}.</p>
        <p>
          {selections.length === 1 ? (
            <ChoiceLink selection={first} class="due-choice" />
          ) : (
            selections.map((selection, index) => (
              <>
                {index > 0 && ' · '}
                <DueChoice selection={selection} />
                {selection.decision.by !== first.decision.by && ` by ${printDay(selection.decision.by)}`}
              </>
            ))
          )}
        </p>
      </div>
      <p class="due-state">
        <StateMark selection={first} />
        <span class="due-range">{rangeWords({ low: decision.low.change, high: decision.high.change })}</span>
      </p>
    </li>
  );
}

/** To the options of one of several choices side by side; to its place in the room while there are none. */
function DueChoice({ selection }: { selection: BookSelection }): VNode {
  const view = useView();
  const title = `${view.roomName(selection.room)}, ${lower(choiceTitle(selection, view))}`;
  if (view.choicePath(selection) === undefined) return <SelectionLink selection={selection}>{title}</SelectionLink>;
  return (
    <ChoiceLink selection={selection} class="due-choice">
      {title}
    </ChoiceLink>
  );
}
