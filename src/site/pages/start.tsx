import type { VNode } from 'preact';
import { lastIssue, picturedRoom } from '../../core/book/index.js';
import type { ContractStep } from '../../core/price/index.js';
import { capital, printMoney, printMoneyChange, type Cents } from '../../base/units/index.js';
import { AllowanceTable } from '../parts/allowance-table.js';
import { Facts } from '../parts/facts.js';
import { HousePlans } from '../parts/house-plans.js';
import { PageLink } from '../parts/link.js';
import { FilePicture } from '../parts/picture.js';
import { Prose } from '../parts/prose.js';
import { RangeChart } from '../parts/range-chart.js';
import { dueNext, needsALook, rangeWords } from '../../table/index.js';
import { anchorOf, pagePaths, roomPath } from '../paths.js';
import { todayPicture } from '../pictures.js';
import { useView } from '../sheet-context.js';
import { DueNext, Headline } from './due-next.js';

/** The answer first: what to decide, by when, and what it moves. Beside it where the money stands, the rooms, and what needs a look. */
export function StartPage(): VNode {
  const view = useView();
  const { book, levels } = view;
  const { house } = book;
  const due = dueNext(view);
  return (
    <div class="start">
      <div class="start-main">
        <Headline due={due} />
        {due && <DueNext due={due} />}
      </div>
      <div class="start-beside">
        <MoneyToday />
        <section aria-labelledby="rooms-title">
          <h2 id="rooms-title">
            <PageLink to={pagePaths.house}>Rooms</PageLink>
          </h2>
          <HousePlans levels={levels} />
        </section>
        <NeedsALook />
      </div>
      <AllowanceTable />
      <section class="start-house" aria-labelledby="house-title">
        <h2 id="house-title">{house.name}</h2>
        <HousePicture />
        <Facts
          facts={[
            { label: 'Place', value: house.place },
            { label: 'Job', value: house.number },
            house.climateZone !== undefined && { label: 'Climate zone', value: house.climateZone },
            ...house.people.map((person) => ({ label: capital(person.role), value: person.name })),
          ]}
        />
        {house.body.trim() !== '' && (
          <details>
            <summary>About this house</summary>
            <Prose text={house.body} />
          </details>
        )}
      </section>
    </div>
  );
}

/** One room as it will look, which leads to its page. */
function HousePicture(): VNode | null {
  const view = useView();
  const room = picturedRoom(view.book);
  if (!room) return null;
  return (
    <div class="cover-picture">
      <PageLink to={roomPath(room)}>
        <FilePicture picture={todayPicture(room, view)} alt="">
          {view.roomTitle(room.slug)}, as it will look
        </FilePicture>
      </PageLink>
      <p class="why">A drawing, not the sample.</p>
    </div>
  );
}

/** The total, where it may still go, and how it came from the contract. */
function MoneyToday(): VNode {
  const { book } = useView();
  const { money, alternatives } = book;
  const last = money.agreed.steps.length - 1;
  return (
    <section aria-labelledby="money-title">
      <h2 id="money-title">
        <PageLink to={pagePaths.money}>Where the money stands</PageLink>
      </h2>
      <p class="total">
        <span class="for-the-ear">Total today </span>
        {printMoney(money.today, 'always')}
      </p>
      <RangeChart money={money} />
      <dl class="sums">
        {money.agreed.steps.map((step, index) => (
          <div class={index === last ? 'sum' : undefined}>
            <dt>{stepName(step)}</dt>
            <dd>
              {step.kind === 'contract' || step.kind === 'total'
                ? printMoney(step.amount, 'always')
                : printMoneyChange(step.amount, 'always')}
            </dd>
          </div>
        ))}
        {(money.low !== money.today || money.high !== money.today) && (
          <div>
            <dt>What is open moves it by</dt>
            <dd>
              {rangeWords({
                low: (money.low - money.today) as Cents,
                high: (money.high - money.today) as Cents,
              })}
            </dd>
          </div>
        )}
        {money.ownerPurchases !== 0 && (
          <div>
            <dt>Bought by the owners besides</dt>
            <dd>{printMoney(money.ownerPurchases, 'always')}</dd>
          </div>
        )}
        {alternatives.map(({ slug, name, change }) => (
          <div>
            <dt>
              As <PageLink to={`${pagePaths.alternatives}#${anchorOf('alternative', slug)}`}>{name}</PageLink>
            </dt>
            <dd>{printMoneyChange(change, 'always')}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

/** `Change order 1`, its purpose left to the page of change orders. */
function stepName({ what, kind }: ContractStep): VNode {
  if (kind !== 'change-order') return <>{what}</>;
  return <PageLink to={pagePaths.agreed}>{what.split(':')[0]}</PageLink>;
}

const lookPaths = {
  scope: pagePaths.scope,
  cautions: pagePaths.cautions,
  prices: `${pagePaths.allowances}#age-of-prices-title`,
  agreed: pagePaths.agreed,
} as const;

/** How many there are of what somebody should look at, and the way there. */
function NeedsALook(): VNode | null {
  const view = useView();
  const { book, beside } = view;
  const counts = needsALook(view);
  const issue = lastIssue(book);
  if (counts.length === 0 && beside.comparison === undefined) return null;
  return (
    <section aria-labelledby="look-title">
      <h2 id="look-title">Needs a look</h2>
      <ul class="look-list">
        {counts.map(({ count, what, of, where }) => (
          <li>
            <span class="figure">{count}</span>
            <span>
              <PageLink to={lookPaths[where]}>{what}</PageLink>
              {of !== '' && `: ${of}`}
            </span>
          </li>
        ))}
        {issue && beside.comparison !== undefined && (
          <li>
            <span class="figure" />
            <span>
              <a href={beside.comparison}>What changed since issue {issue.number}</a>
            </span>
          </li>
        )}
      </ul>
    </section>
  );
}
