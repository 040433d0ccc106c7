import type { VNode } from 'preact';
import { firstWords, nextWords, whomToAsk, type HandoutNext, type HandoutPerson } from '../../handout/index.js';
import { capital } from '../../base/units/index.js';
import { CellHtml } from '../../write/index.js';
import { useHandout, useHandoutLink } from './context.js';
import { roomPath } from './paths.js';

/** As many of each as the first screen has room for; the rest stands further down. */
const most = 4;

/** What a foreman asks first: where next, what must be there, what is open, whom to ask. */
export function ForemansCard(): VNode {
  return (
    <div class="card">
      <Next />
      <First />
      <Open />
      <Ask />
    </div>
  );
}

function Next(): VNode {
  const { rooms } = useHandout().card;
  return (
    <section aria-labelledby="next-title">
      <h2 id="next-title">Rooms, the next first</h2>
      {rooms.length === 0 && <p>No room has work for this trade yet.</p>}
      <ol class="room-list">
        {rooms.slice(0, most).map((room) => (
          <NextRoom room={room} />
        ))}
      </ol>
      {rooms.length > most && (
        <a class="more" href="#rooms-title">
          All {rooms.length} rooms
        </a>
      )}
    </section>
  );
}

/** A room with its next work, as a way to its page. */
export function NextRoom({ room }: { room: HandoutNext }): VNode {
  const link = useHandoutLink();
  const { day, why } = nextWords(room);
  return (
    <li>
      <a href={link(roomPath(room))}>
        <span>
          <span class="mark">{room.number}</span> {room.name}
        </span>
        <small>
          <strong>{day}</strong> {room.work}; {why}
        </small>
      </a>
    </li>
  );
}

function First(): VNode {
  const { first } = useHandout().card;
  return (
    <section aria-labelledby="first-title">
      <h2 id="first-title">Must be there first</h2>
      {first.length === 0 && <p>Of others, nothing that is recorded.</p>}
      <ul class="card-list">
        {first.slice(0, most).map((need) => (
          <li>
            <strong>{need.what}</strong>
            <small>{firstWords(need)}</small>
          </li>
        ))}
      </ul>
      {first.length > most && (
        <a class="more" href="#trades">
          All {first.length}, with where
        </a>
      )}
    </section>
  );
}

function Open(): VNode {
  const { questions } = useHandout();
  return (
    <section aria-labelledby="open-title">
      <h2 id="open-title">Open</h2>
      {questions.length === 0 && <p>Nothing is open for this trade.</p>}
      <ul class="card-list">
        {questions.slice(0, most).map(({ about, where, status, when, options }, index) => (
          <li>
            <a href={`#question-${index + 1}`}>
              <strong>
                {about}: {where}
              </strong>
              <small>
                {when !== '' && (
                  <>
                    <CellHtml cell={{ is: 'status', status }} links={() => undefined} /> {when}
                  </>
                )}
                {options.length > 0 && `; ${options.length} possible`}
              </small>
            </a>
          </li>
        ))}
      </ul>
      {questions.length > most && (
        <a class="more" href="#questions-title">
          All {questions.length} questions
        </a>
      )}
    </section>
  );
}

function Ask(): VNode | null {
  const asked = whomToAsk(useHandout().cover);
  if (asked.length === 0) return null;
  const reached = asked.filter(({ phone, mail }) => phone !== undefined || mail !== undefined);
  const others = asked.filter((person) => !reached.includes(person));
  return (
    <section aria-labelledby="ask-title">
      <h2 id="ask-title">Whom to ask</h2>
      {reached.map((person) => (
        <Reached person={person} />
      ))}
      {others.map(({ name, contact }) => (
        <p class="why">{[name, contact].filter((part) => part !== undefined).join(', ')}</p>
      ))}
    </section>
  );
}

function Reached({ person }: { person: HandoutPerson }): VNode {
  const { role, contact, phone, mail } = person;
  const name = person.name ?? capital(role);
  return (
    <div class="ask">
      <p>
        <strong>{name}</strong>
        <small>
          {contact} <span class="phone">{phone}</span>
        </small>
      </p>
      {phone !== undefined && (
        <a class="reach" href={`tel:${phone.replaceAll(/[^\d+]/gu, '')}`} aria-label={`Call ${name}, ${phone}`}>
          Call
        </a>
      )}
      {mail !== undefined && (
        <a class="reach" href={`mailto:${mail}`} aria-label={`Mail to ${name}, ${mail}`}>
          Mail
        </a>
      )}
    </div>
  );
}
