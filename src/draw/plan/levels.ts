import type { FloorLevel, RoomMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import { spotsInside } from '../inside.js';
import { levelText } from '../length-text.js';
import { sizes } from '../pen.js';
import { drawRise } from '../rise-arrow.js';
import type { Sheet } from '../sheet.js';

/** Edges of the parts of a floor that lie at other heights. Returns what writes their heights and slopes once all lines stand. */
export function drawLevels(sheet: Sheet, { floor }: RoomMeasure): readonly (() => void)[] {
  const parts = (floor.levels ?? []).filter(({ height, slope }) => height !== 0 || slope !== 0);
  return parts.map((level) => {
    const outline = level.plan.outline.map((point) => sheet.spot(point));
    sheet.polygon(outline, { pen: 'object', layer: 'object' });
    return () => labelLevel(sheet, level, outline);
  });
}

function labelLevel(sheet: Sheet, level: FloorLevel, outline: readonly Spot[]): void {
  const spots = spotsInside(outline, 18);
  if (level.slope !== 0) drawRise(sheet, level, outline, spots);
  const height = levelText(level.height);
  const words = `${level.name}${level.slope === 0 ? '' : ' from'} ${height}`;
  const places = spots.map(([x, y]): Spot => [x, y + 2.5]);
  const look = { size: sizes.note, ground: 'paper' } as const;
  if (!sheet.tryWrite(places, words, look)) sheet.tryWrite(places, height, look);
}
