import type { Spot } from './convex.js';
import type { Sheet } from './sheet.js';

/** A break line where a floor or a ceiling runs on. */
export function drawBreak(sheet: Sheet, [x, y]: Spot, height: number): void {
  const half = height / 2 + 6;
  sheet.polyline(
    [
      [x, y - half],
      [x, y - 3],
      [x - 3, y - 1.5],
      [x + 3, y + 1.5],
      [x, y + 3],
      [x, y + half],
    ],
    { pen: 'fine', layer: 'cut' },
  );
}
