import type { VNode } from 'preact';
import type { BookSelection } from '../../core/book/index.js';
import { decisionTitle, pricedWords, rangeWords, restWords } from '../../table/index.js';
import { useView } from '../sheet-context.js';

/** What the figures of an open choice stand on: where the rest of its allowance is, and what is decided together with it. A choice of
 *  which nothing is considered yet has no figures. */
export function RestWords({ selection }: { selection: BookSelection }): VNode | null {
  const view = useView();
  if (selection.alternatives.length === 0) return null;
  const rest = restWords(selection, view);
  const decision = view.decisionOf(selection.id);
  if (!decision || decision.choices.length < 2) return rest === '' ? null : <p class="why">{rest}</p>;
  return (
    <p class="why">
      {rest} {decisionTitle(decision, view)}: made together, these {decision.choices.length} choices move the total by{' '}
      {rangeWords({ low: decision.low.change, high: decision.high.change }, 'always')} ({pricedWords[decision.priced]}).
    </p>
  );
}
