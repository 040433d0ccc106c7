import type { VNode } from 'preact';
import type { RoomChange } from '../../compare/index.js';
import type { Drawing } from '../../draw/index.js';
import { drawRoom } from '../drawings.js';
import type { RoomDrawings } from '../drawings.js';
import { DrawingFigure } from '../parts/drawing.js';
import type { View } from '../view.js';
import type { ComparisonContext } from './context.js';

/** Drawings that look different, each side by side as it was and as it is. */
export function ShapeDrawings({ room, context }: { room: RoomChange; context: ComparisonContext }): VNode {
  const { comparison, from, to } = context;
  const was = drawSide(from, room.roomBefore, 'was');
  const now = drawSide(to, room.kind === 'removed' ? undefined : room.room, 'now');
  const pairs = room.drawings.map((which) => ({
    which,
    was: was && pick(was, which, 'was'),
    now: now && pick(now, which, 'now'),
  }));
  return (
    <>
      {pairs
        .filter((pair) => pair.was ?? pair.now)
        .map((pair) => (
          <div class="sides sides-drawn">
            <Side label={`Was, ${comparison.from.label}`} drawing={pair.was} />
            <Side label={`Now, ${comparison.to.label}`} drawing={pair.now} />
          </div>
        ))}
    </>
  );
}

function Side({ label, drawing }: { label: string; drawing: Drawing | undefined }): VNode {
  return (
    <div class="side">
      <p class="role">{label}</p>
      {drawing ? <DrawingFigure drawing={{ ...drawing, title: `${label}: ${drawing.title}` }} /> : <p>Not there.</p>}
    </div>
  );
}

function drawSide(view: View, slug: string | undefined, prefix: string): RoomDrawings | undefined {
  const room = slug === undefined ? undefined : view.room(slug);
  return room && drawRoom(room, view, prefix);
}

function pick(
  drawings: RoomDrawings,
  { kind, id }: RoomChange['drawings'][number],
  prefix: string,
): Drawing | undefined {
  if (kind === 'plan') return drawings.plan;
  if (kind === 'ceiling') return drawings.ceiling;
  const list = kind === 'wall' ? drawings.elevations : drawings.features;
  return list.find((drawing) => drawing.id === `${prefix}-${kind}-${id}`);
}
