import { extentOf, type Spot } from '../convex.js';
import { spotsInside, stretchesInside } from '../inside.js';
import { sizes, type Pen } from '../pen.js';
import type { Sheet } from '../sheet.js';
import { lineThrough } from './wall-line.js';

/** A hole in the floor or in the ceiling, crossed with dashes. Returns what writes its words once all lines stand. */
export function drawVoid(sheet: Sheet, outline: readonly Spot[], words: string, pen: Pen = 'object'): () => void {
  sheet.polygon(outline, { pen, dash: 'hidden', fill: 'paper', layer: 'fill' });
  for (const line of crossOf(outline)) sheet.polyline(line, { pen: 'hair', dash: 'hidden', quiet: true });
  return () => {
    const look = { size: sizes.note, color: 'muted', ground: 'paper' } as const;
    const spots = spotsInside(outline, 10).map(([x, y]): Spot => [x, y + 2.4]);
    for (const turn of [0, -90]) {
      const lettering = { ...look, turn };
      const fitting = spots.filter((spot) => fits(sheet, spot, { ...lettering, words }, outline));
      if (sheet.tryWrite(fitting, words, lettering)) return;
    }
  };
}

/** From corner to corner, or what of the way between the corners of the box around it lies in it. */
function crossOf(outline: readonly Spot[]): readonly (readonly [Spot, Spot])[] {
  const [a, b, c, d] = outline;
  if (outline.length === 4 && a && b && c && d)
    return [
      [a, c],
      [b, d],
    ];
  const { left, right, top, bottom } = extentOf(outline);
  const [falling, rising] = [lineThrough([left, top], [right, bottom]), lineThrough([left, bottom], [right, top])];
  return [falling, rising].flatMap(({ along, at }) => stretchesInside([outline], at(0, 0), along));
}

function fits(
  sheet: Sheet,
  spot: Spot,
  { words, ...lettering }: { words: string; size: number; turn: number },
  outline: readonly Spot[],
): boolean {
  const box = sheet.textBox(spot, words, lettering);
  const { left, right, top, bottom } = extentOf(outline);
  return box.every(([x, y]) => x > left + 2 && x < right - 2 && y > top + 2 && y < bottom - 2);
}
