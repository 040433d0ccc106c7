import { drawnRoom, type BookOption, type BookRoom } from '../core/book/index.js';
import { drawSwatch, roomViews, screenPalette, type Drawing, type RoomView } from '../draw/index.js';
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
  return {
    plan: drawForPage(plan),
    ceiling: drawForPage(ceiling),
    sections: sections.map((section) => drawForPage(section)),
    features: [...steps, ...features].map((one) => drawForPage(one)),
    elevations: walls.map((wall) => drawForPage(wall)),
  };
}

/** The plan alone, without what a sheet says of it: it is seen beside other pictures and claims no scale. */
export function drawPlan(room: BookRoom, view: View): Drawing {
  return roomViews(drawnRoom(room, view)).plan.draw({ id: 'draw', palette: screenPalette, bare: true });
}

/** Colours are the style sheet's, so that one drawing serves light and dark. `id` keeps ids apart where a page shows two rooms. */
export function drawForPage(view: RoomView, id = 'draw'): Drawing {
  return view.draw({ id, palette: screenPalette, medium: 'screen' });
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
  return `${svgText(drawSwatch(option.swatch, { ...swatchSizes[size], seed: option.id, title: option.name }))}\n`;
}
