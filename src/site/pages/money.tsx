import type { VNode } from 'preact';
import type { ContractStep } from '../../price/index.js';
import { joinWords, printMoney, printPercent } from '../../units/index.js';
import type { Cents } from '../../units/index.js';
import { AllowanceLedger } from '../parts/allowance-ledger.js';
import { Facts } from '../parts/facts.js';
import { ForecastTable } from '../parts/forecast-table.js';
import { PageLink, RoomLink } from '../parts/link.js';
import { RangeChart } from '../parts/range-chart.js';
import { StepTable } from '../parts/step-table.js';
import { TotalTable } from '../parts/total-table.js';
import { UpgradeTable } from '../parts/upgrade-table.js';
import { counted } from '../parts/words.js';
import { anchorOf, pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';

export function MoneyPage(): VNode {
  const view = useView();
  const { money, house } = view.book;
  const shared = money.steps.find(({ kind }) => kind === 'shared-packs');
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
          <li>
            <a href="#steps-title">Step by step</a>
          </li>
          <li>
            <a href="#forecast-title">Where it can end</a>
          </li>
          <li>
            <a href="#allowances-title">Allowances</a>
          </li>
          <li>
            <a href="#upgrades-title">Upgrades and credits</a>
          </li>
          <li>
            <a href="#totals-title">Totals</a>
          </li>
          <li>
            <a href="#rules-title">Rules of the contract</a>
          </li>
        </ul>
      </nav>
      <section aria-labelledby="steps-title">
        <h2 id="steps-title">From the contract sum to today</h2>
        <ContractSteps steps={money.steps} />
      </section>
      <section aria-labelledby="forecast-title">
        <h2 id="forecast-title">Where it can end</h2>
        <ForecastTable />
      </section>
      <section aria-labelledby="allowances-title">
        <h2 id="allowances-title">Allowances</h2>
        {money.allowances.map((entry) => (
          <AllowanceLedger entry={entry} />
        ))}
      </section>
      <section aria-labelledby="upgrades-title">
        <h2 id="upgrades-title">Upgrades and credits</h2>
        <p>
          Chosen less standard is the difference; with the mark-up, or less what does not return, it is the change.
          Upgrades add {printMoney(money.upgrades, 'always')}, credits take off{' '}
          {printMoney(Math.abs(money.credits) as Cents, 'always')}.
        </p>
        <UpgradeTable />
        {shared && (
          <p class="after-table">
            Besides, {shared.what.toLowerCase()} {shared.amount > 0 ? 'add' : 'take off'}{' '}
            {printMoney(Math.abs(shared.amount) as Cents, 'always')}: {shared.why}.
          </p>
        )}
      </section>
      <section aria-labelledby="totals-title">
        <h2 id="totals-title">Totals</h2>
        <p>
          Three ways to cut the same sum. Each adds up to {printMoney(money.finishes.total, 'always')}; the changes are
          those of upgrades and credits, beside the allowances.
        </p>
        <TotalTable id="by-room" caption="By room" totals={money.byRoom} name={(slug) => <RoomName slug={slug} />} />
        <TotalTable
          id="by-trade"
          caption="By trade"
          totals={money.byTrade}
          name={(slug) => (
            <PageLink to={`${pagePaths.quantities}#${anchorOf('trade', slug)}`}>{view.trade(slug)?.name}</PageLink>
          )}
        />
        <TotalTable
          id="by-category"
          caption="By category"
          totals={money.byCategory}
          name={(slug) => view.category(slug)?.name}
        />
      </section>
      <Rules />
    </>
  );
}

const currencyWords: Readonly<Record<string, string>> = {
  USD: 'US dollars',
  CAD: 'Canadian dollars',
  AUD: 'Australian dollars',
  NZD: 'New Zealand dollars',
};

/** Choices are one step here: the table of upgrades and credits has each of them, and the same sum at its foot. */
function ContractSteps({ steps }: { steps: readonly ContractStep[] }): VNode {
  const { money, selections } = useView().book;
  const isChoice = ({ kind }: ContractStep) => kind === 'upgrade' || kind === 'credit';
  const last = steps.findLast(isChoice);
  const choices = selections.filter(({ change }) => change !== 0).length;
  const rows = steps.flatMap((step): ContractStep[] => {
    if (!isChoice(step)) return [step];
    if (step !== last) return [];
    const what = `Upgrades less credits: ${counted(choices, 'choice')}`;
    return [{ what, kind: 'upgrade', amount: money.net, running: step.running, why: 'each of them below, by room' }];
  });
  return <StepTable id="steps" caption="Each step and the running total" steps={rows} />;
}

function RoomName({ slug }: { slug: string }): VNode {
  const room = useView().room(slug);
  return room ? <RoomLink room={room} /> : <>{slug}</>;
}

function Rules(): VNode {
  const { money } = useView().book;
  return (
    <section aria-labelledby="rules-title">
      <h2 id="rules-title">Rules of the contract</h2>
      <Facts
        facts={[
          { label: 'Sales tax', value: `${printPercent(money.tax.rate)} of ${joinWords(money.tax.on)}` },
          { label: 'Mark-up on what goes over', value: printPercent(money.overageMarkup) },
          {
            label: 'Returned of what stays under',
            value: `${printPercent(money.creditReturns)}, ${money.creditMarkup ? 'with' : 'without'} mark-up`,
          },
          {
            label: 'Installing what the owner furnishes',
            value: money.ownerFurnishedInstall === 'contract' ? 'in the contract' : 'paid by the owner',
          },
          { label: 'Contingency', value: printMoney(money.contingency) },
          { label: 'Rounding', value: money.rounding },
        ]}
      />
      <p>
        <PageLink to={pagePaths.numbers} class="onward">
          How quantities and money are computed
        </PageLink>
      </p>
    </section>
  );
}
