import type { Region } from '../../model/index.js';
import { spotsInside } from '../inside.js';
import { sizes } from '../pen.js';
import type { ElevationFrame } from './frame.js';

/** Part of a wall that takes one finish: along it from the left and up, as `Surface.regions`. */
export interface FinishRegion {
  readonly label: string;
  readonly region: Region;
}

/** Tints the parts in turn and dashes their boundaries. Returns what writes their names once all lines stand. */
export function drawFinishes({ sheet, at }: ElevationFrame, finishes: readonly FinishRegion[]): () => void {
  finishes.forEach(({ region }, index) => {
    const outlines = [region.outline, ...region.holes].map((outline) => outline.map((point) => at(point.x, point.y)));
    sheet.region(outlines, {
      pen: 'fine',
      dash: 'fine',
      fill: index % 2 === 0 ? 'tone' : 'paper',
      layer: 'fill',
      quiet: true,
    });
  });
  return () => {
    for (const [index, { label, region }] of finishes.entries()) {
      const outline = region.outline.map((point) => at(point.x, point.y));
      const spots = spotsInside(outline, 14);
      const ground = index % 2 === 0 ? 'tone' : 'paper';
      if (!sheet.tryWrite(spots, label, { size: sizes.note, ground }, 2))
        sheet.tryWrite(spots, label, { size: sizes.note, turn: -90, ground }, 2);
    }
  };
}
