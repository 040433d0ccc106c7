import type { VNode } from 'preact';
import { makerText } from '../../core/fact/index.js';
import { costParts } from '../../core/model/index.js';
import type { BookSelection } from '../../core/book/index.js';
import { describePush, describeSlack } from '../../core/calendar/index.js';
import {
  printAmount,
  printMoney,
  printMoneyChange,
  printWeight,
  wholeMoney,
  type Cents,
} from '../../base/units/index.js';
import { changeWords, statusWords } from '../../sheet/index.js';
import { SignMark } from '../../write/index.js';
import { triedOptions } from '../../try/index.js';
import { choiceTitle, movesWords, placesOf, standingWords, wholeRange } from '../../table/index.js';
import { allowancePath, figuredPath, selectionAnchor } from '../paths.js';
import { useView } from '../sheet-context.js';
import { netText, neededText, orderText, quantityText } from './arithmetic.js';
import { CautionLines } from './caution.js';
import { Swatch } from './drawing.js';
import { Facts } from './facts.js';
import { Day } from './figures.js';
import { ChoiceLink, OptionLink, PageLink, SelectionSource } from './link.js';
import { Phrase } from './prose.js';
import { SignedMark } from './signed-mark.js';
import { TryPlace } from './try-place.js';
import { shownState } from './words.js';

/** One choice of a room in one line; what is behind it opens in place. */
export function RoomRow({ selection }: { selection: BookSelection }): VNode {
  const view = useView();
  const { category, counted, state, alternatives } = selection;
  const option = view.option(category, counted);
  const open = state === 'open';
  const pictured = option ?? view.option(category, alternatives[0]?.option);
  return (
    <details class={open ? 'row row-open' : 'row'} id={selectionAnchor(selection)}>
      <summary>
        <span class="row-swatch">{pictured && state !== 'none' && <Swatch option={pictured} size="small" />}</span>
        <span class="row-place">
          {view.categoryName(category)} <span class="why">{placesOf(selection)}</span>
        </span>
        <span class="row-finish">
          <Finish selection={selection} />
        </span>
        <span class="row-measured">{measured(selection)}</span>
        <span class="row-cost">{inPlace(selection)}</span>
        <span class="row-change">{moves(selection)}</span>
        <span class="row-state">
          <RowState selection={selection} />
        </span>
      </summary>
      <div class="row-more">
        <CautionLines selection={selection} />
        <div class="row-columns">
          <Story selection={selection} />
          <Figured selection={selection} />
          <Others selection={selection} />
        </div>
        <p class="row-record">
          <SelectionSource selection={selection} />
        </p>
      </div>
    </details>
  );
}

function Finish({ selection }: { selection: BookSelection }): VNode {
  const view = useView();
  const { category, counted, state, alternatives } = selection;
  const option = view.option(category, counted);
  if (state === 'none') return <span class="row-name">Not wanted</span>;
  if (state !== 'open') {
    return (
      <>
        <span class="row-name">{option?.name}</span> {option && <span class="why">{makerText(option)}</span>}
      </>
    );
  }
  const names = alternatives.flatMap(({ option: slug }) => view.option(category, slug)?.name ?? []);
  return (
    <>
      <span class="row-name">
        {names.length === 0
          ? 'Nothing to choose from yet'
          : names.length === 1
            ? 'One to choose'
            : `${names.length} to choose from`}
      </span>{' '}
      <span class="why">{names.join(', ')}</span>
    </>
  );
}

/** `617.8 sq ft`; of an open choice that of what is counted, or of the first that is considered. */
function measured({ takeoff, alternatives, counted }: BookSelection): string {
  const parts = counted === undefined ? (alternatives[0]?.takeoff ?? []) : takeoff;
  return parts.map(({ net, unit }) => quantityText(net, unit)).join(' + ');
}

function inPlace({ state, cost, alternatives }: BookSelection): string {
  const whole = (cents: Cents): string => printMoney(wholeMoney(cents));
  if (state !== 'open' || alternatives.length === 0) return cost.total === 0 ? '–' : whole(cost.total);
  const totals = alternatives.map((alternative) => alternative.cost.total).sort((a, b) => a - b);
  const [low = cost.total, high = low] = [totals[0], totals.at(-1)];
  return low === high ? whole(low) : `${whole(low)} to ${whole(high)}`;
}

/** What it moves the contract by; of an open choice from the cheapest to the dearest of what is considered. */
function moves({ state, change, counted, standard, allowance, alternatives }: BookSelection): string {
  if (state === 'open' && alternatives.length > 0) {
    const changes = alternatives.map(({ againstToday }) => againstToday).sort((a, b) => a - b);
    const [low = change, high = low] = [changes[0], changes.at(-1)];
    return wholeRange({ low, high });
  }
  if (change !== 0) return printMoneyChange(wholeMoney(change));
  if (state === 'none') return '–';
  return counted !== undefined && counted === standard ? 'standard' : allowance === undefined ? 'nothing' : 'allowance';
}

function RowState({ selection }: { selection: BookSelection }): VNode {
  const { decision, signed, supply } = selection;
  const state = shownState(selection);
  const isUrgent = state === 'late' || state === 'due-soon';
  return (
    <>
      <span class={`state state-${state}`}>
        <SignMark of={state} />{' '}
        <span>
          {isUrgent ? describeSlack(decision.slack) : statusWords[state]}
          {state === 'open' && (
            <>
              {' '}
              by <Day day={decision.by} />
            </>
          )}
        </span>
      </span>
      {supply === 'owner-furnished' && (
        <span class="state">
          <SignMark of="owner-furnished" /> {statusWords['owner-furnished']}
        </span>
      )}
      {signed?.state === 'changed' && <span class="why">↻ changed since signed</span>}
    </>
  );
}

/** Why and when, by whom, and what else is known of it. */
function Story({ selection }: { selection: BookSelection }): VNode {
  const view = useView();
  const { note, chosenOn, chosenBy, slip, allowance, decision, state, standard, counted, facts, pounds } = selection;
  const option = view.option(selection.category, counted);
  const base = view.option(selection.category, standard);
  const isOpen = state === 'open';
  return (
    <div>
      {isOpen && (
        <p>
          Decide by <Day day={decision.by} />, {describeSlack(decision.slack)}. {decision.reason}.
          {decision.pushes > 0 && <strong> {describePush(decision)}.</strong>}
        </p>
      )}
      {note !== undefined && (
        <p class="note">
          <Phrase text={note} />
        </p>
      )}
      {option?.summary !== undefined && !isOpen && <p>{option.summary}</p>}
      <SignedMark signed={selection.signed} />
      <Facts
        class="row-facts"
        facts={[
          isOpen && { label: 'Counted today', value: option ? `${option.name}, the standard` : 'nothing' },
          !isOpen && option && { label: 'Option', value: <OptionLink option={option} /> },
          chosenOn !== undefined && {
            label: 'Chosen',
            value: (
              <>
                <Day day={chosenOn} />
                {chosenBy !== undefined && `, ${chosenBy}`}
              </>
            ),
          },
          slip !== undefined && { label: 'By choice slip', value: slip },
          base && !isOpen && standard !== counted && { label: 'Standard', value: base.name },
          allowance !== undefined && {
            label: 'Allowance',
            value: <PageLink to={allowancePath({ id: allowance })}>{view.allowanceName(allowance)}</PageLink>,
          },
          state === 'chosen' && { label: 'Order by', value: <Day day={decision.orderBy} /> },
          facts.length > 0 && { label: 'Where it stands', value: standingWords(facts) },
          pounds !== undefined && { label: 'Weight in place', value: printWeight(pounds) },
        ]}
      />
    </div>
  );
}

/** How quantity and cost come about, in short. */
function Figured({ selection }: { selection: BookSelection }): VNode | null {
  const view = useView();
  const { takeoff, cost, counted, category, change } = selection;
  if (counted === undefined || takeoff.length === 0) return null;
  const parts = costParts.filter((part) => cost[part] !== 0);
  return (
    <div>
      <ul class="row-steps">
        {takeoff.map((part) => {
          const order = view.order(`${category}/${counted}`, part.part);
          return (
            <li>
              {takeoff.length > 1 && `${part.part}: `}
              {netText(part)}
              {part.waste.percent > 0 && ` and ${printAmount(part.waste.percent, 2)} % waste`}, {neededText(part)}{' '}
              needed
              {order && `; the house orders ${orderText(order)}`}.
            </li>
          );
        })}
      </ul>
      <p>
        {parts.map((part) => `${part} ${printMoney(cost[part], 'always')}`).join(' + ')}
        {parts.length > 1 && ` = ${printMoney(cost.total, 'always')}`}. {changeWords(change, 'always')}.
      </p>
      <p>
        <PageLink to={figuredPath(selection)}>How this was figured</PageLink>
      </p>
    </div>
  );
}

/** What else could stand here: what each alone moves, to be tried where that can be, and to be compared. */
function Others({ selection }: { selection: BookSelection }): VNode | null {
  const view = useView();
  const { alternatives, category, state } = selection;
  const isTried = view.beside.trying !== undefined && triedOptions(selection).length > 1;
  if (alternatives.length < 2 && !isTried) return null;
  return (
    <div>
      {isTried ? (
        <TryPlace selection={selection} legend={tryWords(selection)} isBrief />
      ) : (
        <ul class="row-others">
          {alternatives.map((alternative) => (
            <li>
              {view.option(category, alternative.option)?.name}{' '}
              <span class="why">{movesWords(alternative, category, view)}</span>
            </li>
          ))}
        </ul>
      )}
      <p>
        <ChoiceLink selection={selection} class={state === 'open' ? 'act' : ''}>
          Compare {alternatives.length} side by side
          <span class="for-the-ear">: {choiceTitle(selection, view)}</span>
        </ChoiceLink>
      </p>
    </div>
  );
}

/** What the figures beside the options stand on is said where it is not today's house. */
function tryWords({ state, rest }: BookSelection): string {
  const what = state === 'open' ? 'Try one' : 'Try another';
  return rest ? `${what}: each with the rest of its allowance at its standard` : what;
}
