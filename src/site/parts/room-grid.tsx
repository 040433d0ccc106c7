import type { VNode } from 'preact';
import type { BookRoom } from '../../core/book/index.js';
import { floorArea } from '../../core/model/index.js';
import { feet, printMoneyChange, printQuantity } from '../../base/units/index.js';
import { SignMark } from '../../write/index.js';
import { roomPath } from '../paths.js';
import { useView } from '../sheet-context.js';
import { PageLink } from './link.js';
import { MiniPlan } from './mini-plan.js';
import { shownState } from './words.js';

/** Pixels that the widest room may take. */
const widest = 132;

/** The rooms level by level, drawn small to one scale. */
export function RoomGrid({ heading: Heading }: { heading: 'h2' | 'h3' }): VNode {
  const { book } = useView();
  const perFoot = widest / Math.max(1, ...book.rooms.map(extent));
  return (
    <>
      {book.levels.map((level) => {
        const rooms = book.rooms.filter((room) => room.level === level.id);
        if (rooms.length === 0) return null;
        return (
          <section class="level">
            <Heading>{level.name}</Heading>
            <ul class="room-grid">
              {rooms.map((room) => (
                <RoomTile room={room} perFoot={perFoot} />
              ))}
            </ul>
          </section>
        );
      })}
    </>
  );
}

function RoomTile({ room, perFoot }: { room: BookRoom; perFoot: number }): VNode {
  const view = useView();
  const states = view.selectionsOf(room).map(shownState);
  const worst = (['late', 'due-soon', 'open'] as const).find((state) => states.includes(state));
  return (
    <li>
      <PageLink to={roomPath(room)} class="room-tile">
        <span class="room-plan">
          <MiniPlan room={room} perFoot={perFoot} />
        </span>
        <span class="room-name">
          <span class="mark">{room.number}</span> {room.name}
        </span>
        <span class="room-state">
          <SignMark of={worst ?? (states.length === 0 ? 'none' : 'chosen')} />{' '}
          {states.length === 0
            ? 'no choices'
            : room.open > 0
              ? `${room.open} open${worst === 'late' ? ', late' : worst === 'due-soon' ? ', due soon' : ''}`
              : 'all chosen'}
        </span>
        <span class="room-facts">
          <span>{printQuantity(floorArea(room.measure.floor), 'sq ft', 0)}</span>{' '}
          {room.change !== 0 && <span>{printMoneyChange(room.change)}</span>}
        </span>
      </PageLink>
    </li>
  );
}

/** Feet of the longer side of a room's plan. */
function extent(room: BookRoom): number {
  const xs = room.measure.plan.map((point) => feet(point.x));
  const ys = room.measure.plan.map((point) => feet(point.y));
  return Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}
