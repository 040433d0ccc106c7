import { drawnRoom, type BookOption, type BookRoom, type DrawnRoom, type LookUp } from '../core/book/index.js';
import {
  atOneScale,
  drawSwatch,
  printPalette,
  roomViews,
  sampleFacts,
  type DrawOptions,
  type Drawing,
  type RoomView,
} from '../draw/index.js';
import { svgText } from '../base/svg/index.js';
import { feet } from '../base/units/index.js';
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

/** Ink and red chalk of the printed book over the drawing's own roles. */
export const palette = {
  ...printPalette,
  ink: '#1f2724',
  text: '#1f2724',
  muted: '#545e59',
  poche: '#2f3b36',
  accent: '#9c3d17',
};

export type Box = NonNullable<DrawOptions['box']>;

/** Inches of paper. The facts stand beside the plan, or under it when it is drawn for the whole width. */
const besideBox = { width: 4.9, height: 5.2 };
const wideBox = { width: 7, height: 5.2 };
/** Two walls stand in a row. */
const wallBox = { width: 3.45, height: 2.2 };
/** What dimensions take beside and above a wall, and the inches for a foot below which openings no longer read. */
const featureBox = { width: 4.2, height: 4.4 };
const sectionBox = { width: 4.9, height: 4.4 };
const ceilingBox = { width: 4.9, height: 3.9 };
const wallDimensions = { width: 1.4, height: 1.5 };
const leastScale = 1 / 8;
/** The same as a ratio, and 1:100 where that is the nearest. */
const smallest = 100;

export const planTitle = 'Plan, north up';

/** Characters of a room's name that a drawing has room for; the sheet's head says it whole. */
const longestName = 32;

/** Pixels of a swatch: three for each point, for the joints of small tile. */
const swatchSize = 66;

/** The drawings of a room's sheets. */
interface RoomPrints {
  /** At the scale that it says. */
  readonly plan: PrintDrawing;
  /** Is there room for the facts beside the plan? */
  readonly besidePlan: boolean;
  /** The walls at the scales that they say, in the order of the walk. */
  readonly elevations: readonly PrintDrawing[];
  /** The ceiling where it slopes or something is laid on it, sections, and what stands or falls in the room. */
  readonly features: readonly PrintDrawing[];
}

export function printRoom(room: BookRoom, look: LookUp): RoomPrints {
  const drawn = drawnRoom(room, look);
  const { plan, ceiling, sections, steps, features, walls } = roomViews(withShortNames(drawn, longestName));
  const print = (view: RoomView, box: Box, ratio?: number): Drawing => drawForPrint(view, room.slug, box, ratio);
  const beside = print(plan, besideBox);
  const isWide = beside.ratio > smallest;
  const wide = isWide ? print(plan, wideBox) : beside;
  const besidePlan = wide.scale === beside.scale;
  const wallSize = wallBoxOf(room);
  const hasCeiling = !isPlainCeiling(drawn);
  const ceilingAt = (ratio?: number): Drawing => {
    const usual = print(ceiling, ceilingBox, ratio);
    return ratio !== undefined && usual.ratio > ratio ? print(ceiling, wideBox, ratio) : usual;
  };
  const planAt = (ratio?: number): Drawing => print(plan, besidePlan ? besideBox : wideBox, ratio);
  const [floor, above] = hasCeiling ? atOneScale(planAt, ceilingAt) : [planAt()];
  return {
    plan: ready(floor, planTitle),
    besidePlan,
    elevations: walls.map((wall) => ready(print(wall, wallSize), wall.name, wall.note)),
    features: [
      ...(above ? [ready(above, 'Reflected ceiling plan', ceilingNote(drawn))] : []),
      ...sections.map((section) => ready(print(section, sectionBox), section.name, section.note)),
      ...steps.map((step) => ready(print(step, featureBox), step.name)),
      ...features.map((feature) => printFeature(feature, print(feature, featureBox), drawn)),
    ],
  };
}

/** Names cut to what a drawing has room for. */
export function withShortNames(room: DrawnRoom, longest: number): DrawnRoom {
  return {
    ...room,
    name: shorten(room.name, longest),
    neighbours: new Map([...room.neighbours].map(([slug, name]) => [slug, shorten(name, longest)])),
  };
}

/** Bare, in the colours of the printed book. */
export function drawForPrint(view: RoomView, id: string, box: Box, ratio?: number): Drawing {
  return view.draw({ id, palette, box, bare: true, ...(ratio !== undefined && { ratio }) });
}

export function ready({ svg, description, scale, width, height }: Drawing, title: string, note = ''): PrintDrawing {
  return { svg: svgText(svg), alt: description, title, scale, width, height, note };
}

/** Long and high rooms get the paper that the least scale needs. */
function wallBoxOf({ measure }: BookRoom): Box {
  const longest = Math.max(...measure.walls.map(({ run }) => feet(run)));
  return {
    width: Math.min(wideBox.width, Math.max(wallBox.width, longest * leastScale + wallDimensions.width)),
    height: Math.max(wallBox.height, feet(measure.highest) * leastScale + wallDimensions.height),
  };
}

function isPlainCeiling({ measure, ceiling }: DrawnRoom): boolean {
  const { ceiling: above, features, walls } = measure;
  const hasMore =
    walls.some(({ lean }) => lean) ||
    features.some(({ opensCeiling, overhead, footprint }) => opensCeiling ?? (overhead && !footprint));
  return above.facets.every(({ slope }) => slope === 0) && ceiling?.lay !== 'boards' && !hasMore;
}

function ceilingNote({ ceiling }: DrawnRoom): string {
  return ceiling === undefined ? '' : `${ceiling.product}. Blue: the line to snap for the first course.`;
}

function printFeature({ kind, id, name }: RoomView, drawing: Drawing, { features }: DrawnRoom): PrintDrawing {
  return kind === 'edge'
    ? ready(drawing, `${name}, section`, `Local code decides the guard's height and openings.`)
    : ready(drawing, name, features.get(id) ?? '');
}

/** A square of the finish. Decoration: the name beside it says what it is. */
export function swatchSvg(option: BookOption): string {
  return svgText(
    drawSwatch(option.swatch, {
      width: swatchSize,
      height: swatchSize,
      seed: option.id,
      title: option.name,
      facts: sampleFacts(option),
    }),
  );
}
