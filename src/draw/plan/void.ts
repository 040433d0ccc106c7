import type { Spot } from '../convex.js';
import { spotsInside } from '../inside.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';

/** A hole in the floor or in the ceiling, crossed with dashes. Returns what writes its words once all lines stand. */
export function drawVoid(sheet: Sheet, outline: readonly Spot[], words: string): () => void {
  sheet.polygon(outline, { pen: 'object', dash: 'hidden', fill: 'paper', layer: 'fill' });
  const half = Math.floor(outline.length / 2);
  if (outline.length === 4) {
    for (let index = 0; index < half; index++) {
      sheet.polyline([outline[index]!, outline[index + half]!], { pen: 'hair', dash: 'hidden', quiet: true });
    }
  }
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

function fits(
  sheet: Sheet,
  spot: Spot,
  { words, ...lettering }: { words: string; size: number; turn: number },
  outline: readonly Spot[],
): boolean {
  const box = sheet.textBox(spot, words, lettering);
  const xs = outline.map((corner) => corner[0]);
  const ys = outline.map((corner) => corner[1]);
  return box.every(
    ([x, y]) =>
      x > Math.min(...xs) + 2 && x < Math.max(...xs) - 2 && y > Math.min(...ys) + 2 && y < Math.max(...ys) - 2,
  );
}
