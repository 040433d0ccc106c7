import { planMarks } from '../../core/feature/index.js';
import type { MeasuredArc, RoomMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import { drawDimensions } from '../dimension.js';
import { lengthText } from '../length-text.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';
import { textWidth } from '../text-width.js';
import { centered, readable } from './feature-symbol.js';
import type { WallLine } from './wall-line.js';

const close = 1_600_000;

interface Side {
  readonly name: 'north' | 'east' | 'south' | 'west';
  readonly outward: Spot;
}

const sides: readonly Side[] = [
  { name: 'north', outward: [0, -1] },
  { name: 'west', outward: [-1, 0] },
  { name: 'south', outward: [0, 1] },
  { name: 'east', outward: [1, 0] },
];

/** Walls at an angle carry their own dimension, and arcs their radius; call before `drawSideStrings`, which stands outside of them. */
export function drawAlignedStrings(sheet: Sheet, lines: readonly WallLine[]): void {
  for (const line of lines) {
    if (line.wall.arc) {
      writeArc(sheet, line, line.wall.arc);
      continue;
    }
    if (sides.some((side) => faces(line, side))) continue;
    // Text under the line, on walls that face down, needs room on the near side.
    const reach = (line.openings.length > 0 ? 39 : 12) + (line.outward[1] > 0 ? 8 : 0);
    const stops = line.openings.length > 0 ? stopsOf(line) : [0, line.wall.run];
    drawDimensions(sheet, {
      origin: line.at(0, line.thickness + reach),
      along: line.along,
      outward: line.outward,
      stops,
      targets: stops.map((stop) => line.at(stop * sheet.perNanometre, line.thickness)),
    });
  }
}

/** `R 6'-0", 8'-4 1/2" along it`, outside of the wall or, where that is taken, inside. */
function writeArc(sheet: Sheet, line: WallLine, { radius, bows }: MeasuredArc): void {
  const words = `R ${lengthText(radius)}, ${lengthText(line.wall.run)} along it`;
  const turn = readable(line.along);
  // On the hollow side the ends of straight words would stand in the wall.
  const half = textWidth(words, sizes.note) / 2;
  const off = (half * half) / (2 * radius * sheet.perNanometre);
  const [outside, inside] = [line.thickness + 9 + (bows === 'in' ? off : 0), -9 - (bows === 'out' ? off : 0)];
  const spots = [outside, outside + 13, inside, inside - 13].map((out) =>
    centered(line.at(line.length / 2, out), turn),
  );
  sheet.tryWrite(spots, words, { size: sizes.note, turn, ground: 'paper' });
}

/** Corners, openings and breasts of each side in one string, the overall sizes outside of it on the north and the west. */
export function drawSideStrings(sheet: Sheet, measure: RoomMeasure, lines: readonly WallLine[]): void {
  const bounds = sheet.bounds;
  const limits = { north: -bounds.top, south: bounds.bottom, west: -bounds.left, east: bounds.right };
  const seen: number[][] = [];
  for (const side of sides) {
    const isLevel = side.outward[0] === 0;
    const along: Spot = isLevel ? [1, 0] : [0, -1];
    const overall = isLevel
      ? extentOf(measure.plan.map((point) => point.x))
      : extentOf(measure.plan.map((point) => point.y));
    const facing = lines.filter((line) => faces(line, side));
    const stops = uniqueStops(facing.flatMap((line) => sideStops(line, massesOn(line, measure), isLevel)));
    const hasOverall = side.name === 'north' || side.name === 'west';
    const isOverall =
      stops.length === 2 && Math.abs(stops[0]! - overall[0]) < close && Math.abs(stops[1]! - overall[1]) < close;
    const isRepeat = seen.some(
      (other) => other.length === stops.length && other.every((stop, index) => Math.abs(stop - stops[index]!) < close),
    );
    let offset = limits[side.name] + 13;
    const originOf = (out: number): Spot => (isLevel ? [0, side.outward[1] * out] : [side.outward[0] * out, 0]);
    const targetsOf = (list: readonly number[]): (Spot | undefined)[] =>
      list.map((stop) => outerFace(sheet, facing, stop, isLevel));
    const isInverted = side.name === 'south' || side.name === 'east';
    if (stops.length >= 2 && !isOverall && !isRepeat) {
      seen.push(stops);
      offset += isInverted ? 8 : 0;
      const reach = drawDimensions(sheet, {
        origin: originOf(offset),
        along,
        outward: side.outward,
        stops,
        targets: targetsOf(stops),
      });
      offset += reach + 7;
    }
    if (hasOverall && facing.length > 0) {
      drawDimensions(sheet, {
        origin: originOf(offset),
        along,
        outward: side.outward,
        stops: overall,
        targets: targetsOf(overall),
      });
    }
  }
}

function faces(line: WallLine, side: Side): boolean {
  return line.outward[0] * side.outward[0] + line.outward[1] * side.outward[1] > 0.9999;
}

/** Where what is built up before a wall begins and ends along it, as a chimney's breast. */
function massesOn({ wall }: WallLine, { features }: RoomMeasure): readonly number[] {
  return features.flatMap((feature) =>
    planMarks(feature).flatMap((mark) => {
      if (mark.role !== 'mass' || mark.wall !== wall.id) return [];
      const along = mark.outline.map((corner) => corner.along);
      return [Math.min(...along), Math.max(...along)];
    }),
  );
}

/** Corners and openings; of an arc, which is dimensioned straight across, the corners. */
function stopsOf(line: WallLine): number[] {
  const { arc, from, to } = line.wall;
  if (arc) return [0, Math.hypot(to.x - from.x, to.y - from.y)];
  return uniqueStops([
    0,
    line.wall.run,
    ...line.openings.flatMap((opening) => [opening.at, opening.at + opening.width]),
  ]);
}

/** Stops of a wall as coordinates of the room. */
function sideStops(line: WallLine, masses: readonly number[], isLevel: boolean): number[] {
  const start = isLevel ? line.wall.from.x : line.wall.from.y;
  const direction = isLevel ? Math.sign(line.along[0]) : -Math.sign(line.along[1]);
  return [...stopsOf(line), ...(line.wall.arc ? [] : masses)].map((stop) => start + direction * stop);
}

function uniqueStops(stops: readonly number[]): number[] {
  return [...stops].sort((a, b) => a - b).filter((stop, index, all) => index === 0 || stop - all[index - 1]! > close);
}

function extentOf(values: readonly number[]): [number, number] {
  return [Math.min(...values), Math.max(...values)];
}

function outerFace(sheet: Sheet, facing: readonly WallLine[], stop: number, isLevel: boolean): Spot | undefined {
  const place = isLevel ? stop * sheet.perNanometre : -stop * sheet.perNanometre;
  for (const line of facing) {
    const axis = isLevel ? 0 : 1;
    const low = Math.min(line.from[axis], line.to[axis]) - 0.1;
    const high = Math.max(line.from[axis], line.to[axis]) + 0.1;
    if (place < low || place > high) continue;
    const outer = line.at(0, line.thickness);
    return isLevel ? [place, outer[1]] : [outer[0], place];
  }
  return undefined;
}
