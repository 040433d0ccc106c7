import { topOf } from '../../base/geometry/index.js';
import { feet, fromFeet, type Length } from '../../base/units/index.js';
import { isDownToFloor, wallFoot, type OpeningMeasure } from '../../core/model/index.js';
import { grown, outlineOf, type OpeningForm } from '../../core/opening/index.js';
import { overlaps, type Convex, type Spot } from '../convex.js';
import { stretchesInside } from '../inside.js';
import { lengthText } from '../length-text.js';
import { drawMark } from '../mark.js';
import { sizes } from '../pen.js';
import type { Lettering } from '../sheet.js';
import { corners, topAt, underTop, type ElevationFrame } from './frame.js';
import type { Casing } from './trim.js';

const frameWidth = 2 * 25_400_000;

/** An opening as seen from the room: casing, leaf or sash, dashes that meet at the hinges. */
export function drawOpeningFace(frame: ElevationFrame, opening: OpeningMeasure, casing?: Casing): void {
  const { sheet } = frame;
  if (casing) {
    const around = casingOutline(frame, opening, casing.width);
    const look = { pen: 'hair', color: 'ink', fill: 'paper', layer: 'fine' } as const;
    // What nobody chose yet is an outline of dashes.
    if (around.length > 2) sheet.polygon(around, { ...look, ...(casing.isOpen && { dash: 'fine' as const }) });
    drawJoints(frame, opening, casing);
  }
  const isGlass = isGlazed(opening);
  // One sees through what has no leaf: it is of no wall's tone.
  const fill = isGlass ? 'glass' : 'paper';
  sheet.polygon(openingOutline(frame, opening), { pen: 'object', fill, layer: 'object' });
  if (isGlass) drawSash(frame, opening);
  else if (opening.kind === 'door') drawLeaves(frame, opening);
}

/** As much of it as the ceiling leaves. */
function openingOutline(frame: ElevationFrame, opening: OpeningMeasure): Spot[] {
  const { at, width, sill, height, shape } = opening;
  return shape ? shaped(frame, opening, at, sill) : underTop(frame, at, sill, at + width, sill + height);
}

/** Of a rectangle and of any other shape, within the wall; a door's legs stand on the floor. */
function casingOutline(frame: ElevationFrame, opening: OpeningMeasure, casing: Length): Spot[] {
  const { wall } = frame;
  const { at, width, sill, height } = opening;
  if (opening.shape) return shaped(frame, grown(opening, casing), at - casing, sill - casing, footOf(opening));
  const [left, right, bottom, top] = [at, at + width, sill, sill + height];
  const foot = Math.max(footOf(opening), isDownToFloor(opening) ? bottom : bottom - casing);
  const sides = [Math.max(0, left - casing), Math.min(wall.run, right + casing)] as const;
  const head = Math.min(top + casing, topAt(wall, sides[0]), topAt(wall, sides[1]));
  return head > foot ? corners(frame, sides[0], foot, sides[1], head) : [];
}

/** Where head and legs of a casing meet, if its record tells how: of a rectangle that has all of its head and both legs. */
function drawJoints({ sheet, wall, at }: ElevationFrame, opening: OpeningMeasure, { width, joint }: Casing): void {
  const [left, right, head] = [opening.at, opening.at + opening.width, opening.sill + opening.height];
  const sides = [left - width, right + width] as const;
  const isWhole = sides[0] >= 0 && sides[1] <= wall.run && sides.every((along) => head + width <= topAt(wall, along));
  if (joint === undefined || opening.shape || !isWhole) return;
  const look = { pen: 'hair', color: 'ink', layer: 'fine', quiet: true } as const;
  const foot = opening.sill - width;
  // Only what is mitered tells how it meets a sill.
  const hasFoot = joint === 'mitered' && !isDownToFloor(opening) && foot >= footOf(opening);
  for (const [inner, outer] of [
    [left, sides[0]],
    [right, sides[1]],
  ] as const) {
    sheet.polyline([at(inner, head), at(outer, joint === 'mitered' ? head + width : head)], look);
    if (hasFoot) sheet.polyline([at(inner, opening.sill), at(outer, foot)], look);
  }
}

/** What casing goes down to: the floor, or the sill where the opening stands on it. */
function footOf(opening: OpeningMeasure): Length {
  return isDownToFloor(opening) ? opening.sill : (opening.floor ?? (0 as Length));
}

/** A shape with its lower left corner there, pressed into what the wall has from `foot` up. */
function shaped({ wall, at }: ElevationFrame, form: OpeningForm, left: number, bottom: number, foot = 0): Spot[] {
  return outlineOf(form).map(({ x, y }) => {
    const along = Math.min(wall.run, Math.max(0, left + fromFeet(x)));
    return at(along, Math.max(foot, Math.min(bottom + fromFeet(y), topAt(wall, along))));
  });
}

/** Mark and size in the opening, else near it, and what a shape has beside them. Returns what found no place. */
export function labelOpening(frame: ElevationFrame, opening: OpeningMeasure, casing = 0 as Length): string[] {
  return [...labelSize(frame, opening, casing), ...labelShape(frame, opening)];
}

/** Where its size does not say it: `rise 8"`, near the crown. */
function labelShape(
  { sheet, at, wall }: ElevationFrame,
  { mark, at: left, width, sill, height, shape }: OpeningMeasure,
): string[] {
  if (!shape || shape.is === 'round') return [];
  const words =
    shape.is === 'rake'
      ? `${lengthText(shape.to)} ${shape.low}`
      : 'rise' in shape
        ? `rise ${lengthText(shape.rise)}`
        : `radius ${lengthText(shape.radius)}`;
  const [x, head] = at(left + width / 2, sill + height);
  const drops = shape.is === 'rake' ? [24, 34, 44, -9] : [-9, -17, 12, 20];
  const ceiling = at(0, topAt(wall, left + width / 2))[1];
  const spots = drops.map((drop): Spot => [x, head + drop]).filter((spot) => spot[1] > ceiling + 8);
  const isPut = sheet.tryWrite(spots, words, { size: sizes.note, color: 'muted' });
  return isPut ? [] : [`${mark}: ${words}`];
}

function labelSize(frame: ElevationFrame, opening: OpeningMeasure, casing: Length): string[] {
  const { sheet, at } = frame;
  const { mark, width, height, sill } = opening;
  const size =
    opening.shape?.is === 'round' ? `${lengthText(width)} round` : `${lengthText(width)} × ${lengthText(height)}`;
  const ground = isGlazed(opening) ? 'glass' : 'paper';
  const look = { size: sizes.note, color: 'muted', ground } as const;
  const upright = { ...look, turn: -90 } as const;
  const [left, head] = at(opening.at, sill + height);
  const [right, foot] = at(opening.at + width, sill);
  const [x, y] = at(opening.at + width / 2, sill + height * 0.56);
  const reach = sheet.textBox([0, 0], size, look)[1]![0] * 2;
  const isWide = reach < right - left - 6;
  const missing: string[] = [];
  const above: Spot[] = [head - 16, head - 22, foot + 20].map((down) => [x, down]);
  // A size that stands upright has room below its mark where that is near the head.
  const high = head + 11;
  const isHigh = !isWide && high + 9 + reach < foot - 3;
  const inside: Spot[] = [...(isHigh ? [high] : []), y, y + 12, y - 12].map((down) => [x, down]);
  if (!drawMark(sheet, right - left > 30 && foot - head > 22 ? [...inside, ...above] : above, mark, true))
    missing.push(mark);
  const isWithin = (box: Convex): boolean =>
    box.every(([across, down]) => across > left && across < right && down > head && down < foot);
  const write = (spots: readonly Spot[], lettering: Lettering, suits: (box: Convex) => boolean): boolean =>
    sheet.tryWrite(spots, size, lettering, 1, suits);
  const below = [16, 26, 36].map((drop): Spot => [x, y + drop]);
  if (isWide && foot - head > 44 && write(below, look, isWithin)) return missing;
  const middles = [(high + 9 + foot) / 2, (y + 12 + foot) / 2, (head + foot) / 2];
  const turned = middles.flatMap((down) => [2.5, 9.5, -4.5].map((shift): Spot => [x + shift, down]));
  if (write(turned, upright, isWithin)) return missing;
  const onPaper = { ...look, ground: 'paper' } as const;
  const isOutside = (box: Convex): boolean => isOnBareWall(frame, box);
  if (
    write(
      [head - 8, foot + 12, foot + 21].map((down): Spot => [x, down]),
      onPaper,
      isOutside,
    )
  )
    return missing;
  const edge = at(casing, 0)[0] - at(0, 0)[0];
  const beside = middles.flatMap((down): Spot[] => [
    [left - edge - 4, down],
    [right + edge + 9, down],
  ]);
  if (!write(beside, { ...upright, ground: 'paper' }, isOutside)) missing.push(`${mark} is ${size}`);
  return missing;
}

/** Does a figure lie on the wall, clear of every opening in it, of its top and of the floor? */
function isOnBareWall({ measure, wall, at }: ElevationFrame, box: Convex): boolean {
  const { run, id } = wall;
  const [left, floor] = at(0, Math.max(...wallFoot(wall).map(({ height }) => height)));
  const [right] = at(run, 0);
  const perNanometre = (right - left) / run;
  const isUnderTop = box.every(
    ([x, y]) => x > left && x < right && y < floor - 1 && y > at(0, topAt(wall, (x - left) / perNanometre))[1] + 1,
  );
  return (
    isUnderTop &&
    measure.openings
      .filter((opening) => opening.wall === id)
      .every((one) => !overlaps(box, corners({ at }, one.at, one.sill, one.at + one.width, one.sill + one.height), 0))
  );
}

function isGlazed(opening: OpeningMeasure): boolean {
  return opening.kind === 'window' || (opening.kind === 'door' && opening.operation === 'fixed');
}

function drawSash(frame: ElevationFrame, opening: OpeningMeasure): void {
  const { at, width, sill, height } = opening;
  const [left, right, bottom, top] = [at, at + width, sill, sill + height];
  const edge = Math.round(Math.min(frameWidth, width / 8, height / 8)) as Length;
  const inner = opening.shape
    ? shaped(frame, grown(opening, -edge as Length), left + edge, bottom + edge)
    : corners(frame, left + edge, bottom + edge, right - edge, top - edge);
  frame.sheet.polygon(inner, { pen: 'hair', color: 'ink', layer: 'object' });
  drawBars(frame, opening, inner);
}

/** Between its lights, as its record divides it: one pane has none. */
function drawBars(frame: ElevationFrame, opening: OpeningMeasure, inner: readonly Spot[]): void {
  const {
    at: left,
    sill,
    width,
    height,
    division = { across: opening.operation === 'double' ? 2 : 1, up: 1 },
  } = opening;
  const bars = [
    ...Array.from({ length: division.across - 1 }, (_, index) => {
      const along = left + (width * (index + 1)) / division.across;
      return [frame.at(along, sill), [0, -1]] as const;
    }),
    ...Array.from({ length: division.up - 1 }, (_, index) => {
      const up = sill + (height * (index + 1)) / division.up;
      return [frame.at(left, up), [1, 0]] as const;
    }),
  ];
  for (const [from, along] of bars)
    for (const stretch of stretchesInside([inner], from, along))
      frame.sheet.polyline(stretch, { pen: 'fine', layer: 'object', quiet: true });
}

/** Height of the opening's own top there. */
function headAt(opening: OpeningMeasure, along: number): number {
  const { at, sill, height, shape } = opening;
  if (!shape) return sill + height;
  return sill + fromFeet(topOf(outlineOf(opening), feet((along - at) as Length)));
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
    sheet.polyline([at(open, headAt(opening, open)), at(hinge, half), at(open, bottom)], {
      pen: 'hair',
      dash: 'hidden',
      layer: 'object',
      quiet: true,
    });
  if (opening.operation === 'double') {
    sheet.polyline([at(middle, bottom), at(middle, headAt(opening, middle))], {
      pen: 'fine',
      layer: 'object',
      quiet: true,
    });
    hinges(middle, left);
    hinges(middle, right);
  } else if (opening.operation === 'sliding') {
    sheet.polyline([at(middle, bottom), at(middle, headAt(opening, middle))], {
      pen: 'fine',
      layer: 'object',
      quiet: true,
    });
    drawArrow(frame, left + opening.width * 0.12, left + opening.width * 0.38, bottom + opening.height * 0.2);
  } else if (opening.operation === 'pocket') {
    if (opening.slides === undefined) return;
    const end = opening.slides === 'right' ? right - opening.width * 0.1 : left + opening.width * 0.1;
    drawArrow(frame, middle, end, bottom + opening.height * 0.2);
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
