import type { PlanOpening } from '../../core/book/index.js';
import type { Spot } from '../convex.js';
import type { Sheet } from '../sheet.js';
import { lineThrough, type WallLine } from './wall-line.js';

const leafThickness = 1.375 * 25_400_000;

/** Doors with leaf and swing, windows with sill lines, cased and plain openings, in the gap that the wall leaves. */
export function drawOpening(sheet: Sheet, line: WallLine, opening: PlanOpening, room: string): void {
  const frame = frameOf(sheet, line, opening);
  if (opening.kind === 'open' || opening.kind === 'cased') return drawCased(sheet, frame);
  if (opening.kind === 'window' || opening.operation === 'fixed') return drawWindow(sheet, frame);
  drawThreshold(sheet, frame, opening);
  if (opening.operation === 'pocket') return drawPocket(sheet, frame, opening);
  if (opening.operation === 'sliding') return drawSliding(sheet, frame);
  const isInward = opening.swing === undefined || opening.swing === room;
  if (opening.operation === 'double') {
    const half = frame.width / 2;
    drawLeaf(sheet, frame, { pivot: 0, toward: 1, width: half, isInward });
    drawLeaf(sheet, frame, { pivot: frame.width, toward: -1, width: half, isInward });
    return;
  }
  const isRight = opening.hinge === 'right';
  drawLeaf(sheet, frame, { pivot: isRight ? frame.width : 0, toward: isRight ? -1 : 1, width: frame.width, isInward });
}

/** An opening above the plane of the plan: dashes along both faces of the wall. */
export function drawOpeningAbove(sheet: Sheet, line: WallLine, opening: PlanOpening): void {
  const { at, width, thickness } = frameOf(sheet, line, opening);
  for (const v of [-2.4, thickness + 2.4]) sheet.polyline([at(0, v), at(width, v)], { pen: 'fine', dash: 'hidden' });
}

/** True when the leaf moves on this room's side. */
export function swingsInward(opening: PlanOpening, room: string): boolean {
  return (
    opening.kind === 'door' &&
    opening.operation !== 'pocket' &&
    opening.operation !== 'sliding' &&
    (opening.swing === undefined || opening.swing === room)
  );
}

interface Frame {
  readonly width: number;
  readonly thickness: number;
  readonly leaf: number;
  /** Standing wall to the left of the left jamb and to the right of the right one. */
  readonly left: number;
  readonly right: number;
  /** `u` from the left jamb, `v` outward from the inner face. */
  at(u: number, v: number): Spot;
  /** Degrees clockwise from the right of a direction in the frame. */
  angle(u: number, v: number): number;
}

function frameOf(sheet: Sheet, line: WallLine, opening: PlanOpening): Frame {
  const left = opening.at * sheet.perNanometre;
  const reach = opening.width * sheet.perNanometre;
  // Straight from jamb to jamb, also in a wall that is an arc.
  const { length: width, along, outward, at } = lineThrough(line.at(left, 0), line.at(left + reach, 0));
  return {
    width,
    left,
    right: Math.max(0, line.length - left - reach),
    thickness: line.thickness,
    leaf: Math.max(1.3, leafThickness * sheet.perNanometre),
    at,
    angle: (u, v) => {
      const x = along[0] * u + outward[0] * v;
      const y = along[1] * u + outward[1] * v;
      return (Math.atan2(y, x) * 180) / Math.PI;
    },
  };
}

function drawWindow(sheet: Sheet, { at, width, thickness }: Frame): void {
  const glass = Math.min(1.6, thickness * 0.16);
  sheet.polygon([at(0, 0), at(width, 0), at(width, thickness), at(0, thickness)], {
    pen: 'fine',
    fill: 'paper',
    layer: 'object',
  });
  sheet.polygon(
    [
      at(0, thickness / 2 - glass),
      at(width, thickness / 2 - glass),
      at(width, thickness / 2 + glass),
      at(0, thickness / 2 + glass),
    ],
    { pen: 'fine', fill: 'glass', layer: 'object' },
  );
  // The sill stands proud of the wall outside.
  sheet.polyline([at(-1.5, thickness + 1.8), at(width + 1.5, thickness + 1.8)], { pen: 'fine' });
}

function drawCased(sheet: Sheet, { at, width, thickness }: Frame): void {
  for (const v of [0, thickness])
    sheet.polyline([at(0, v), at(width, v)], { pen: 'hair', color: 'ink', dash: 'hidden' });
}

function drawThreshold(sheet: Sheet, { at, width, thickness }: Frame, opening: PlanOpening): void {
  if (opening.to !== 'outside') return;
  for (const v of [0, thickness]) sheet.polyline([at(0, v), at(width, v)], { pen: 'hair', color: 'ink' });
}

function drawLeaf(
  sheet: Sheet,
  frame: Frame,
  leaf: { pivot: number; toward: 1 | -1; width: number; isInward: boolean },
): void {
  const { pivot, toward, width, isInward } = leaf;
  const face = isInward ? 0 : frame.thickness;
  const out = isInward ? -1 : 1;
  const thick = frame.leaf * toward;
  sheet.polygon(
    [
      frame.at(pivot, face),
      frame.at(pivot + thick, face),
      frame.at(pivot + thick, face + out * width),
      frame.at(pivot, face + out * width),
    ],
    { pen: 'fine', fill: 'paper', layer: 'object' },
  );
  const open = frame.angle(0, out);
  const closed = nearTurn(frame.angle(toward, 0), open);
  sheet.arc(frame.at(pivot, face), width, open, closed, { pen: 'hair', color: 'ink' });
}

/** Half open, with its pocket in the wall; across the opening where its side is not recorded. */
function drawPocket(sheet: Sheet, frame: Frame, { slides }: PlanOpening): void {
  const { at, width, thickness, leaf } = frame;
  const [low, high] = [thickness / 2 - leaf / 2, thickness / 2 + leaf / 2];
  const panel = (from: number, to: number): void =>
    sheet.polygon([at(from, low), at(to, low), at(to, high), at(from, high)], {
      pen: 'fine',
      fill: 'paper',
      layer: 'cut',
    });
  if (slides === undefined) {
    panel(0, width);
    return;
  }
  const isRight = slides === 'right';
  const slot = Math.min(width, isRight ? frame.right : frame.left);
  // The leaf stands a third in the opening, the rest in its pocket.
  const hidden = Math.min(width * 0.62, slot);
  const [pocketFrom, pocketTo] = isRight ? [width, width + slot] : [-slot, 0];
  sheet.polygon(
    [at(pocketFrom, low - 0.8), at(pocketTo, low - 0.8), at(pocketTo, high + 0.8), at(pocketFrom, high + 0.8)],
    {
      pen: 'hair',
      color: 'paper',
      fill: 'paper',
      layer: 'cut',
      quiet: true,
    },
  );
  if (isRight) panel(width * 0.62, width + hidden);
  else panel(-hidden, width * 0.38);
}

function drawSliding(sheet: Sheet, { at, width, thickness, leaf }: Frame): void {
  const middle = thickness / 2;
  const overlap = width * 0.04;
  const panel = (from: number, to: number, v: number): void =>
    sheet.polygon([at(from, v), at(to, v), at(to, v + leaf), at(from, v + leaf)], {
      pen: 'fine',
      fill: 'paper',
      layer: 'object',
    });
  panel(0, width / 2 + overlap, middle - leaf);
  panel(width / 2 - overlap, width, middle);
}

function nearTurn(angle: number, reference: number): number {
  let turned = angle;
  while (turned - reference > 180) turned -= 360;
  while (turned - reference < -180) turned += 360;
  return turned;
}
