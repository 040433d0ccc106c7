import { drawnRoom } from '../book/index.js';
import type { BookOption, BookRoom, DrawnRoom } from '../book/index.js';
import {
  drawCeilingPlan,
  drawChimneyBreast,
  drawEdgeSection,
  drawElevations,
  drawPlan,
  drawStep,
  drawSwatch,
  printPalette,
} from '../draw/index.js';
import type { DrawOptions, Drawing } from '../draw/index.js';
import { svgText } from '../svg/index.js';
import { feet } from '../units/index.js';
import type { LookUp } from '../book/index.js';
import { shorten } from './shorten.js';

/** A drawing for the page: SVG text, words for who does not see it, size on paper in inches. */
export interface PrintDrawing {
  readonly svg: string;
  readonly alt: string;
  readonly title: string;
  /** `1/8" = 1'-0"`. */
  readonly scale: string;
  readonly width: number;
  readonly height: number;
  /** Small print under it. */
  readonly note: string;
}

/** Ink and chalk-line blue of the printed book over the drawing's own roles. */
export const palette = {
  ...printPalette,
  ink: '#16242e',
  text: '#16242e',
  muted: '#51606b',
  poche: '#2c3b46',
  accent: '#1f5fa8',
};

/** Inches of paper. The facts stand beside the plan, or under it when it is drawn for the whole width. */
const besideBox = { width: 4.9, height: 5.2 };
const wideBox = { width: 7, height: 5.2 };
const coverBox = { width: 6.3, height: 5.2 };
/** Two walls stand in a row. */
const wallBox = { width: 3.45, height: 2.2 };
/** What dimensions take beside and above a wall, and the inches for a foot below which openings no longer read. */
const featureBox = { width: 4.2, height: 4.4 };
const ceilingBox = { width: 4.9, height: 3.9 };
const wallDimensions = { width: 1.4, height: 1.5 };
const leastScale = 1 / 8;

/** Characters of a room's name that a drawing has room for; the sheet's head says it whole. */
const longestName = 32;

/** Pixels of a swatch: three for each point, for the joints of small tile. */
const swatchSize = 66;

/** The plan at the scale that it says, and whether there is room for the facts beside it. */
export function planDrawing(room: BookRoom, look: LookUp): { plan: PrintDrawing; isBeside: boolean } {
  const beside = drawRoom(room, look, `plan-${room.slug}`, besideBox);
  const wide = inchesPerFoot(beside.scale) < leastScale ? drawRoom(room, look, `plan-${room.slug}`, wideBox) : beside;
  const isBeside = wide.scale === beside.scale;
  return { plan: isBeside ? beside : wide, isBeside };
}

/** Inches for a foot of a scale by its name, such as `3/16" = 1'-0"`. */
export function inchesPerFoot(name: string): number {
  const [, over = '1', under = '1'] = /^(\d+)(?:\/(\d+))?"/.exec(name) ?? [];
  return Number(over) / Number(under);
}

/** The plan as large as the cover has room for. */
export function coverDrawing(room: BookRoom, look: LookUp): PrintDrawing {
  return drawRoom(room, look, 'cover', coverBox);
}

/** The walls at the scales that they say, in the order of the walk. Long and high rooms get the paper that the least scale
 *  needs. */
export function elevationDrawings(room: BookRoom, look: LookUp): readonly PrintDrawing[] {
  const { number, measure, slug } = room;
  const name = shorten(room.name, longestName);
  const longest = Math.max(...measure.walls.map(({ run }) => feet(run)));
  const box = {
    width: Math.min(wideBox.width, Math.max(wallBox.width, longest * leastScale + wallDimensions.width)),
    height: Math.max(wallBox.height, feet(measure.highest) * leastScale + wallDimensions.height),
  };
  const { walls: finishes, features: faces, guards } = drawnRoom(room, look);
  const seen = { finishes, faces, guards };
  const options = {
    id: `elevation-${slug}`,
    palette,
    number,
    name,
    neighbours: neighboursOf(look),
    box,
    bare: true,
    ...seen,
  };
  return drawElevations(measure, options).map((drawing, index) =>
    ready(drawing, measure.walls[index]?.name ?? drawing.title),
  );
}

/** The ceiling where it slopes or something is laid on it, and what stands or falls in the room. */
export function ceilingAndFeatureDrawings(room: BookRoom, look: LookUp): readonly PrintDrawing[] {
  const { measure, number, slug } = room;
  const drawn = drawnRoom(room, look);
  const options = { palette, number, name: shorten(room.name, longestName), bare: true };
  const isPlain = measure.ceiling.facets.every(({ slope }) => slope === 0) && drawn.ceiling?.lay !== 'boards';
  const ceiling = isPlain
    ? []
    : [
        ready(
          drawCeilingPlan(measure, {
            ...options,
            id: `ceiling-${slug}`,
            box: ceilingBox,
            ...(drawn.ceiling && { courses: drawn.ceiling }),
          }),
          'Ceiling, as in a mirror on the floor',
          ceilingNote(drawn),
        ),
      ];
  const features = measure.features.flatMap((feature): PrintDrawing[] => {
    const own = { ...options, id: `feature-${slug}-${feature.id}`, box: featureBox };
    const breast = drawChimneyBreast(feature, own);
    if (breast) return [ready(breast, feature.name, drawn.features.get(feature.id) ?? '')];
    const edge = drawEdgeSection(feature, { ...own, ...drawn.guards.get(feature.id) });
    return edge ? [ready(edge, `${feature.name}, section`, guardNote)] : [];
  });
  const steps = (measure.steps ?? []).map((step) =>
    ready(drawStep(step, { ...options, id: `${slug}-${step.id}`, box: featureBox }), step.name),
  );
  return [...ceiling, ...steps, ...features];
}

const guardNote = `Local code decides the guard's height and openings.`;

function ceilingNote({ ceiling }: DrawnRoom): string {
  return ceiling === undefined ? '' : `${ceiling.product}. Blue: the line to snap for the first course.`;
}

/** A square of the finish. Decoration: the name beside it says what it is. */
export function swatchSvg(option: BookOption): string {
  return svgText(
    drawSwatch(option.swatch, { width: swatchSize, height: swatchSize, seed: option.id, title: option.name }),
  );
}

function drawRoom(room: BookRoom, look: LookUp, id: string, box: NonNullable<DrawOptions['box']>): PrintDrawing {
  const { measure, number } = room;
  const name = shorten(room.name, longestName);
  const { floor } = drawnRoom(room, look);
  const options = { id, palette, number, name, neighbours: neighboursOf(look), box, bare: true };
  const drawing = drawPlan(measure, { ...options, ...(floor && { courses: floor }) });
  return ready(drawing, 'Plan, north up');
}

function neighboursOf(look: LookUp): ReadonlyMap<string, string> {
  return new Map(look.book.rooms.map(({ slug, name }) => [slug, shorten(name, longestName)]));
}

function ready({ svg, description, scale, width, height }: Drawing, title: string, note = ''): PrintDrawing {
  return { svg: svgText(svg), alt: description, title, scale, width, height, note };
}
