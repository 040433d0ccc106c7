import type { ComponentChildren, VNode } from 'preact';

interface Fact {
  readonly label: string;
  readonly value: ComponentChildren;
}

/** Labelled facts, in columns as room allows. Facts without a value are left out. */
export function Facts({
  facts,
  class: className = 'facts',
}: {
  facts: readonly (Fact | false | undefined)[];
  class?: string;
}): VNode {
  return (
    <dl class={className}>
      {facts.map(
        (fact) =>
          fact && (
            <div>
              <dt>{fact.label}</dt>
              <dd>{fact.value}</dd>
            </div>
          ),
      )}
    </dl>
  );
}
