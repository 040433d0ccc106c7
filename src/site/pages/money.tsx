import type { VNode } from 'preact';
import type { LedgerEntry } from '../../core/price/index.js';
import { foldedSteps, moneySections } from '../../table/index.js';
import { printMoney } from '../../base/units/index.js';
import { BlocksHtml } from '../../write/index.js';
import { AllowanceLine, mostOf } from '../parts/allowance-table.js';
import { PageLink } from '../parts/link.js';
import { RangeChart } from '../parts/range-chart.js';
import { Waterfall } from '../parts/waterfall.js';
import { pagePaths } from '../paths.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';

/** From the contract sum to where it may end, with the steps as bars above their table. */
export function MoneyPage(): VNode {
  const { view, path } = useSheet();
  const { money, house } = view.book;
  const { steps, forecast, totals, rules } = moneySections(view);
  return (
    <>
      <h1>
        {printMoney(money.today, 'always')} today, against {printMoney(money.contractSum)} in the contract
      </h1>
      <p class="lead">
        With what is still open it will be between {printMoney(money.low)} and {printMoney(money.high)}; likely{' '}
        {printMoney(money.expected)}. All amounts are in {currencyWords[house.currency] ?? house.currency}.
      </p>
      <RangeChart money={money} />
      <Waterfall steps={foldedSteps(view)} />
      <BlocksHtml blocks={[steps, forecast, totals, rules]} links={placeLinks(view, path)} cards />
      <p>
        <PageLink to={pagePaths.numbers} class="onward">
          How quantities and money are computed
        </PageLink>
      </p>
    </>
  );
}

/** Each allowance with its bar and its figures to tick; then invoices, and how old the prices are. */
export function AllowancesPage(): VNode {
  const { view, path } = useSheet();
  const { money } = view.book;
  const { allowances, ledgers, invoices, quotes } = moneySections(view);
  const links = placeLinks(view, path);
  return (
    <>
      <h1>Allowances</h1>
      <BlocksHtml blocks={allowances.of} links={links} cards />
      {ledgers.map((ledger, index) => (
        <Ledger ledger={ledger} entry={money.allowances[index]} />
      ))}
      <BlocksHtml blocks={[...invoices, quotes]} links={links} cards />
    </>
  );
}

/** What choices beside the allowances add and take off. */
export function UpgradesPage(): VNode {
  const { view, path } = useSheet();
  const { upgrades } = moneySections(view);
  return (
    <>
      <h1>{upgrades.title}</h1>
      <BlocksHtml blocks={upgrades.of} links={placeLinks(view, path)} cards />
    </>
  );
}

const currencyWords: Readonly<Record<string, string>> = {
  USD: 'US dollars',
  CAD: 'Canadian dollars',
  AUD: 'Australian dollars',
  NZD: 'New Zealand dollars',
};

/** One allowance: its bar and where it stands; its tables open in place. */
function Ledger({
  ledger: { id, title, of },
  entry,
}: {
  ledger: ReturnType<typeof moneySections>['ledgers'][number];
  entry: LedgerEntry | undefined;
}): VNode {
  const { view, path } = useSheet();
  return (
    <details class="ledger" id={id}>
      <summary>
        <h2 id={`${id}-title`}>{title}</h2>
        {entry && (
          <>
            <span class="why">
              {printMoney(entry.committed)} of {printMoney(entry.amount)}
              {entry.openHigh > 0 && `, ${printMoney(entry.openLow)} to ${printMoney(entry.openHigh)} open`}
            </span>
            <AllowanceLine entry={entry} most={mostOf(view.book.money.allowances)} />
          </>
        )}
      </summary>
      <BlocksHtml blocks={of} links={placeLinks(view, path)} level={3} />
    </details>
  );
}
