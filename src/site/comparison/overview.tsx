import type { VNode } from 'preact';
import { comparisonSections as of } from '../../table/index.js';
import { printMoney, type Cents } from '../../base/units/index.js';
import { BlocksHtml } from '../../write/index.js';
import { Day } from '../parts/figures.js';
import { useSheet } from '../sheet-context.js';
import { comparisonLinks } from './comparison-links.js';
import type { ComparisonContext } from './context.js';
import { Notices } from './notices.js';

/** The comparison at a glance: money, days, rooms, and what lies outside the rooms. What did not change is not there. */
export function Overview(context: ComparisonContext): VNode {
  const { comparison, rooms } = context;
  const { from, to, money } = comparison;
  const links = comparisonLinks(context, useSheet().path);
  return (
    <>
      <header>
        <p class="cover-kind">
          From {from.label} to {to.label}
        </p>
        <h1>What changed</h1>
        <p class="lead">
          {differenceWords(money.difference)} It was {printMoney(from.today, 'always')} in {from.label} and is{' '}
          {printMoney(to.today, 'always')} in {to.label}.
        </p>
        <p class="why">
          Both are computed for <Day day={to.on} />, so that only the records differ.
        </p>
      </header>
      {/* However few they are, somebody looks for those of one room, or for the largest. */}
      <div data-list="always">
        <BlocksHtml blocks={of.changes(comparison)} links={links} cards />
      </div>
      <BlocksHtml blocks={[...of.money(comparison), ...of.rooms(rooms), ...of.days(comparison)]} links={links} cards />
      <Notices id="cautions" title="Cautions" notices={comparison.cautions} context={context} />
      <Notices id="scope" title="Scope" notices={comparison.scope} context={context} />
      <BlocksHtml
        blocks={[of.priceBook, of.allowances, of.terms, of.moved, of.trades, of.records].flatMap((part) =>
          part(comparison),
        )}
        links={links}
        cards
      />
    </>
  );
}

function differenceWords(difference: Cents): string {
  if (difference === 0) return 'The total stays as it was.';
  const size = printMoney(Math.abs(difference) as Cents, 'always');
  return difference > 0 ? `The total rises by ${size}.` : `The total falls by ${size}.`;
}
