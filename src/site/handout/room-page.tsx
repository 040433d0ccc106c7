import type { VNode } from 'preact';
import type { HandoutNeed, HandoutPlace, HandoutQuantity, HandoutRoom } from '../../handout/index.js';
import { printAmount, printDay, lastDigits } from '../../base/units/index.js';
import { cautionWords } from '../../core/caution/index.js';
import { pictureWords } from '../../draw/index.js';
import { CellHtml, DrawnPicture, Keys } from '../../write/index.js';
import { DataTable } from '../parts/data-table.js';
import { DrawingFigure } from '../parts/drawing.js';
import { Facts } from '../parts/facts.js';
import { Phrase, Prose } from '../parts/prose.js';
import { useHandout, useHandoutLink, usePlaceLinks } from './context.js';
import { drawHandoutPicture, drawHandoutRoom } from './drawings.js';
import { RoomLevel } from './levels.js';
import { handoutPaths, roomPath } from './paths.js';

/** A room as one trade builds it. */
export function RoomPage({ room }: { room: HandoutRoom }): VNode {
  const handout = useHandout();
  const ids = new Set(room.places.flatMap(({ cautions }) => cautions));
  const cautions = handout.cautions.filter(({ id }) => ids.has(id));
  return (
    <>
      <div class="room-top">
        <header class="room-head">
          <p class="label">
            {room.number}, {room.level}
          </p>
          <h1>{room.name}</h1>
        </header>
        <RoomLevel room={room} />
      </div>
      <Facts
        facts={room.facts.map(({ label, text, beside }) => ({
          label,
          value: (
            <>
              {text} {beside !== undefined && <span class="metric">{beside}</span>}
            </>
          ),
        }))}
      />
      <Prose text={room.notes} />
      {cautions.map(({ title, place, seen, says, source, ask }) => (
        <div class="caution">
          <p>
            <strong>
              Caution. {title}, {place}.
            </strong>{' '}
            {seen} {says}{' '}
            <strong>
              {cautionWords.ask} {ask}.
            </strong>{' '}
            <span class="why">{source}.</span>
          </p>
        </div>
      ))}
      <section aria-labelledby="places-title">
        <h2 id="places-title">Places and finishes</h2>
        {room.places.map((place) => (
          <Place place={place} />
        ))}
      </section>
      <Picture room={room} />
      <section aria-labelledby="drawings-title">
        <h2 id="drawings-title">Drawings</h2>
        <div class="drawing-set">
          {drawHandoutRoom(room, handout).map((drawing) => (
            <DrawingFigure drawing={drawing} />
          ))}
        </div>
      </section>
      <Openings room={room} />
      <Turn room={room} />
    </>
  );
}

function Picture({ room }: { room: HandoutRoom }): VNode | null {
  const picture = drawHandoutPicture(room, useHandout());
  if (!picture) return null;
  const { drawing, keys, unseen } = picture;
  return (
    <section aria-labelledby="look-title">
      <h2 id="look-title">As it will look</h2>
      <p class="why">Your own work only, the rest plain. {pictureWords}</p>
      <div class="look">
        <DrawnPicture drawing={drawing} />
        <div class="look-words">
          <Keys keys={keys} />
          {unseen.length > 0 && (
            <p>Not drawn, since it is on what was taken away, or its place or size is not recorded:</p>
          )}
          <Keys keys={unseen} />
        </div>
      </div>
    </section>
  );
}

function Place({ place }: { place: HandoutPlace }): VNode {
  const links = usePlaceLinks();
  const { finish, status, when, note, on, needs, leaves, supply, quantities, considered } = place;
  return (
    <div class="place">
      <h3>
        {place.place} {place.category !== place.place && <span class="label">{place.category}</span>}
      </h3>
      <p class="place-finish">
        <CellHtml cell={finish} links={links} />{' '}
        {status !== 'none' && <CellHtml cell={{ is: 'status', status }} links={links} />}{' '}
        {when !== '' && <strong>{when}</strong>}
      </p>
      <dl>
        {note !== '' && <Line label="Note" value={<Phrase text={note} />} />}
        {on.length > 0 && <Line label="On" value={on.join('; ')} />}
        {needs.length > 0 && <Line label="There first" value={<Needs needs={needs} />} />}
        {leaves.length > 0 && (
          <Line
            label="You leave"
            value={leaves.map(({ what, for: other, before }) => `${what}, for ${other}, before ${before}`).join('; ')}
          />
        )}
        <Line label="Supply" value={supply} />
        {quantities.map((quantity) => (
          <Quantity quantity={quantity} />
        ))}
        {considered.map(({ finish: other, quantities: taken, needs: wanted }) => (
          <>
            <Line
              label={finish.standing === 'open' ? 'One of' : 'Or'}
              value={
                <>
                  <CellHtml cell={other} links={links} />
                  {wanted.length > 0 && (
                    <>
                      ; there first: <Needs needs={wanted} />
                    </>
                  )}
                </>
              }
            />
            {taken.map((quantity) => (
              <Quantity quantity={quantity} />
            ))}
          </>
        ))}
      </dl>
      {quantities.length > 0 && <HowMeasured quantities={quantities} />}
    </div>
  );
}

function Line({ label, value }: { label: string; value: VNode | string }): VNode {
  return (
    <div>
      <dt>{label}</dt>
      <dd>{value}</dd>
    </div>
  );
}

function Needs({ needs }: { needs: readonly HandoutNeed[] }): VNode {
  return (
    <>
      {needs
        .map(
          ({ what, by, before, date }) =>
            `${what} (${by}), before ${before}${date === undefined ? '' : `, ${printDay(date)}`}`,
        )
        .join('; ')}
    </>
  );
}

function Quantity({ quantity }: { quantity: HandoutQuantity }): VNode {
  const { part, net, digits, required, times: often, unit, wastePercent, factors, layout } = quantity;
  const label = part === '' ? 'Quantity' : `Quantity, ${part}`;
  const whole = `${printAmount(net, digits)} ${unit}`;
  const coats = often === 1 ? '' : `${printAmount(often, 2)} × `;
  const times = factors.length === 0 ? '' : `, ${factors.join(', ')}`;
  const amountText =
    net === required
      ? whole
      : `${whole} net${times}; ${coats}${printAmount(required / often, lastDigits())} ${unit} with ${printAmount(wastePercent, 2)} % waste`;
  return (
    <>
      <Line label={label} value={amountText} />
      {layout && layout.cuts !== '' && <Line label="Cut list" value={layout.cuts} />}
      {layout && (
        <Line
          label="Laid out"
          value={`${layout.courses}; ${printAmount(layout.wastePercent, 1)} % waste as laid out.`}
        />
      )}
      {layout && <Line label="Order and check" value={`${layout.order} ${layout.why}`} />}
    </>
  );
}

function HowMeasured({ quantities }: { quantities: readonly HandoutQuantity[] }): VNode {
  return (
    <details>
      <summary>How it is measured</summary>
      {quantities.map(({ part, unit, digits, places }) => (
        <ul class="plain-list">
          {places.map(({ name, gross, adjustments, net }) => (
            <li>
              {part === '' ? name : `${name}, ${part}`}: {printAmount(gross, digits)}
              {adjustments.map(
                ({ what, why, amount }) => ` ${amount < 0 ? '' : '+'}${printAmount(amount, digits)} ${what} (${why})`,
              )}
              {' = '}
              {printAmount(net, digits)} {unit}
            </li>
          ))}
        </ul>
      ))}
    </details>
  );
}

function Openings({ room }: { room: HandoutRoom }): VNode | null {
  if (room.openings.length === 0) return null;
  return (
    <section aria-labelledby="openings-title">
      <h2 id="openings-title">Openings</h2>
      <DataTable
        id="openings"
        caption={`Openings of ${room.name} where you work`}
        rows={room.openings}
        columns={[
          { head: 'Mark', names: true, cell: ({ mark }) => mark },
          { head: 'Kind', cell: ({ kind }) => kind },
          { head: 'Where', cell: ({ at }) => at },
          { head: 'To', cell: ({ to }) => to },
          { head: 'Width × height', cell: ({ size }) => size },
          { head: 'How it moves', cell: ({ action, note }) => [action, note].filter((part) => part !== '').join('; ') },
        ]}
      />
    </section>
  );
}

function Turn({ room }: { room: HandoutRoom }): VNode {
  const { rooms } = useHandout();
  const link = useHandoutLink();
  const index = rooms.findIndex(({ slug }) => slug === room.slug);
  const [before, after] = [rooms[index - 1], rooms[index + 1]];
  return (
    <nav class="turn" aria-label="Rooms before and after">
      <a href={link(before ? roomPath(before) : handoutPaths.start)}>
        ← {before ? `${before.number} ${before.name}` : 'Cover'}
      </a>
      <a class="next" href={link(after ? roomPath(after) : handoutPaths.products)}>
        {after ? `${after.number} ${after.name}` : 'Products'} →
      </a>
    </nav>
  );
}
