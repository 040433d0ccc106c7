import type { VNode } from 'preact';
import type { BookSelection, JointDecision } from '../../core/book/index.js';
import { describePush, describeSlack } from '../../core/calendar/index.js';
import { lower, printDay } from '../../base/units/index.js';
import { SignMark } from '../../write/index.js';
import { choiceTitle, decisionTitle, wholeRange } from '../../table/index.js';
import { candidatesOf } from '../choice-rows.js';
import { useView } from '../sheet-context.js';
import { Swatch } from './drawing.js';
import { Day } from './figures.js';
import { ChoiceLink, SelectionLink } from './link.js';
import { MoveBar } from './move-bar.js';
import { counted, shownState } from './words.js';

/** Options that are shown as pictures. */
const pictured = 4;

/** What is decided together: by when, why, and what it moves. `most`: the end of the scale that it shares with others, in cents. */
export function DecisionRow({
  decision,
  most,
  isFirst,
}: {
  decision: JointDecision;
  most: number;
  isFirst: boolean;
}): VNode | null {
  const view = useView();
  const selections = decision.choices.flatMap(({ selection }) => view.selection(selection) ?? []);
  const [first] = selections;
  if (!first) return null;
  const { decision: due } = first;
  const state = shownState(first);
  return (
    <li class={`decide decide-${state}`}>
      <Pictures selection={first} />
      <div class="decide-words">
        <p class="decide-when">
          <strong class={`state-${state}`}>
            <SignMark of={state} /> {describeSlack(due.slack)}
          </strong>
          , decide by <Day day={due.by} />
        </p>
        <h2>
          <Onward selection={first}>{decisionTitle(decision, view)}</Onward>
        </h2>
        <p>
          {due.reason}. {due.pushes > 0 && <strong>{describePush(due)}.</strong>}
        </p>
        {selections.length > 1 && (
          <ul class="decide-each">
            {selections.map((selection) => (
              <li>
                <Onward selection={selection}>
                  {view.roomName(selection.room)}, {lower(choiceTitle(selection, view))}
                </Onward>
                {selection.decision.by !== due.by && ` by ${printDay(selection.decision.by)}`}
              </li>
            ))}
          </ul>
        )}
        {isFirst && (
          <ChoiceLink selection={first} class="act">
            Compare the {counted(first.alternatives.length, 'option')}
          </ChoiceLink>
        )}
      </div>
      <div class="decide-moves">
        <p class="figure">{wholeRange({ low: decision.low.change, high: decision.high.change })}</p>
        <MoveBar low={decision.low.change} high={decision.high.change} most={most} />
        <p class="why">{movesWords(decision, selections, view.allowanceName)}</p>
      </div>
    </li>
  );
}

/** To the options side by side; to its place in the room while there are none. */
function Onward({ selection, children }: { selection: BookSelection; children: string | string[] }): VNode {
  const path = useView().choicePath(selection);
  if (path === undefined) return <SelectionLink selection={selection}>{children}</SelectionLink>;
  return (
    <ChoiceLink selection={selection} class="">
      {children}
    </ChoiceLink>
  );
}

function Pictures({ selection }: { selection: BookSelection }): VNode {
  const candidates = candidatesOf(selection, useView());
  const shown = candidates.slice(0, pictured);
  return (
    <div class={`decide-pictures decide-pictures-${shown.length}`}>
      {shown.map(({ option }) => (
        <Swatch option={option} size="large" />
      ))}
      {candidates.length > pictured && <span class="why">and {candidates.length - pictured} more</span>}
    </div>
  );
}

/** What the range counts. */
function movesWords(
  { allowance, choices }: JointDecision,
  [first]: readonly BookSelection[],
  allowanceName: (id: string) => string,
): string {
  if (allowance !== undefined) {
    const all = choices.length === 1 ? '' : choices.length === 2 ? ' for both' : ` for all ${choices.length}`;
    return `against today, on the allowance ${lower(allowanceName(allowance))}${all}`;
  }
  return first?.standard === undefined ? 'against today, no standard: all of it is extra' : 'against today';
}
