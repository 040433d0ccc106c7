import { isDownToFloor, type OpeningMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import { lengthText } from '../length-text.js';
import { drawMark } from '../mark.js';
import { sizes } from '../pen.js';
import { corners, topAt, underTop, type ElevationFrame } from './frame.js';

const casing = 3.5 * 25_400_000;
const frameWidth = 2 * 25_400_000;

/** An opening as seen from the room: casing, leaf or sash, dashes that meet at the hinges. */
export function drawOpeningFace(frame: ElevationFrame, opening: OpeningMeasure): void {
  const { sheet } = frame;
  const [left, right, bottom, top] = [
    opening.at,
    opening.at + opening.width,
    opening.sill,
    opening.sill + opening.height,
  ];
  if (opening.kind !== 'open') {
    const { wall } = frame;
    const foot = isDownToFloor(opening) ? bottom : Math.max(opening.floor ?? 0, bottom - casing);
    const sides = [Math.max(0, left - casing), Math.min(wall.run, right + casing)] as const;
    const head = Math.min(top + casing, topAt(wall, sides[0]), topAt(wall, sides[1]));
    if (head > foot)
      sheet.polygon(corners(frame, sides[0], foot, sides[1], head), {
        pen: 'hair',
        color: 'ink',
        fill: 'paper',
        layer: 'fine',
      });
  }
  const isGlass = isGlazed(opening);
  const fill = isGlass ? 'glass' : opening.kind === 'door' ? 'paper' : 'tone';
  sheet.polygon(underTop(frame, left, bottom, right, top), { pen: 'object', fill, layer: 'object' });
  if (isGlass) drawSash(frame, left, right, bottom, top);
  else if (opening.kind === 'door') drawLeaves(frame, opening);
}

/** Mark and size in the opening, else near it. Returns what found no place. */
export function labelOpening({ sheet, at, wall }: ElevationFrame, opening: OpeningMeasure): string[] {
  const middle = opening.at + opening.width / 2;
  const size = `${lengthText(opening.width)} × ${lengthText(opening.height)}`;
  const ground = isGlazed(opening) ? 'glass' : opening.kind === 'door' ? 'paper' : 'tone';
  const missing: string[] = [];
  const [x, y] = at(middle, opening.sill + opening.height * 0.56);
  const left = at(opening.at, 0)[0];
  const right = at(opening.at + opening.width, 0)[0];
  const head = at(0, opening.sill + opening.height)[1];
  const foot = at(0, opening.sill)[1];
  const isWide = sheet.textBox([0, 0], size, { size: sizes.note })[1]![0] * 2 < right - left - 6;
  const above: Spot[] = [
    [x, head - 16],
    [x, head - 22],
    [x, foot + 20],
  ];
  if (
    !drawMark(
      sheet,
      right - left > 30 && foot - head > 22 ? [[x, y], [x, y + 12], [x, y - 12], ...above] : above,
      opening.mark,
      true,
    )
  )
    missing.push(opening.mark);
  const look = { size: sizes.note, color: 'muted', ground } as const;
  const below = [14, 24, 34].map((drop): Spot => [x, y + drop + 2]);
  if (
    isWide &&
    foot - head > 44 &&
    sheet.tryWrite(
      below.filter((spot) => spot[1] < foot - 3),
      size,
      look,
    )
  )
    return missing;
  const turned = [5, 12, -12].map((shift): Spot => [x + shift - 2.5, (y + 12 + foot) / 2]);
  if (foot - head > 70 && right - left > 12 && sheet.tryWrite(turned, size, { ...look, turn: -90 })) return missing;
  const outside: Spot[] = [
    [x, head - 8],
    [x, foot + 12],
    [x, foot + 21],
  ];
  const within = outside.filter(
    (spot) => spot[1] < at(0, 0)[1] - 4 && spot[1] > at(0, Math.max(...wall.top.map(({ height }) => height)))[1],
  );
  if (!sheet.tryWrite(within, size, { ...look, ground: 'paper' })) missing.push(`${opening.mark} is ${size}`);
  return missing;
}

function isGlazed(opening: OpeningMeasure): boolean {
  return opening.kind === 'window' || (opening.kind === 'door' && opening.operation === 'fixed');
}

function drawSash(frame: ElevationFrame, left: number, right: number, bottom: number, top: number): void {
  const edge = Math.min(frameWidth, (right - left) / 8, (top - bottom) / 8);
  frame.sheet.polygon(corners(frame, left + edge, bottom + edge, right - edge, top - edge), {
    pen: 'hair',
    color: 'ink',
    layer: 'object',
  });
  // Wide windows come as more than one unit.
  const units = Math.min(4, Math.max(1, Math.round((right - left) / (3.2 * 304_800_000))));
  for (let index = 1; index < units; index++) {
    const along = left + ((right - left) * index) / units;
    frame.sheet.polyline([frame.at(along, bottom), frame.at(along, top)], {
      pen: 'fine',
      layer: 'object',
      quiet: true,
    });
  }
}

function drawLeaves(frame: ElevationFrame, opening: OpeningMeasure): void {
  const { at, sheet } = frame;
  const [left, right, bottom, top] = [
    opening.at,
    opening.at + opening.width,
    opening.sill,
    opening.sill + opening.height,
  ];
  const middle = (left + right) / 2;
  const half = (bottom + top) / 2;
  const hinges = (open: number, hinge: number): void =>
    sheet.polyline([at(open, top), at(hinge, half), at(open, bottom)], {
      pen: 'hair',
      dash: 'hidden',
      layer: 'object',
      quiet: true,
    });
  if (opening.operation === 'double') {
    sheet.polyline([at(middle, bottom), at(middle, top)], { pen: 'fine', layer: 'object', quiet: true });
    hinges(middle, left);
    hinges(middle, right);
  } else if (opening.operation === 'sliding') {
    sheet.polyline([at(middle, bottom), at(middle, top)], { pen: 'fine', layer: 'object', quiet: true });
    drawArrow(frame, left + opening.width * 0.12, left + opening.width * 0.38, bottom + opening.height * 0.2);
  } else if (opening.operation === 'pocket') {
    drawArrow(
      frame,
      middle,
      opening.hinge === 'right' ? right - opening.width * 0.1 : left + opening.width * 0.1,
      bottom + opening.height * 0.2,
    );
  } else {
    const isRight = opening.hinge === 'right';
    hinges(isRight ? left : right, isRight ? right : left);
  }
}

function drawArrow({ at, sheet }: ElevationFrame, from: number, to: number, up: number): void {
  const [a, b] = [at(from, up), at(to, up)];
  const back = Math.sign(a[0] - b[0]) * 3.5;
  sheet.polyline([a, b], { pen: 'hair', color: 'ink', layer: 'object' });
  sheet.polyline([[b[0] + back, b[1] - 2], b, [b[0] + back, b[1] + 2]], { pen: 'hair', color: 'ink', layer: 'object' });
}
