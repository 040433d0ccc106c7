import type { VNode } from 'preact';
import { picturedRoom, lastIssue } from '../../core/book/index.js';
import { cautionWords, countWords } from '../../core/caution/index.js';
import { changeWords } from '../../sheet/index.js';
import { capital, lower, printMoney, printMoneyChange, type Cents } from '../../base/units/index.js';
import { AllowanceBar } from '../parts/allowance-bar.js';
import { Swatch } from '../parts/drawing.js';
import { Facts } from '../parts/facts.js';
import { Day } from '../parts/figures.js';
import { PageLink, SelectionLink } from '../parts/link.js';
import { FilePicture } from '../parts/picture.js';
import { Prose } from '../parts/prose.js';
import { RangeChart } from '../parts/range-chart.js';
import { RoomGrid } from '../parts/room-grid.js';
import { counted } from '../parts/words.js';
import { placesOf } from '../../table/index.js';
import { DueNext } from './due-next.js';
import { anchorOf, pagePaths, roomPath } from '../paths.js';
import { todayPicture } from '../pictures.js';
import { useView } from '../sheet-context.js';

const shown = { recent: 6 };

export function StartPage(): VNode {
  const { book } = useView();
  const { house } = book;
  const open = book.selections.filter((selection) => selection.state === 'open');
  return (
    <>
      <header class="cover">
        <div class="cover-words">
          <p class="cover-kind">Selections and specification book</p>
          <h1>{house.name}</h1>
          <p class="cover-place">{house.place}</p>
          <Facts
            class="cover-facts"
            facts={[
              { label: 'Job', value: house.number },
              { label: 'Computed for', value: <Day day={book.on} /> },
              house.climateZone !== undefined && { label: 'Climate zone', value: house.climateZone },
              ...house.people.map((person) => ({ label: capital(person.role), value: person.name })),
            ]}
          />
          <Onward />
        </div>
        <HousePicture />
      </header>
      <MoneyToday open={open.length} />
      <DueNext open={open} />
      <CautionCount />
      <AllowancesAtAGlance />
      <RecentChoices />
      <section class="start-rooms" aria-labelledby="rooms-title">
        <h2 id="rooms-title">Rooms</h2>
        <RoomGrid heading="h3" />
      </section>
      {house.body.trim() !== '' && (
        <section aria-labelledby="house-notes">
          <h2 id="house-notes">About this house</h2>
          <Prose text={house.body} />
        </section>
      )}
    </>
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

/** The same book on paper, and what changed since people last agreed. */
function Onward(): VNode | null {
  const { book, beside } = useView();
  const last = lastIssue(book);
  if (!last && beside.pdf === undefined) return null;
  return (
    <ul class="plain-list cover-links">
      {last && beside.comparison !== undefined && (
        <li>
          <a href={beside.comparison} class="onward">
            What changed since issue {last.number}
          </a>
        </li>
      )}
      {last && (
        <li>
          <PageLink to={pagePaths.agreed} class="onward">
            Issues and change orders
          </PageLink>
        </li>
      )}
      {beside.pdf !== undefined && (
        <li>
          <a href={beside.pdf} class="onward">
            The book to print and sign (PDF)
          </a>
        </li>
      )}
    </ul>
  );
}

function MoneyToday({ open }: { open: number }): VNode {
  const { money } = useView().book;
  const change = (money.today - money.contractSum) as Cents;
  return (
    <section class="money-today" aria-labelledby="money-title">
      <h2 id="money-title">Where the money stands</h2>
      <div class="money-figures">
        <p class="money-total">
          <span class="label">Total today</span>
          <strong>{printMoney(money.today)}</strong>
        </p>
        <Facts
          class="money-facts"
          facts={[
            { label: 'Contract sum', value: printMoney(money.contractSum) },
            { label: 'Change by choices made', value: printMoneyChange(change) },
            open > 0 && {
              label: `With ${counted(open, 'open choice')}`,
              value:
                money.low === money.high
                  ? printMoney(money.high)
                  : `${printMoney(money.low)} to ${printMoney(money.high)}`,
            },
            money.ownerPurchases !== 0 && {
              label: 'Bought by the owners besides',
              value: printMoney(money.ownerPurchases),
            },
          ]}
        />
      </div>
      <RangeChart money={money} />
      <AlternativesBeside />
      <p>
        <PageLink to={pagePaths.money} class="onward">
          Every step from the contract sum to today
        </PageLink>
      </p>
    </section>
  );
}

/** What sets of choices would make of the total. */
function AlternativesBeside(): VNode | null {
  const { alternatives } = useView().book;
  if (alternatives.length === 0) return null;
  return (
    <ul class="plain-list">
      {alternatives.map(({ slug, name, total, change }) => (
        <li>
          <PageLink to={`${pagePaths.alternatives}#${anchorOf('alternative', slug)}`}>{name}</PageLink>:{' '}
          {printMoney(total)}, {printMoneyChange(change)} against today, as an alternative
        </li>
      ))}
    </ul>
  );
}

function CautionCount(): VNode {
  const { cautions } = useView().book;
  return (
    <section aria-labelledby="cautions-title">
      <h2 id="cautions-title">{cautionWords.title}</h2>
      <p>{cautions.length === 0 ? cautionWords.none : `${countWords(cautions)}. ${cautionWords.lead}`}</p>
      <p>
        <PageLink to={pagePaths.cautions} class="onward">
          The register, by room and by kind
        </PageLink>
      </p>
    </section>
  );
}

function AllowancesAtAGlance(): VNode | null {
  const { allowances } = useView().book.money;
  if (allowances.length === 0) return null;
  return (
    <section class="allowances" aria-labelledby="allowances-title">
      <h2 id="allowances-title">Allowances</h2>
      <ul class="allowance-list">
        {allowances.map((entry) => (
          <li>
            <p class="allowance-name">
              <PageLink to={`${pagePaths.money}#${anchorOf('allowance', entry.id)}`}>{entry.name}</PageLink>
            </p>
            <AllowanceBar entry={entry} />
            <p class="allowance-words">
              {printMoney(entry.committed)} of {printMoney(entry.amount)}
              {entry.balance < 0 ? (
                <strong>, {printMoney(entry.overage)} over</strong>
              ) : (
                `, ${printMoney(entry.balance)} left`
              )}
              {entry.openHigh > 0 && `; ${printMoney(entry.openLow)} to ${printMoney(entry.openHigh)} open`}
            </p>
          </li>
        ))}
      </ul>
      <p class="bar-key">
        <span class="key-mark key-committed" /> drawn <span class="key-mark key-open" /> open, cheapest to dearest{' '}
        <span class="key-mark key-amount" /> the allowance <span class="key-mark key-over" /> over it
      </p>
    </section>
  );
}

function RecentChoices(): VNode | null {
  const view = useView();
  const recent = view.book.selections
    .filter((selection) => selection.chosenOn !== undefined && selection.counted !== undefined)
    .sort((a, b) => ((a.chosenOn ?? '') < (b.chosenOn ?? '') ? 1 : (a.chosenOn ?? '') > (b.chosenOn ?? '') ? -1 : 0))
    .slice(0, shown.recent);
  if (recent.length === 0) return null;
  return (
    <section class="recent" aria-labelledby="recent-title">
      <h2 id="recent-title">Chosen lately</h2>
      <ul class="recent-list">
        {recent.map((selection) => {
          const option = view.option(selection.category, selection.counted);
          return (
            <li>
              {option && <Swatch option={option} size="small" />}
              <div>
                <p class="recent-name">
                  <SelectionLink selection={selection}>{option?.name}</SelectionLink>
                </p>
                <p>
                  {view.room(selection.room)?.name}, {lower(placesOf(selection))}
                </p>
                <p class="why">
                  {selection.chosenOn !== undefined && <Day day={selection.chosenOn} />}
                  {selection.chosenBy !== undefined && `, ${selection.chosenBy}`}
                </p>
              </div>
              <p class="recent-change">{changeWords(selection.change)}</p>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
