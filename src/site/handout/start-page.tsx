import type { VNode } from 'preact';
import { reachWords } from '../../handout/index.js';
import { capital, printDay, shortDigest } from '../../base/units/index.js';
import { cautionWords } from '../../core/caution/index.js';
import { CellHtml, TableHtml } from '../../write/index.js';
import { Facts } from '../parts/facts.js';
import { Prose } from '../parts/prose.js';
import { counted } from '../parts/words.js';
import { useHandout, useHandoutLink, usePlaceLinks } from './context.js';
import { TradeLevels } from './levels.js';
import { roomPath } from './paths.js';

/** Cover, what changed, rooms, scope, order of work, other trades, questions, cautions. */
export function StartPage(): VNode {
  const { cover } = useHandout();
  const { stamp } = cover;
  return (
    <>
      <h1>{cover.trade.name}</h1>
      <p class="lead">
        {cover.house}, {cover.place}. For: {cover.trade.contact}.
      </p>
      <Facts
        class="cover-facts"
        facts={[
          { label: 'Issue', value: stamp ? `${stamp.number}, for ${stamp.purpose}` : 'Not issued' },
          { label: stamp ? 'Date' : 'Records of', value: printDay(stamp?.date ?? cover.on) },
          {
            label: 'Digest',
            value: stamp ? <abbr title={stamp.digest}>{shortDigest(stamp.digest)}</abbr> : 'none',
          },
          { label: 'Sections', value: cover.sections.map(({ number }) => number).join(', ') },
          ...cover.people.map((person) => ({ label: capital(person.role), value: reachWords(person) })),
        ]}
      />
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

function Changes(): VNode {
  const { changes } = useHandout();
  return (
    <section aria-labelledby="changes-title">
      <h2 id="changes-title">Changed for this trade</h2>
      {!changes && <p>This is the first issue for this trade, or there is none to compare with.</p>}
      {changes && (
        <>
          <p class="why">
            Since issue {changes.since.number} of {printDay(changes.since.date)}.
          </p>
          {changes.rooms.length + changes.products.length === 0 && <p>Nothing changed for this trade.</p>}
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
        </>
      )}
    </section>
  );
}

function Rooms(): VNode {
  const { rooms } = useHandout();
  const link = useHandoutLink();
  return (
    <section aria-labelledby="rooms-title">
      <h2 id="rooms-title">Rooms in order of work</h2>
      {rooms.length === 0 && <p>No room has work for this trade yet.</p>}
      <TradeLevels />
      <ol class="room-list">
        {rooms.map((room) => {
          const open = room.places.filter(({ when }) => when !== '').length;
          return (
            <li>
              <a href={link(roomPath(room))}>
                <span class="mark">{room.number}</span> {room.name}
                {open > 0 && <small>{open} open</small>}
              </a>
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function Scope(): VNode {
  const { scope } = useHandout();
  return (
    <section aria-labelledby="scope-title">
      <h2 id="scope-title">Scope</h2>
      <div class="two">
        <div>
          <h3>In your scope</h3>
          <List items={scope.in} />
        </div>
        <div>
          <h3>Not in your scope</h3>
          <List items={scope.out} />
        </div>
        <div>
          <h3>Needs to know before the start</h3>
          <List items={scope.needsToKnow} />
        </div>
      </div>
      <Prose text={scope.notes} />
    </section>
  );
}

function Steps(): VNode {
  const { steps } = useHandout();
  const links = usePlaceLinks();
  return (
    <section aria-labelledby="steps-title">
      <h2 id="steps-title">Order of work</h2>
      <TableHtml table={steps} links={links} />
    </section>
  );
}

function OtherTrades(): VNode {
  const { leftForYou, leftByYou } = useHandout();
  const links = usePlaceLinks();
  return (
    <section aria-labelledby="trades-title">
      <h2 id="trades-title">With other trades</h2>
      {[leftForYou, leftByYou].map((table) =>
        table.groups.length > 0 ? (
          <TableHtml table={table} links={links} />
        ) : (
          <p>{table.caption}: nothing is recorded.</p>
        ),
      )}
    </section>
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
      {questions.map(({ where, about, status, when, question, reason, options }) => (
        <div class="place">
          <h3>
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
      {cautions.map(({ title, room, place, seen, says, source, ask, accepted }) => (
        <div class="caution">
          <h3>
            {title}: {room}, {place}
          </h3>
          <p>
            {seen} {says} <span class="why">{source}.</span>
          </p>
          <p>
            <strong>
              {cautionWords.ask} {ask}.
            </strong>
          </p>
          {accepted !== '' && <p class="why">{accepted}</p>}
        </div>
      ))}
    </section>
  );
}

function List({ items }: { items: readonly string[] }): VNode {
  if (items.length === 0) return <p>Nothing is recorded.</p>;
  return (
    <ul class="plain-list">
      {items.map((item) => (
        <li>{item}</li>
      ))}
    </ul>
  );
}
