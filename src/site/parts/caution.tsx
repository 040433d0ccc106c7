import type { VNode } from 'preact';
import type { BookSelection } from '../../core/book/index.js';
import { cautionWords, sourceText, stateWords, type Caution } from '../../core/caution/index.js';
import { cautionAnchor, cautionPath } from '../paths.js';
import { useView } from '../sheet-context.js';
import { Facts } from './facts.js';
import { Day } from './figures.js';
import { PageLink } from './link.js';
import { joinWords, lower } from '../../base/units/index.js';

/** One caution in full, at its place: what was seen, what the source says, whom to ask, and who accepts it. `room` names its room where
 *  it stands among those of its kind. */
export function CautionCard({ caution, room }: { caution: Caution; room?: string }): VNode {
  const view = useView();
  const anchor = cautionAnchor(caution);
  const { accepted, trades } = caution;
  return (
    <article class={accepted ? 'caution caution-accepted' : 'caution'} id={anchor} aria-labelledby={`${anchor}-title`}>
      <header class="caution-head">
        <h3 id={`${anchor}-title`}>
          {room === undefined || room === caution.placeText
            ? caution.placeText
            : `${room}: ${lower(caution.placeText)}`}{' '}
          {room === undefined && <span class="choice-kind">{caution.title}</span>}
        </h3>
        <CautionState caution={caution} />
      </header>
      <p class="caution-seen">{caution.seen}</p>
      <p class="why">{caution.says}</p>
      {accepted && (
        <p class="caution-why">
          {stateWords(caution)}, <Day day={accepted.on} />: {accepted.why}
        </p>
      )}
      <Facts
        facts={[
          { label: cautionWords.ask, value: caution.ask },
          { label: cautionWords.source, value: sourceText(caution.source) },
          caution.locally !== '' && { label: cautionWords.locally, value: caution.locally },
          trades.length > 0 && { label: 'For', value: joinWords(trades.map((trade) => view.tradeName(trade))) },
        ]}
      />
      {!accepted && (
        <details class="caution-record">
          <summary>To accept it</summary>
          <p>
            Under <code>cautions</code> in the house’s record, with <code>by</code>, <code>on</code> and{' '}
            <code>why</code>: <code>accept: {caution.id}</code>
          </p>
        </details>
      )}
    </article>
  );
}

function CautionState({ caution }: { caution: Caution }): VNode {
  return (
    <span class={caution.accepted ? 'state' : 'state state-caution'}>
      <CautionShape accepted={caution.accepted !== undefined} />{' '}
      {caution.accepted ? cautionWords.accepted : cautionWords.open}
    </span>
  );
}

/** The cautions that speak of a choice, one line each, with the way to the whole of it; it may be on the
 *  page of the room beside. */
export function CautionLines({ selection }: { selection: BookSelection }): VNode | null {
  const cautions = useView().cautionsOf(selection.id);
  if (cautions.length === 0) return null;
  return (
    <ul class="caution-lines">
      {cautions.map((caution) => (
        <li>
          <CautionShape accepted={caution.accepted !== undefined} />
          <span>
            <PageLink to={cautionPath(caution)}>{caution.title}</PageLink>
            {caution.accepted ? `, ${stateWords(caution).toLowerCase()}` : ''}: {caution.seen}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** A sign that warns, and the same one ticked: words stand beside both. */
function CautionShape({ accepted }: { accepted: boolean }): VNode {
  return (
    <svg class="shape" viewBox="0 0 12 12" aria-hidden="true" focusable="false">
      <path d="M6 1 11.4 11H.6z" fill="none" stroke="currentColor" stroke-width="1.3" />
      <path
        d={accepted ? 'M3.900 8.300l1.500 1.500 2.700-3.300' : 'M6 4.600v3.200M6 9v1'}
        fill="none"
        stroke="currentColor"
        stroke-width="1.3"
      />
    </svg>
  );
}
