import type { VNode } from 'preact';
import type { LedgerEntry } from '../../core/price/index.js';
import { moneySections } from '../../table/index.js';
import { printMoney } from '../../base/units/index.js';
import { BlocksHtml } from '../../write/index.js';
import { AllowanceBar } from '../parts/allowance-bar.js';
import { PageLink } from '../parts/link.js';
import { RangeChart } from '../parts/range-chart.js';
import { pagePaths } from '../paths.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';

/** All sections of the money, with a chart above and a bar at each allowance. */
export function MoneyPage(): VNode {
  const { view, path } = useSheet();
  const { money, house } = view.book;
  const sections = moneySections(view);
  const { steps, forecast, allowances, ledgers, invoices, quotes, upgrades, totals, rules } = sections;
  const links = placeLinks(view, path);
  return (
    <>
      <h1>Money</h1>
      <p class="lead">
        Total today {printMoney(money.today)}, against a contract sum of {printMoney(money.contractSum)}. With what is
        still open it will be between {printMoney(money.low)} and {printMoney(money.high)}; likely{' '}
        {printMoney(money.expected)}. All amounts are in {currencyWords[house.currency] ?? house.currency}.
      </p>
      <RangeChart money={money} />
      <nav class="in-page" aria-label="On this sheet">
        <ul>
          {[steps, forecast, allowances, ...invoices, quotes, upgrades, totals, rules].map(({ id, title }) => (
            <li>
              <a href={`#${id}-title`}>{title}</a>
            </li>
          ))}
        </ul>
      </nav>
      <BlocksHtml blocks={[steps, forecast, allowances]} links={links} />
      {ledgers.map((ledger, index) => (
        <Ledger ledger={ledger} entry={money.allowances[index]} />
      ))}
      <BlocksHtml blocks={[...invoices, quotes, upgrades, totals, rules]} links={links} />
      <p>
        <PageLink to={pagePaths.numbers} class="onward">
          How quantities and money are computed
        </PageLink>
      </p>
    </>
  );
}

const currencyWords: Readonly<Record<string, string>> = {
  USD: 'US dollars',
  CAD: 'Canadian dollars',
  AUD: 'Australian dollars',
  NZD: 'New Zealand dollars',
};

/** One allowance, its bar above its tables. */
function Ledger({
  ledger: { id, title, of },
  entry,
}: {
  ledger: ReturnType<typeof moneySections>['ledgers'][number];
  entry: LedgerEntry | undefined;
}): VNode {
  const { view, path } = useSheet();
  return (
    <article class="ledger" id={id} aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{title}</h3>
      {entry && <AllowanceBar entry={entry} />}
      <BlocksHtml blocks={of} links={placeLinks(view, path)} level={4} />
    </article>
  );
}
