import type { VNode } from 'preact';
import type { ContractStep } from '../../price/index.js';
import { printMoney, printPercent } from '../../units/index.js';
import { AllowanceLedger } from '../parts/allowance-ledger.js';
import { DataTable } from '../parts/data-table.js';
import { Facts } from '../parts/facts.js';
import { MoneyCell } from '../parts/figures.js';
import { PageLink, RoomLink } from '../parts/link.js';
import { RangeChart } from '../parts/range-chart.js';
import { StepName, StepTable, stepWords } from '../parts/step-table.js';
import { TotalTable } from '../parts/total-table.js';
import { joinWords } from '../parts/words.js';
import { anchorOf, pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';

export function MoneyPage(): VNode {
  const view = useView();
  const { money } = view.book;
  const changes = money.steps.filter(
    (step) => step.kind !== 'contract' && step.kind !== 'allowance' && step.kind !== 'total',
  );
  return (
    <>
      <h1>Money</h1>
      <p class="lead">
        Total today {printMoney(money.today)}, against a contract sum of {printMoney(money.contractSum)}. With what is
        still open it will be between {printMoney(money.low)} and {printMoney(money.high)}.
      </p>
      <RangeChart money={money} />
      <nav class="in-page" aria-label="On this sheet">
        <ul>
          <li>
            <a href="#steps-title">Step by step</a>
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
        <StepTable id="steps" caption="Each step and the running total" steps={money.steps} />
      </section>
      <section aria-labelledby="allowances-title">
        <h2 id="allowances-title">Allowances</h2>
        {money.allowances.map((entry) => (
          <AllowanceLedger entry={entry} />
        ))}
      </section>
      <section aria-labelledby="upgrades-title">
        <h2 id="upgrades-title">Upgrades and credits</h2>
        {changes.length === 0 ? (
          <p>No choice outside the allowances changes the contract.</p>
        ) : (
          <UpgradeTable steps={changes} />
        )}
      </section>
      <section aria-labelledby="totals-title">
        <h2 id="totals-title">Totals</h2>
        <p>Three ways to cut the same sum. Each adds up to {printMoney(money.finishes.total, 'always')}.</p>
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

function UpgradeTable({ steps }: { steps: readonly ContractStep[] }): VNode {
  return (
    <DataTable
      id="upgrades"
      caption="Choices that change the contract outside the allowances"
      quietCaption
      rows={steps}
      columns={[
        { head: 'Choice', names: true, cell: (step) => <StepName step={step} /> },
        { head: 'Kind', cell: (step) => stepWords[step.kind] },
        { head: 'Change', numeric: true, cell: (step) => <MoneyCell cents={step.amount} change /> },
      ]}
    />
  );
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
