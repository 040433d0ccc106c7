import type { ComponentChildren, VNode } from 'preact';
import { printDay } from '../../base/units/index.js';
import { cardWords } from '../../handout/index.js';
import { CellHtml, TableHtml } from '../../write/index.js';
import { Prose } from '../parts/prose.js';
import { counted } from '../parts/words.js';
import { AllRooms, ForemansCard } from './card.js';
import { Caution } from './cautions.js';
import { useHandout, usePlaceLinks } from './context.js';
import { TradeLevels } from './levels.js';

/** The foreman's card, then what changed, rooms, scope, order of work, other trades, questions, cautions. */
export function StartPage(): VNode {
  const { cover } = useHandout();
  return (
    <>
      <header class="card-head">
        <h1>{cover.trade.name}</h1>
        <p class="why">
          {cover.house}, job {cover.job}, {cover.place}. For: {cover.trade.contact}.
        </p>
      </header>
      <ForemansCard />
      <Changes />
      <Rooms />
      <Scope />
      <Steps />
      <OtherTrades />
      <Questions />
      <Cautions />
    </>
  );
}

/** Nothing is said where there is no issue to compare with. */
function Changes(): VNode | null {
  const { changes } = useHandout();
  if (!changes) return null;
  const since = `issue ${changes.since.number} of ${printDay(changes.since.date)}`;
  return (
    <section aria-labelledby="changes-title">
      <h2 id="changes-title">Changed for this trade</h2>
      {changes.rooms.length + changes.products.length === 0 && <p>Nothing since {since}.</p>}
      {changes.rooms.length + changes.products.length > 0 && <p class="why">Since {since}.</p>}
      {changes.rooms.map(({ room, lines }) => (
        <>
          <h3>{room}</h3>
          <ul class="plain-list">
            {lines.map(({ what, lines: said }) => (
              <li>
                {what}: {said.join('; ')}
              </li>
            ))}
          </ul>
        </>
      ))}
      {changes.products.map(({ name, lines }) => (
        <>
          <h3>{name}</h3>
          <List items={lines} />
        </>
      ))}
    </section>
  );
}

/** Where they lie; those that the card has no room for as well. */
function Rooms(): VNode | null {
  const handout = useHandout();
  if (handout.card.rooms.length === 0) return null;
  const isLong = cardWords(handout).rooms.all !== '';
  return (
    <section aria-labelledby="rooms-title">
      <h2 id="rooms-title">{isLong ? 'All rooms, the next first' : 'Where you work'}</h2>
      <TradeLevels />
      {isLong && <AllRooms />}
    </section>
  );
}

function Scope(): VNode {
  const { scope, cover } = useHandout();
  const parts = [
    { title: 'In your scope', items: scope.in },
    { title: 'Not in your scope', items: scope.out },
    { title: 'Needs to know before the start', items: scope.needsToKnow },
  ].filter(({ items }) => items.length > 0);
  return (
    <Folded id="scope" title="Scope">
      <p class="why">Sections {cover.sections.map(({ number }) => number).join(', ')}.</p>
      <div class="two">
        {parts.map(({ title, items }) => (
          <div>
            <h3>{title}</h3>
            <List items={items} />
          </div>
        ))}
      </div>
      <Prose text={scope.notes} />
    </Folded>
  );
}

function Steps(): VNode {
  const { steps } = useHandout();
  const links = usePlaceLinks();
  return (
    <Folded id="order" title="Order of work">
      <TableHtml table={steps} links={links} cards />
    </Folded>
  );
}

function OtherTrades(): VNode {
  const { leftForYou, leftByYou } = useHandout();
  const links = usePlaceLinks();
  return (
    <Folded id="trades" title="With other trades">
      {[leftForYou, leftByYou].map((table) =>
        table.groups.length > 0 ? (
          <TableHtml table={table} links={links} cards />
        ) : (
          <p>{table.caption}: nothing is recorded.</p>
        ),
      )}
    </Folded>
  );
}

/** What is looked up: one line on a phone, open where the screen is wide (assets/handout.js). */
function Folded({ id, title, children }: { id: string; title: string; children: ComponentChildren }): VNode {
  return (
    <details id={id} class="folded" data-open-when-wide="">
      <summary>
        <h2>{title}</h2>
      </summary>
      {children}
    </details>
  );
}

function Questions(): VNode {
  const { questions } = useHandout();
  const links = usePlaceLinks();
  return (
    <section aria-labelledby="questions-title">
      <h2 id="questions-title">Questions open</h2>
      {questions.length === 0 && <p>Nothing is open for this trade.</p>}
      {questions.length > 0 && <p class="why">{counted(questions.length, 'question')}, by the day of its answer.</p>}
      {questions.map(({ where, about, status, when, question, reason, options }, index) => (
        <div class="place">
          <h3 id={`question-${index + 1}`}>
            {about}: {where}
          </h3>
          <p>
            {when !== '' && (
              <>
                <CellHtml cell={{ is: 'status', status }} links={links} /> <strong>{when}. </strong>
              </>
            )}
            {question}
          </p>
          {options.length > 0 && (
            <ul class="plain-list">
              {options.map((option) => (
                <li>
                  <CellHtml cell={option} links={links} />
                </li>
              ))}
            </ul>
          )}
          {reason !== '' && <p class="why">{reason}</p>}
        </div>
      ))}
    </section>
  );
}

function Cautions(): VNode | null {
  const { cautions } = useHandout();
  if (cautions.length === 0) return null;
  return (
    <section aria-labelledby="cautions-title">
      <h2 id="cautions-title">Cautions</h2>
      {cautions.map((caution) => (
        <Caution caution={caution} where={`${caution.room}, ${caution.place}`} />
      ))}
    </section>
  );
}

function List({ items }: { items: readonly string[] }): VNode {
  return (
    <ul class="plain-list">
      {items.map((item) => (
        <li>{item}</li>
      ))}
    </ul>
  );
}
