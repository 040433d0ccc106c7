import type { VNode } from 'preact';
import type { BookSelection } from '../../core/book/index.js';
import { capital, printDay, printMoney } from '../../base/units/index.js';
import { boundsHere, dayCostWords, factWords, lastDaysHere, openSinceWords } from '../../table/index.js';
import { BlocksHtml } from '../../write/index.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';

/** The days of one choice: what bears on it and what a day later comes to while it is open; what came of it once it is made. */
export function ChoiceDays({ selection }: { selection: BookSelection }): VNode | null {
  return selection.state === 'open' ? <OpenDays selection={selection} /> : <DaysSince selection={selection} />;
}

function OpenDays({ selection }: { selection: BookSelection }): VNode {
  const { view, path } = useSheet();
  const links = placeLinks(view, path);
  const since = openSinceWords(selection.openSince);
  return (
    <section aria-labelledby="days-title">
      <h2 id="days-title">When it must be decided</h2>
      <p class="why">
        {since !== undefined && `${capital(since)}. `}
        {dayCostWords(view)}
      </p>
      <BlocksHtml blocks={[lastDaysHere(selection, view), boundsHere(selection, view)]} links={links} />
    </section>
  );
}

function DaysSince({ selection }: { selection: BookSelection }): VNode | null {
  const { view } = useSheet();
  const { category, facts, insteadOf } = selection;
  const chosen = chosenWords(selection);
  if (facts.length === 0 && !insteadOf && chosen === undefined) return null;
  const nameOf = (slug: string): string => view.option(category, slug)?.name ?? slug;
  return (
    <section aria-labelledby="since-title">
      <h2 id="since-title">After the choice</h2>
      <ul class="plain-list">
        {chosen !== undefined && <li>{chosen}</li>}
        {facts.map((fact) => (
          <li>
            {capital(factWords(fact))}
            {fact.option !== undefined && `: ${nameOf(fact.option)}`}.
          </li>
        ))}
        {insteadOf && (
          <li>
            Changed on {printDay(insteadOf.on)}, instead of {nameOf(insteadOf.option)}
            {insteadOf.order !== undefined && `, order ${insteadOf.order}`}: {insteadOf.why}.
            {insteadOf.restocking &&
              ` The supplier keeps ${printMoney(insteadOf.restocking.amount, 'always')}: ${insteadOf.restocking.why}.`}
          </li>
        )}
      </ul>
    </section>
  );
}

/** Who chose, when, and by which slip, as far as that is known. */
function chosenWords({ chosenBy, chosenOn, slip }: BookSelection): string | undefined {
  const known = [
    chosenBy === undefined ? '' : ` by ${chosenBy}`,
    chosenOn === undefined ? '' : ` on ${printDay(chosenOn)}`,
    slip === undefined ? '' : `, handed over by choice slip ${slip}`,
  ].join('');
  return known === '' ? undefined : `Chosen${known}.`;
}
