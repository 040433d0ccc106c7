import { PathBuilder, circle, path } from '../base/svg/index.js';
import type { Convex, Spot } from './convex.js';
import { pens, sizes } from './pen.js';
import type { Sheet } from './sheet.js';
import { textWidth } from './text-width.js';

/** An opening mark in a hexagon, at the first place that is free; false when none is. */
export function drawMark(sheet: Sheet, places: readonly Spot[], mark: string, overLines = false): boolean {
  const half = textWidth(mark, sizes.note, 600) / 2 + 1;
  const place =
    places.find((spot) => sheet.isFree(hexagon(spot, half), 1.5)) ??
    (overLines ? places.find((spot) => sheet.isFree(hexagon(spot, half), 1.5, true)) : undefined);
  if (place === undefined) return false;
  const figure = hexagon(place, half);
  const look = {
    fill: 'paper',
    stroke: 'ink',
    'stroke-width': pens.fine,
    'stroke-linejoin': 'round',
  };
  sheet.place('label', path(new PathBuilder().polygon(figure).data, look), [figure], false);
  sheet.write([place[0], place[1] + sizes.note * 0.36], mark, { size: sizes.note, weight: 600 });
  sheet.reserve(figure);
  return true;
}

/** A room number in a circle. */
export function drawNumber(sheet: Sheet, center: Spot, number: string): void {
  const radius = numberRadius(number);
  const box: Convex = square(center, radius);
  const look = { fill: 'paper', stroke: 'ink', 'stroke-width': pens.object };
  sheet.place('label', circle(center[0], center[1], radius, look), [box], false);
  sheet.write([center[0], center[1] + sizes.name * 0.36], number, { size: sizes.name, weight: 600 });
  sheet.reserve(box);
}

export function numberRadius(number: string): number {
  return Math.max(11, textWidth(number, sizes.name, 600) / 2 + 4);
}

/** Height and half width of a hexagon around a mark. */
export function markSize(mark: string): { readonly halfWidth: number; readonly halfHeight: number } {
  return { halfWidth: textWidth(mark, sizes.note, 600) / 2 + 1 + 4.5, halfHeight: 7 };
}

function hexagon([x, y]: Spot, half: number): Convex {
  return [
    [x - half, y - 7],
    [x + half, y - 7],
    [x + half + 4.5, y],
    [x + half, y + 7],
    [x - half, y + 7],
    [x - half - 4.5, y],
  ];
}

function square([x, y]: Spot, half: number): Convex {
  return [
    [x - half, y - half],
    [x + half, y - half],
    [x + half, y + half],
    [x - half, y + half],
  ];
}
