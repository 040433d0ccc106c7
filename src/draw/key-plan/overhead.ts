import type { KeyLevel, KeyRoom } from '../../core/book/index.js';
import type { Convex, Spot } from '../convex.js';
import { drawTimbers } from '../plan/feature-symbol.js';
import type { Sheet } from '../sheet.js';
import { runOver, type TimberedRoom } from '../timber-lines.js';

/** What of it a level shows, in words that begin small. */
export function overheadWords({ rooms }: KeyLevel): readonly string[] {
  const isTimbered = rooms.some((room) =>
    room.overhead.timbers.some((mark) => mark.lines !== undefined || runOver(timbered(room), mark) !== undefined),
  );
  return [
    ...(isTimbered ? ['dashed over a room: its timbers'] : []),
    ...(rooms.some(({ overhead }) => overhead.skylights.length > 0) ? ['dashed and crossed: a skylight'] : []),
  ];
}

function timbered({ plan, overhead: { facets } }: KeyRoom): TimberedRoom {
  return { plan, ceiling: { facets } };
}

/** What is over a room that stands on the sheet: timbers dashed, skylights dashed and crossed. Names may lie over it, and are better clear
 *  of what is returned. */
export function drawOverhead(sheet: Sheet, room: KeyRoom): readonly Convex[] {
  const { timbers, skylights } = room.overhead;
  const pieces = timbers.flatMap((mark) => drawTimbers(sheet, timbered(room), mark, 'muted'));
  const openings = skylights.map((skylight) => skylight.map((point) => sheet.spot(point)));
  const look = { pen: 'hair', dash: 'fine', color: 'muted', quiet: true } as const;
  for (const outline of openings) {
    const [a, b, c, d] = outline as [Spot, Spot, Spot, Spot];
    sheet.polygon(outline, look);
    sheet.polyline([a, c], look);
    sheet.polyline([b, d], look);
  }
  return [...pieces.map(({ corners }) => corners), ...openings];
}
