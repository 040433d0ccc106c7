import type { VNode } from 'preact';
import type { BookRoom } from '../../core/book/index.js';
import { drawRoom } from '../drawings.js';
import { DrawingFigure } from '../parts/drawing.js';
import { PageLink, RoomLink } from '../parts/link.js';
import { RoomLayouts } from '../parts/room-layouts.js';
import { figuresPath } from '../paths.js';
import { layoutTables, quantityLines } from '../../table/index.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';

/** All drawings of a room, and how what comes in pieces is laid and cut: for who builds it. */
export function RoomDrawingsPage({ room }: { room: BookRoom }): VNode {
  const { view, path } = useSheet();
  const lines = quantityLines(view, view.selectionsOf(room));
  const { plan, ceiling, sections, features, elevations } = drawRoom(room, view);
  return (
    <>
      <p class="room-way">
        <RoomLink room={room} /> · <PageLink to={figuresPath(room)}>Every figure, step by step</PageLink>
      </p>
      <h1>{room.name}, drawn</h1>
      <section class="drawings" aria-labelledby="plan-title">
        <h2 id="plan-title">{sections.length > 0 ? 'Plan, ceiling and sections' : 'Plan and ceiling'}</h2>
        <div class="drawing-set">
          {[plan, ceiling, ...sections].map((drawing) => (
            <DrawingFigure drawing={drawing} />
          ))}
        </div>
      </section>
      <section class="drawings" aria-labelledby="walls-title">
        <h2 id="walls-title">Walls{features.length > 0 && ' and what stands in the room'}</h2>
        <div class="drawing-set">
          {[...elevations, ...features].map((drawing) => (
            <DrawingFigure drawing={drawing} />
          ))}
        </div>
      </section>
      <RoomLayouts tables={layoutTables(lines, view)} links={placeLinks(view, path)} />
    </>
  );
}
