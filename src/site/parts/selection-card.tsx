import type { VNode } from 'preact';
import { makerText } from '../../core/fact/index.js';
import type { BookSelection } from '../../core/book/index.js';
import { describePush, describeSlack } from '../../core/calendar/index.js';
import { changeWords } from '../../sheet/index.js';
import { printMoney, printMoneyChange, printWeight } from '../../base/units/index.js';
import { lockOf } from '../../try/index.js';
import { placesOf, standingWords } from '../../table/index.js';
import { anchorOf, pagePaths, selectionAnchor } from '../paths.js';
import { useView } from '../sheet-context.js';
import { Alternatives } from './alternatives.js';
import { Arithmetic, neededText } from './arithmetic.js';
import { CautionLines } from './caution.js';
import { CostTable } from './cost-table.js';
import { Swatch } from './drawing.js';
import { Facts } from './facts.js';
import { Day } from './figures.js';
import { ChoiceLink, OptionLink, PageLink, SelectionSource } from './link.js';
import { Phrase } from './prose.js';
import { SignedMark } from './signed-mark.js';
import { StateMark } from './state-mark.js';
import { TryPlace } from './try-place.js';
import { shownState } from './words.js';

/** One choice of a room: what is decided, what it costs, where the figures come from, or what is still to decide. */
export function SelectionCard({ selection }: { selection: BookSelection }): VNode {
  const view = useView();
  const category = view.category(selection.category);
  const option = view.option(selection.category, selection.counted);
  const open = selection.state === 'open';
  const anchor = selectionAnchor(selection);
  return (
    <article class={`choice choice-${shownState(selection)}`} id={anchor} aria-labelledby={`${anchor}-title`}>
      <header class="choice-head">
        <h3 id={`${anchor}-title`}>
          {placesOf(selection)} <span class="choice-kind">{category?.name ?? selection.category}</span>
        </h3>
        <StateMark selection={selection} />
      </header>
      <SignedMark signed={selection.signed} />
      {selection.note !== undefined && (
        <p class="note">
          <Phrase text={selection.note} />
        </p>
      )}
      <CautionLines selection={selection} />
      {!open && option && (
        <div class="choice-body">
          <Swatch option={option} />
          <div class="choice-option">
            <p class="choice-name">
              <OptionLink option={option} />
            </p>
            <p class="maker">{makerText(option)}</p>
            {option.summary !== undefined && <p>{option.summary}</p>}
          </div>
          <ChoiceFacts selection={selection} />
        </div>
      )}
      {selection.state === 'none' && <p class="choice-none">Nothing is wanted here, and that was decided.</p>}
      {open && (
        <>
          <p class="choice-due">
            Decide by <Day day={selection.decision.by} />: {describeSlack(selection.decision.slack)}.{' '}
            {selection.decision.reason}.{selection.decision.pushes > 0 && ` ${describePush(selection.decision)}.`}
          </p>
          <Alternatives selection={selection} />
          <p class="choice-onward">
            <ChoiceLink selection={selection} />
          </p>
          <p class="choice-counted">
            {option
              ? `Until it is decided the totals count the standard, ${option.name}.`
              : 'Until it is decided the totals count nothing here.'}
            {selection.allowance !== undefined && <AllowanceWords selection={selection} />}
          </p>
        </>
      )}
      {lockOf(selection) === undefined && (
        <TryPlace selection={selection} legend={open ? 'Try one of them here' : 'Try another here'} />
      )}
      {option && selection.takeoff.length > 0 && (
        <details>
          <summary>{open ? 'Quantity and cost of the standard' : 'How quantity and cost come about'}</summary>
          <div class="workings">
            <Arithmetic option={option.id} takeoff={selection.takeoff} />
            <CostTable cost={selection.cost} id={anchorOf('cost', selection.id)} />
          </div>
        </details>
      )}
      {!open && selection.alternatives.length > 1 && (
        <details>
          <summary>What else was considered</summary>
          <Alternatives selection={selection} />
          <p class="choice-onward">
            <ChoiceLink selection={selection} />
          </p>
        </details>
      )}
      <p class="choice-source">
        <SelectionSource selection={selection} />
      </p>
    </article>
  );
}

function ChoiceFacts({ selection }: { selection: BookSelection }): VNode {
  const { change, cost, takeoff, pounds, chosenOn, chosenBy, slip } = selection;
  const { allowance, standard, supply, decision, state, facts } = selection;
  return (
    <Facts
      class="choice-facts"
      facts={[
        takeoff.length > 0 && {
          label: 'Quantity',
          value: takeoff.map(neededText).join(' + '),
        },
        {
          label: supply === 'owner-furnished' ? 'Cost, owner-furnished' : 'Cost in place',
          value: printMoney(cost.total),
        },
        standard !== undefined && {
          label: 'Against the standard',
          value: changeWords(change),
        },
        standard === undefined && change !== 0 && { label: 'Changes the contract by', value: printMoneyChange(change) },
        allowance !== undefined && { label: 'Allowance', value: <AllowanceLink id={allowance} /> },
        pounds !== undefined && { label: 'Weight in place', value: printWeight(pounds) },
        chosenOn !== undefined && { label: 'Chosen', value: <Day day={chosenOn} /> },
        chosenBy !== undefined && { label: 'Chosen by', value: chosenBy },
        slip !== undefined && { label: 'By choice slip', value: slip },
        state === 'chosen' && { label: 'Order by', value: <Day day={decision.orderBy} /> },
        facts.length > 0 && { label: 'Where it stands', value: standingWords(facts) },
      ]}
    />
  );
}

function AllowanceLink({ id }: { id: string }): VNode {
  return <PageLink to={`${pagePaths.money}#${anchorOf('allowance', id)}`}>{useView().allowanceName(id)}</PageLink>;
}

function AllowanceWords({ selection }: { selection: BookSelection }): VNode | null {
  if (selection.allowance === undefined) return null;
  return (
    <>
      {' '}
      It draws on the allowance <AllowanceLink id={selection.allowance} />.
    </>
  );
}
