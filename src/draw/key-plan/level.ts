import { patchFrom, type Patch } from '../../base/geometry/index.js';
import { PathBuilder } from '../../base/svg/index.js';
import type { KeyLevel } from '../../core/book/index.js';
import type { Polygon, Region } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import { drawDimensions } from '../dimension.js';
import { isInside, spotsInside } from '../inside.js';
import { drawMark } from '../plan/feature-symbol.js';
import { drawOpening, drawOpeningAbove } from '../plan/opening-symbol.js';
import { drawVoid } from '../plan/void.js';
import { faceSpots } from '../plan/wall-line.js';
import type { Sheet } from '../sheet.js';
import { cutsOf, type Cut, type RoomCuts } from './cuts.js';
import { placeFloor } from './floors.js';
import { cutWalls, ringOf } from './gap.js';
import { drawName } from './label.js';
import { drawOverhead } from './overhead.js';

/** All that a level shows; or for small pictures walls, where they are open, and the rooms' numbers. */
export type Detail = 'whole' | 'numbers';

type Words = () => void;

export function drawLevel(sheet: Sheet, level: KeyLevel, detail: Detail): void {
  const isWhole = detail === 'whole';
  for (const region of level.below) {
    const look = { pen: 'fine', color: 'hair', dash: 'hidden', fill: 'tone', layer: 'fill', quiet: true } as const;
    sheet.region(spotsOf(sheet, region), look);
  }
  // Doorways are no room's floor, and what lies below is not seen through them.
  for (const region of level.outline)
    sheet.region(spotsOf(sheet, region), { pen: 'hair', color: 'paper', fill: 'paper', layer: 'fill', quiet: true });
  for (const room of level.rooms) {
    const rings = [room.plan, ...room.voids.map(({ outline }) => outline)];
    sheet.standingAt(room.at, () => placeFloor(sheet, room.slug, pathOf(sheet, rings)));
  }
  const wells = level.wells.map(({ name, outline }) =>
    drawVoid(sheet, spotsOf(sheet, outline)[0] ?? [], `${name}, open to below`, 'fine'),
  );
  const walls = level.walls.map((region) => patchOf(sheet, region));
  const rooms = cutsOf(sheet, level, walls);
  drawWalls(sheet, walls, rooms, isWhole);
  const over = isWhole ? level.rooms.map((room) => sheet.standingAt(room.at, () => drawOverhead(sheet, room))) : [];
  if (isWhole) drawInside(sheet, level, rooms, wells);
  else drawWindows(sheet, rooms);
  level.rooms.forEach(({ plan, at, number, name }, index) => {
    const outline = sheet.standingAt(at, () => plan.map((point) => sheet.spot(point)));
    drawName(sheet, outline, { number, name, over: over[index] ?? [] }, !isWhole);
  });
  if (isWhole) drawSizes(sheet, level);
}

function drawWalls(sheet: Sheet, walls: readonly Patch[], rooms: readonly RoomCuts[], isWhole: boolean): void {
  const gaps = rooms.flatMap(({ cuts }) => cuts.filter(({ isAbove }) => !isAbove).map(({ gap }) => gap));
  for (const { outline, holes } of cutWalls(walls, gaps)) {
    const outlines = [outline, ...holes].map((ring) => ring.map(({ x, y }): Spot => [x, y]));
    sheet.region(outlines, { pen: isWhole ? 'fine' : 'hair', color: 'poche', fill: 'poche', layer: 'cut' });
  }
}

/** What stands in the walls and between them, then the words for it, the rooms' own holes first. */
function drawInside(sheet: Sheet, { wells }: KeyLevel, rooms: readonly RoomCuts[], words: readonly Words[]): void {
  const labels: Words[] = [...words];
  const open = wells.map(({ outline }) => spotsOf(sheet, outline)[0] ?? []);
  for (const { room, lines, cuts } of rooms) {
    for (const cut of cuts) drawCut(sheet, cut, room.slug);
    sheet.standingAt(room.at, () => {
      for (const { outline } of room.voids) {
        const hole = outline.map((point) => sheet.spot(point));
        const [middle] = spotsInside(hole, 4);
        // Most are wells of the rooms below, and say which.
        if (middle && open.some((well) => isInside(middle, well))) continue;
        labels.push(drawVoid(sheet, hole, 'open to below', 'fine'));
      }
      for (const { name, marks } of room.features) {
        for (const mark of marks) {
          const { label } = drawMark({ sheet, name, lines, voids: room.voids, posts: [] }, mark);
          // Names of what stands there are the room's own plan's to say.
          if (label && mark.role === 'flight') labels.push(label);
        }
      }
    });
  }
  labels.forEach((label) => label());
}

function drawCut(sheet: Sheet, { line, opening, gap, isAbove }: Cut, room: string): void {
  if (opening && isAbove) return drawOpeningAbove(sheet, line, opening);
  if (opening) return drawOpening(sheet, line, opening, room);
  const faces = gap.depth > 0 ? [0, gap.depth] : [0];
  for (const out of faces) {
    sheet.polyline(faceSpots(line, 0, line.length, out), { pen: 'fine', dash: 'hidden', color: 'hair' });
  }
}

function drawWindows(sheet: Sheet, rooms: readonly RoomCuts[]): void {
  for (const { opening, gap, isAbove } of rooms.flatMap(({ cuts }) => cuts)) {
    if (opening?.kind !== 'window' || isAbove || gap.depth === 0) continue;
    sheet.polygon(gap.outline, { pen: 'hair', color: 'poche', fill: 'glass', layer: 'cut' });
  }
}

/** Overall, to the outside of the framing: along the south and the east. */
function drawSizes(sheet: Sheet, { outline }: KeyLevel): void {
  const corners = outline.flatMap((region) => region.outline);
  const extent = (values: readonly number[]): readonly [number, number] => [Math.min(...values), Math.max(...values)];
  const { bottom, right } = sheet.bounds;
  const text = 8;
  drawDimensions(sheet, {
    origin: [0, bottom + 13 + text],
    along: [1, 0],
    outward: [0, 1],
    stops: extent(corners.map(({ x }) => x)),
  });
  drawDimensions(sheet, {
    origin: [right + 13 + text, 0],
    along: [0, -1],
    outward: [1, 0],
    stops: extent(corners.map(({ y }) => y)),
  });
}

function spotsOf(sheet: Sheet, { outline, holes }: Region): Spot[][] {
  return [outline, ...holes].map((ring) => ring.map((point) => sheet.spot(point)));
}

function patchOf(sheet: Sheet, region: Region): Patch {
  const [outline = [], ...holes] = spotsOf(sheet, region).map(ringOf);
  return patchFrom(outline, holes);
}

function pathOf(sheet: Sheet, rings: readonly Polygon[]): string {
  const builder = new PathBuilder();
  for (const ring of rings) builder.polygon(ring.map((point) => sheet.spot(point)));
  return builder.data;
}
