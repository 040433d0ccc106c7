import type { VNode } from 'preact';
import type { BookSelection } from '../../book/index.js';
import { shownState } from './words.js';
import type { ShownState } from './words.js';

const words: Readonly<Record<ShownState, string>> = {
  open: 'Open',
  'due-soon': 'Due soon',
  late: 'Late',
  chosen: 'Chosen',
  none: 'Deliberately none',
  ordered: 'Ordered',
  installed: 'Installed',
};

/** A state as a shape and a word. Colour only helps. */
export function StateMark({ selection }: { selection: Pick<BookSelection, 'state' | 'decision' | 'supply'> }): VNode {
  return (
    <span class="states">
      <State state={shownState(selection)} />
      {selection.supply === 'owner-furnished' && <OwnerMark />}
    </span>
  );
}

export function State({ state }: { state: ShownState }): VNode {
  return (
    <span class={`state state-${state}`}>
      <Shape state={state} /> {words[state]}
    </span>
  );
}

/** Furnished by the owner: hatched, as what is not in the contract is on drawings. */
function OwnerMark(): VNode {
  return (
    <span class="state">
      <svg class="shape" viewBox="0 0 12 12" aria-hidden="true" focusable="false">
        <path
          d="M1.5 1.5h9v9h-9zM1.5 6 6 1.5M1.5 10.5l9-9M6 10.5 10.5 6"
          fill="none"
          stroke="currentColor"
          stroke-width="1"
        />
      </svg>{' '}
      Owner-furnished
    </span>
  );
}

export function Shape({ state }: { state: ShownState }): VNode {
  return (
    <svg class="shape" viewBox="0 0 12 12" aria-hidden="true" focusable="false">
      {outlines[state]}
    </svg>
  );
}

const line = { fill: 'none', stroke: 'currentColor', 'stroke-width': 1.5 } as const;

const outlines: Readonly<Record<ShownState, VNode>> = {
  open: <circle cx="6" cy="6" r="4.5" {...line} />,
  'due-soon': <path d="M6 .5 11.5 6 6 11.5.5 6z" fill="currentColor" />,
  late: <path d="M6 .8 11.6 11H.4z" fill="currentColor" />,
  chosen: <path d="M1 1h10v10H1z" fill="currentColor" />,
  none: <path d="M1.75 1.75h8.5v8.5h-8.5zM3.5 6h5" {...line} />,
  ordered: <path d="M1 1h10v10H1zM3.2 5.2v1.6h3v2L9.4 6 6.200 3.200v2z" fill="currentColor" fill-rule="evenodd" />,
  installed: (
    <path
      d="M1 1h10v10H1zM2.600 6.300l2.500 2.600 4.400-4.800-1-.9-3.400 3.800-1.500-1.600z"
      fill="currentColor"
      fill-rule="evenodd"
    />
  ),
};
