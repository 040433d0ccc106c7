import { drawnRoom } from '../book/index.js';
import type { BookOption, BookRoom } from '../book/index.js';
import {
  drawCeilingPlan,
  drawChimneyBreast,
  drawEdgeSection,
  drawElevations,
  drawStep,
  drawPlan,
  drawSwatch,
  screenPalette,
} from '../draw/index.js';
import type { Drawing } from '../draw/index.js';
import { svgText } from '../svg/index.js';
import type { View } from './view.js';

export interface RoomDrawings {
  readonly plan: Drawing;
  readonly ceiling: Drawing;
  readonly features: readonly Drawing[];
  readonly elevations: readonly Drawing[];
}

/** The drawings of a room, for pages: colours are the style sheet's, so that one drawing serves light and dark. `prefix`
 *  keeps their ids apart where a page shows two rooms. */
export function drawRoom(room: BookRoom, view: View, prefix = 'draw'): RoomDrawings {
  const { measure, number, name } = room;
  const look = { palette: screenPalette, number, name };
  const drawn = drawnRoom(room, view);
  const neighbours = new Map(view.book.rooms.map((other) => [other.slug, other.name]));
  return {
    plan: drawPlan(measure, {
      ...look,
      id: `${prefix}-plan`,
      neighbours,
      ...(drawn.floor && { courses: drawn.floor }),
    }),
    ceiling: drawCeilingPlan(measure, {
      ...look,
      id: `${prefix}-ceiling`,
      ...(drawn.ceiling && { courses: drawn.ceiling }),
    }),
    features: [
      ...(measure.steps ?? []).map((step) => drawStep(step, { ...look, id: `${prefix}-${step.id}` })),
      ...measure.features.flatMap((feature) => {
        const options = { ...look, id: `${prefix}-feature-${feature.id}` };
        return (
          drawChimneyBreast(feature, options) ??
          drawEdgeSection(feature, { ...options, ...drawn.guards.get(feature.id) }) ??
          []
        );
      }),
    ],
    elevations: drawElevations(measure, {
      ...look,
      id: `${prefix}-wall`,
      neighbours,
      finishes: drawn.walls,
      faces: drawn.features,
      guards: drawn.guards,
    }),
  };
}

/** Two sizes of each swatch: the small one is drawn coarser. Both are shown at half their pixels or less. */
export const swatchSizes = { small: { width: 144, height: 108 }, large: { width: 400, height: 300 } } as const;
export type SwatchSize = keyof typeof swatchSizes;

/** Where an option's drawn sample stands in the book's folder. A file of its own: many pages show it. */
export function swatchPath(option: Pick<BookOption, 'category' | 'slug'>, size: SwatchSize): string {
  return `assets/swatches/${option.category}/${option.slug}-${size}.svg`;
}

/** The sample as a file. */
export function swatchFile(option: BookOption, size: SwatchSize): string {
  return `${svgText(drawSwatch(option.swatch, { ...swatchSizes[size], seed: option.id, title: option.name }))}\n`;
}
