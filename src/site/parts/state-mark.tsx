import type { VNode } from 'preact';
import type { BookSelection } from '../../core/book/index.js';
import { statusWords } from '../../sheet/index.js';
import { SignMark } from '../../write/index.js';
import { shownState, type ShownState } from './words.js';

/** A state as a sign and a word. Colour only helps. */
export function StateMark({ selection }: { selection: Pick<BookSelection, 'state' | 'decision' | 'supply'> }): VNode {
  return (
    <span class="states">
      <State state={shownState(selection)} />
      {selection.supply === 'owner-furnished' && <OwnerMark />}
    </span>
  );
}

function State({ state }: { state: ShownState }): VNode {
  return (
    <span class={`state state-${state}`}>
      <SignMark of={state} /> {statusWords[state]}
    </span>
  );
}

function OwnerMark(): VNode {
  return (
    <span class="state">
      <SignMark of="owner-furnished" /> {statusWords['owner-furnished']}
    </span>
  );
}
