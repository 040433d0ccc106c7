import { drawnRoom, type BookOption, type BookRoom } from '../core/book/index.js';
import {
  atOneScale,
  drawSwatch,
  roomViews,
  sampleFacts,
  screenPalette,
  type Drawing,
  type RoomView,
} from '../draw/index.js';
import { svgText } from '../base/svg/index.js';
import type { View } from './view.js';

interface RoomDrawings {
  readonly plan: Drawing;
  readonly ceiling: Drawing;
  readonly sections: readonly Drawing[];
  /** Steps of the ceiling, and what stands or falls in the room. */
  readonly features: readonly Drawing[];
  readonly elevations: readonly Drawing[];
}

/** The drawings of a room, for pages. */
export function drawRoom(room: BookRoom, view: View): RoomDrawings {
  const { plan, ceiling, sections, steps, features, walls } = roomViews(drawnRoom(room, view));
  const [floor, above] = planWithCeiling(plan, ceiling);
  return {
    plan: floor,
    ceiling: above,
    sections: sections.map((section) => drawForPage(section)),
    features: [...steps, ...features].map((one) => drawForPage(one)),
    elevations: walls.map((wall) => drawForPage(wall)),
  };
}

/** The plan alone, without what a sheet says of it: it is seen beside other pictures and claims no scale. */
export function drawPlan(room: BookRoom, view: View): Drawing {
  const { plan } = roomViews(drawnRoom(room, view));
  return plan.draw({ id: 'draw', palette: screenPalette, medium: 'screen', bare: true });
}

/** Colours are the style sheet's, so that one drawing serves light and dark. `id` keeps ids apart where a page shows two rooms. */
export function drawForPage(view: RoomView, id = 'draw', ratio?: number): Drawing {
  return view.draw({ id, palette: screenPalette, medium: 'screen', ...(ratio !== undefined && { ratio }) });
}

/** Both at the scale of the smaller one. */
export function planWithCeiling(plan: RoomView, ceiling: RoomView): readonly [Drawing, Drawing] {
  return atOneScale(
    (ratio) => drawForPage(plan, 'draw', ratio),
    (ratio) => drawForPage(ceiling, 'draw', ratio),
  );
}

/** Two sizes of each swatch: the small one is drawn coarser. Both are shown at half their pixels or less. */
export const swatchSizes = { small: { width: 144, height: 108 }, large: { width: 400, height: 300 } } as const;
type SwatchSize = keyof typeof swatchSizes;

/** Where an option's drawn sample stands in the book's folder. A file of its own: many pages show it. */
export function swatchPath(option: Pick<BookOption, 'category' | 'slug'>, size: SwatchSize): string {
  return `assets/swatches/${option.category}/${option.slug}-${size}.svg`;
}

/** The sample as a file. */
export function swatchFile(option: BookOption, size: SwatchSize): string {
  return `${svgText(drawSwatch(option.swatch, { ...swatchSizes[size], seed: option.id, title: option.name, facts: sampleFacts(option) }))}\n`;
}
