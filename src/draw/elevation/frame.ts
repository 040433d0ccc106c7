import { wallFoot, type RoomMeasure, type WallMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import type { Sheet } from '../sheet.js';

/** A wall unfolded: along it from the left, and up from the floor, both in nanometres. */
export interface ElevationFrame {
  readonly sheet: Sheet;
  readonly measure: RoomMeasure;
  readonly wall: WallMeasure;
  at(along: number, up: number): Spot;
}

export function elevationFrame(sheet: Sheet, measure: RoomMeasure, wall: WallMeasure): ElevationFrame {
  return { sheet, measure, wall, at: (along, up) => sheet.spot({ x: along, y: up }) };
}

/** The wall's outline: floor from right to left, then the top profile. */
export function wallOutline(frame: ElevationFrame): Spot[] {
  const top = frame.wall.top.map(({ along, height }) => frame.at(along, height));
  return [...floorSpots(frame).reverse(), ...top];
}

/** The floor along the wall, from left to right. */
export function floorSpots({ wall, at }: ElevationFrame): Spot[] {
  return wallFoot(wall).map(({ along, height }) => at(along, height));
}

/** Height of the top at a place along the wall; at a jump the lower one. */
export function topAt(wall: WallMeasure, along: number): number {
  let least = Infinity;
  for (let index = 0; index + 1 < wall.top.length; index++) {
    const a = wall.top[index]!;
    const b = wall.top[index + 1]!;
    if (along < a.along || along > b.along) continue;
    const share = b.along > a.along ? (along - a.along) / (b.along - a.along) : 0;
    least = Math.min(least, a.height + (b.height - a.height) * share);
  }
  return Number.isFinite(least) ? least : (wall.top[0]?.height ?? 0);
}

export function corners(
  frame: Pick<ElevationFrame, 'at'>,
  left: number,
  bottom: number,
  right: number,
  top: number,
): Spot[] {
  return [frame.at(left, bottom), frame.at(right, bottom), frame.at(right, top), frame.at(left, top)];
}

/** A rectangle on the wall, cut by the wall's top. */
export function underTop(
  { wall, at }: ElevationFrame,
  left: number,
  bottom: number,
  right: number,
  top: number,
): Spot[] {
  const between = wall.top
    .filter(({ along }) => along > left && along < right)
    .map(({ along, height }) => ({ along, height }));
  const line = [{ along: left, height: topAt(wall, left) }, ...between, { along: right, height: topAt(wall, right) }];
  const crossings = line.slice(1).flatMap((end, index) => {
    const start = line[index]!;
    if (start.height > top === end.height > top || end.along <= start.along) return [];
    const share = (top - start.height) / (end.height - start.height);
    return [{ along: start.along + (end.along - start.along) * share, height: top }];
  });
  const edge = [...line, ...crossings].sort((a, b) => a.along - b.along);
  const head = edge.map(({ along, height }) => at(along, Math.max(bottom, Math.min(height, top))));
  return [at(right, bottom), at(left, bottom), ...head];
}
