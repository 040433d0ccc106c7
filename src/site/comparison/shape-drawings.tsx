import type { VNode } from 'preact';
import { drawnRoom } from '../../core/book/index.js';
import type { RoomChange } from '../../core/compare/index.js';
import { roomViews, type Drawing, type RoomView, type RoomViews } from '../../draw/index.js';
import { drawForPage } from '../drawings.js';
import { DrawingFigure } from '../parts/drawing.js';
import type { View } from '../view.js';
import type { ComparisonContext } from './context.js';

/** Drawings that look different, each side by side as it was and as it is. */
export function ShapeDrawings({ room, context }: { room: RoomChange; context: ComparisonContext }): VNode {
  const { comparison, from, to } = context;
  const before = viewsOf(from, room.roomBefore);
  const after = viewsOf(to, room.kind === 'removed' ? undefined : room.room);
  const pairs = room.drawings.map((which) => ({
    was: before && pick(before, which),
    now: after && pick(after, which),
  }));
  return (
    <>
      {pairs
        .filter((pair) => pair.was ?? pair.now)
        .map(({ was, now }) => (
          <div class="sides sides-drawn">
            <Side label={`Was, ${comparison.from.label}`} drawing={was && drawForPage(was, 'was')} />
            <Side label={`Now, ${comparison.to.label}`} drawing={now && drawForPage(now, 'now')} />
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

function viewsOf(view: View, slug: string | undefined): RoomViews | undefined {
  const room = slug === undefined ? undefined : view.room(slug);
  return room && roomViews(drawnRoom(room, view));
}

function pick(views: RoomViews, { kind, id }: RoomChange['drawings'][number]): RoomView | undefined {
  if (kind === 'plan') return views.plan;
  if (kind === 'ceiling') return views.ceiling;
  const list = kind === 'wall' ? views.walls : views.features;
  return list.find((view) => view.id === id);
}
