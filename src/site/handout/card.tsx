import type { VNode } from 'preact';
import { cardWords, nextRoomWords, type CardWords, type NextRoomWords } from '../../handout/index.js';
import { CellHtml } from '../../write/index.js';
import { useHandout, useHandoutLink } from './context.js';
import { roomPath } from './paths.js';

/** What a foreman asks first: where next, what must be there, what is open, whom to ask. */
export function ForemansCard(): VNode {
  const words = cardWords(useHandout());
  return (
    <div class="card">
      <Next {...words} />
      <First {...words} />
      <Open {...words} />
      <Ask {...words} />
    </div>
  );
}

function Next({ rooms: { title, none, rows, all } }: CardWords): VNode {
  return (
    <section aria-labelledby="next-title">
      <h2 id="next-title">{title}</h2>
      {rows.length === 0 && <p>{none}</p>}
      <ol class="room-list">
        {rows.map((row) => (
          <NextRoom {...row} />
        ))}
      </ol>
      <More to="rooms-title" all={all} />
    </section>
  );
}

/** Every room, with its next work. */
export function AllRooms(): VNode {
  return (
    <ol class="room-list all-rooms">
      {useHandout()
        .card.rooms.map(nextRoomWords)
        .map((row) => (
          <NextRoom {...row} />
        ))}
    </ol>
  );
}

/** A room with its next work, as a way to its page. */
function NextRoom({ room, day, work }: NextRoomWords): VNode {
  const link = useHandoutLink();
  return (
    <li>
      <a href={link(roomPath(room))}>
        <span>
          <span class="mark">{room.number}</span> {room.name}
        </span>
        <small>
          <strong>{day}</strong> {work}
        </small>
      </a>
    </li>
  );
}

function First({ first: { title, none, rows, all } }: CardWords): VNode {
  return (
    <section aria-labelledby="first-title">
      <h2 id="first-title">{title}</h2>
      {rows.length === 0 && <p>{none}</p>}
      <ul class="card-list">
        {rows.map(({ what, when }) => (
          <li>
            <strong>{what}</strong>
            <small>{when}</small>
          </li>
        ))}
      </ul>
      <More to="trades" all={all} />
    </section>
  );
}

function Open({ open: { title, none, rows, all } }: CardWords): VNode {
  return (
    <section aria-labelledby="open-title">
      <h2 id="open-title">{title}</h2>
      {rows.length === 0 && <p>{none}</p>}
      <ul class="card-list">
        {rows.map(({ question: { status, when }, what, possible }, index) => (
          <li>
            <a href={`#question-${index + 1}`}>
              <strong>{what}</strong>
              <small>
                {when !== '' && (
                  <>
                    <CellHtml cell={{ is: 'status', status }} links={() => undefined} /> {when}
                  </>
                )}
                {when !== '' && possible !== '' && '; '}
                {possible}
              </small>
            </a>
          </li>
        ))}
      </ul>
      <More to="questions-title" all={all} />
    </section>
  );
}

function More({ to, all }: { to: string; all: string }): VNode | null {
  if (all === '') return null;
  return (
    <a class="more" href={`#${to}`}>
      {all}
    </a>
  );
}

type Asked = NonNullable<CardWords['ask']>['people'][number];

function Ask({ ask }: CardWords): VNode | null {
  if (!ask) return null;
  const reached = ask.people.filter(({ call, write }) => call !== undefined || write !== undefined);
  const others = ask.people.filter((person) => !reached.includes(person));
  return (
    <section aria-labelledby="ask-title">
      <h2 id="ask-title">{ask.title}</h2>
      {reached.map((person) => (
        <Reached person={person} />
      ))}
      {others.map(({ called, contact }) => (
        <p class="why">{[called, contact].filter((part) => part !== undefined).join(', ')}</p>
      ))}
    </section>
  );
}

function Reached({ person: { called, contact, phone, mail, call, write } }: { person: Asked }): VNode {
  return (
    <div class="ask">
      <p>
        <strong>{called}</strong>
        <small>
          {contact} <span class="phone">{phone}</span>
        </small>
      </p>
      {call !== undefined && (
        <a class="reach" href={call} aria-label={`Call ${called}, ${phone}`}>
          Call
        </a>
      )}
      {write !== undefined && (
        <a class="reach" href={write} aria-label={`Mail to ${called}, ${mail}`}>
          Mail
        </a>
      )}
    </div>
  );
}
