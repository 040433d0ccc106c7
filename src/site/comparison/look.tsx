import type { VNode } from 'preact';
import type { RoomChange } from '../../core/compare/index.js';
import { looksSame, pictureWords } from '../../draw/index.js';
import { DrawnPicture } from '../../write/index.js';
import { drawPicture } from '../pictures.js';
import type { ComparisonContext } from './context.js';

const box = { width: 4.5, height: 5 } as const;

/** The room as it was to look and as it will, from the newer view, where a changed choice can be seen. */
export function LookChanged({ room, context }: { room: RoomChange; context: ComparisonContext }): VNode | null {
  const { comparison, from, to } = context;
  const before = room.roomBefore === undefined ? undefined : from.room(room.roomBefore);
  const after = room.kind === 'kept' ? to.room(room.room) : undefined;
  if (!before || !after || !room.selections.some(({ own }) => own)) return null;
  const [was, now] = [`Was, ${comparison.from.label}`, `Now, ${comparison.to.label}`];
  const titled = (label: string): string => `${label}: ${room.number} ${room.name}`;
  const newer = drawPicture(after, to, { id: 'now-look', plain: true, box, title: titled(now) });
  const older = drawPicture(before, from, {
    id: 'was-look',
    plain: true,
    box,
    title: titled(was),
    view: newer.view,
  });
  if (looksSame(older, newer)) return null;
  return (
    <section aria-labelledby="look-heading">
      <h2 id="look-heading">As it will look</h2>
      <p class="why">Both from one view. {pictureWords}</p>
      <div class="sides sides-drawn">
        <div class="side">
          <p class="role">{was}</p>
          <DrawnPicture drawing={older.drawing} />
        </div>
        <div class="side">
          <p class="role">{now}</p>
          <DrawnPicture drawing={newer.drawing} />
        </div>
      </div>
    </section>
  );
}
