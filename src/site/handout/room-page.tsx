import type { VNode } from 'preact';
import type { HandoutFinish, HandoutNeed, HandoutPlace, HandoutQuantity, HandoutRoom } from '../../handout/index.js';
import { printAmount, printDay, lastDigits } from '../../base/units/index.js';
import { pictureWords } from '../../draw/index.js';
import { CellHtml, DrawnPicture, Keys } from '../../write/index.js';
import { DataTable } from '../parts/data-table.js';
import { DrawingFigure } from '../parts/drawing.js';
import { Facts } from '../parts/facts.js';
import { Phrase, Prose } from '../parts/prose.js';
import { Caution } from './cautions.js';
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
      {cautions.length > 0 && (
        <section aria-labelledby="cautions-title">
          <h2 id="cautions-title">Cautions</h2>
          {cautions.map((caution) => (
            <Caution caution={caution} where={caution.place} />
          ))}
        </section>
      )}
      <section aria-labelledby="places-title">
        <h2 id="places-title">Places and finishes</h2>
        {room.places.map((place) => (
          <Place place={place} />
        ))}
      </section>
      <section aria-labelledby="drawings-title">
        <h2 id="drawings-title">Drawings</h2>
        <p class="why">Written dimensions hold; do not measure on the screen.</p>
        <div class="drawing-set">
          {drawHandoutRoom(room, handout).map((drawing) => (
            <DrawingFigure drawing={drawing} />
          ))}
        </div>
      </section>
      <Openings room={room} />
      <Picture room={room} />
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
  const { finish, status, when, note, on, leaves, supply, quantities } = place;
  const { needs, considered } = neededByAll(place);
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
        {finish.by === 'owner-furnished' && <Line label="Supply" value={supply} />}
        <Taken of={place} />
      </dl>
      {considered.map((other) => (
        <div class="considered">
          <h4>
            {finish.standing === 'open' ? 'If' : 'Or if'} <CellHtml cell={plainly(other.finish)} links={links} />
          </h4>
          <dl>
            {other.needs.length > 0 && <Line label="There first" value={<Needs needs={other.needs} />} />}
            <Taken of={other} />
          </dl>
        </div>
      ))}
      {quantities.length > 0 && <HowMeasured quantities={quantities} />}
    </div>
  );
}

/** What every product that is possible needs is said once. */
function neededByAll({ finish, needs, considered }: HandoutPlace): Pick<HandoutPlace, 'needs' | 'considered'> {
  const [first] = considered;
  const same = (one: readonly HandoutNeed[]) => JSON.stringify(one) === JSON.stringify(first?.needs);
  const isSame = first !== undefined && considered.every((one) => same(one.needs));
  if (!isSame || (finish.standing !== 'open' && !same(needs))) return { needs, considered };
  return { needs: first.needs, considered: considered.map((one) => ({ ...one, needs: [] })) };
}

/** Without 'if chosen', which stands before it. */
const plainly = (finish: HandoutFinish): HandoutFinish => ({ ...finish, standing: 'chosen' });

/** What a product takes here: what is measured and what to buy, its weight, what is used up with it. */
function Taken({ of }: { of: Pick<HandoutPlace, 'quantities' | 'weight' | 'supplies'> }): VNode {
  const { quantities, weight, supplies } = of;
  return (
    <>
      {quantities.map((quantity) => (
        <Quantity quantity={quantity} />
      ))}
      {weight !== undefined && <Line label="Weight" value={weight} />}
      {supplies.map(({ what, text }) => (
        <Line label={what} value={text} />
      ))}
    </>
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

/** Net, coats, and what is bought, each by itself. */
function Quantity({ quantity }: { quantity: HandoutQuantity }): VNode {
  const { part, net, digits, required, times, unit, wastePercent, factors, layout } = quantity;
  const of = part === '' ? '' : `, ${part}`;
  const waste = wastePercent === 0 ? '' : ` with ${printAmount(wastePercent, 2)} % waste`;
  const each = times === 1 ? '' : ', each time';
  return (
    <>
      <Line label={`Net${of}`} value={`${printAmount(net, digits)} ${unit}`} />
      {factors.length > 0 && <Line label={`Times${of}`} value={factors.join(', ')} />}
      {(wastePercent > 0 || times !== 1) && (
        <Line label={`To buy${of}`} value={`${printAmount(required / times, lastDigits())} ${unit}${waste}${each}`} />
      )}
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
        cards
        called={({ mark }) => mark}
        columns={[
          { head: 'Mark', names: true, class: 'narrow', cell: ({ mark }) => mark },
          { head: 'Kind', brief: true, cell: ({ kind }) => kind },
          { head: 'Where', brief: true, cell: ({ at }) => at },
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
