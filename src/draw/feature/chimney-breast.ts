import type { FeatureMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import { drawDimensions } from '../dimension.js';
import type { DrawOptions, Drawing } from '../drawing.js';
import type { Title } from '../drawn-sheet.js';
import { extentOf, faceExtent, figureAt, fireboxOf, type Extent } from '../figures.js';
import { fitDrawing } from '../issue.js';
import { lengthText } from '../length-text.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';

export interface FeatureOptions extends DrawOptions {
  /** Number and name of the room, for the title. */
  readonly number: string;
  readonly name: string;
}

const foot = 304_800_000;

/** What draws front and side of a chimney breast with firebox and hearth; undefined when its measure has no front. */
export function breastDrawer(feature: FeatureMeasure): ((options: FeatureOptions) => Drawing) | undefined {
  const front = feature.faces.find((face) => face.id.endsWith('/front'));
  const side = feature.faces.find((face) => face.id.endsWith('/left'));
  const extent = front === undefined ? undefined : extentOf(front.regions);
  const depthExtent = side === undefined ? undefined : extentOf(side.regions);
  if (front === undefined || side === undefined || extent === undefined || depthExtent === undefined) return undefined;
  const faces = { front: front.regions, side: side.regions, extent, depthExtent };
  return (options) => drawBreast(feature, faces, options);
}

/** The faces seen, with their extents. */
interface BreastFaces {
  readonly front: FeatureMeasure['faces'][number]['regions'];
  readonly side: FeatureMeasure['faces'][number]['regions'];
  readonly extent: Extent;
  readonly depthExtent: Extent;
}

function drawBreast(
  feature: FeatureMeasure,
  { front, side, extent, depthExtent }: BreastFaces,
  options: FeatureOptions,
): Drawing {
  const corners = feature.runs.find((run) => run.id.endsWith('/corners'));
  const notes =
    corners === undefined
      ? []
      : [`Outside corners ${corners.pieces.map(lengthText).join(' and ')}, ${lengthText(corners.length)} in all`];
  const title = {
    title: `${feature.name} – ${options.number} ${options.name}`,
    description: describe(feature, options),
    notes,
  };
  const draw = (sheet: Sheet): Title => {
    const firebox = fireboxOf(feature);
    const hearth = hearthOf(feature);
    drawFront(sheet, front, extent, firebox, hearth);
    const gap = 62 / sheet.perNanometre;
    const start = Math.max(extent.right, (extent.left + extent.right + (hearth?.width ?? 0)) / 2) + gap;
    drawSide(sheet, { start, regions: side, extent: depthExtent, hearth });
    const words = sheet.bounds.top - 8;
    const heading = { size: sizes.dimension, weight: 600 } as const;
    sheet.write([sheet.spot({ x: (extent.left + extent.right) / 2, y: 0 })[0], words], 'Front', heading);
    sheet.write([sheet.spot({ x: start + depthExtent.right / 2, y: 0 })[0], words], 'Side', heading);
    return title;
  };
  const shows = { number: options.number, name: options.name };
  const span = { width: extent.right - extent.left, height: extent.top };
  return fitDrawing({ of: feature, view: 'breast', shows, largest: 16, span, draw }, options);
}

interface Hearth {
  readonly width: number;
  readonly depth: number;
  /** Top above the floor and thickness of the slab; undefined when the record gives none. */
  readonly height?: number;
  readonly slab: number;
}

function hearthOf(feature: FeatureMeasure): Hearth | undefined {
  const extent = faceExtent(feature, 'hearth');
  if (extent === undefined) return undefined;
  const height = figureAt(feature, ['hearth', 'height']);
  const slab = figureAt(feature, ['hearth', 'thickness']) ?? 2 * 25_400_000;
  return {
    width: extent.right - extent.left,
    depth: extent.top - extent.bottom,
    slab: Math.min(slab, height ?? slab),
    ...(height === undefined ? {} : { height }),
  };
}

function drawFront(
  sheet: Sheet,
  regions: FeatureMeasure['faces'][number]['regions'],
  extent: Extent,
  firebox: Extent | undefined,
  hearth: Hearth | undefined,
): void {
  const at = (x: number, y: number): Spot => sheet.spot({ x, y });
  for (const region of regions) {
    sheet.polygon(
      region.outline.map((point) => sheet.spot(point)),
      { pen: 'cut', fill: 'tone', layer: 'fill' },
    );
  }
  if (firebox !== undefined) {
    sheet.polygon(
      [
        at(firebox.left, firebox.bottom),
        at(firebox.right, firebox.bottom),
        at(firebox.right, firebox.top),
        at(firebox.left, firebox.top),
      ],
      { pen: 'object', fill: 'poche', layer: 'object' },
    );
  }
  const middle = (extent.left + extent.right) / 2;
  if (hearth !== undefined) drawHearth(sheet, middle - hearth.width / 2, middle + hearth.width / 2, hearth);
  drawFloor(
    sheet,
    Math.min(extent.left, middle - (hearth?.width ?? 0) / 2),
    Math.max(extent.right, middle + (hearth?.width ?? 0) / 2),
  );

  const across = [extent.left, ...(firebox === undefined ? [] : [firebox.left, firebox.right]), extent.right];
  let below = at(0, 0)[1] + 22;
  const origin = (line: number): Spot => [0, line];
  if (across.length > 2) {
    below +=
      drawDimensions(sheet, {
        origin: origin(below),
        along: [1, 0],
        outward: [0, 1],
        stops: across,
        targets: across.map((stop) => at(stop, -0.1 * foot)),
      }) + 13;
  }
  below +=
    drawDimensions(sheet, {
      origin: origin(below),
      along: [1, 0],
      outward: [0, 1],
      stops: [extent.left, extent.right],
    }) + 13;
  if (hearth !== undefined && Math.abs(hearth.width - (extent.right - extent.left)) > 1_600_000) {
    drawDimensions(sheet, {
      origin: origin(below),
      along: [1, 0],
      outward: [0, 1],
      stops: [middle - hearth.width / 2, middle + hearth.width / 2],
    });
  }
  const left = at(Math.min(extent.left, middle - (hearth?.width ?? 0) / 2), 0)[0] - 20;
  const up = [
    0,
    ...(firebox === undefined ? [] : [firebox.bottom, firebox.top].filter((level) => level > 1_600_000)),
    extent.top,
  ];
  const targets = up.map((stop): Spot => [at(extent.left, 0)[0], at(0, stop)[1]]);
  const reach =
    up.length > 2
      ? drawDimensions(sheet, { origin: [left, 0], along: [0, -1], outward: [-1, 0], stops: up, targets }) + 7
      : 0;
  drawDimensions(sheet, { origin: [left - reach, 0], along: [0, -1], outward: [-1, 0], stops: [0, extent.top] });
}

function drawSide(
  sheet: Sheet,
  part: {
    start: number;
    regions: FeatureMeasure['faces'][number]['regions'];
    extent: Extent;
    hearth: Hearth | undefined;
  },
): void {
  const { start, extent, hearth } = part;
  const at = (x: number, y: number): Spot => sheet.spot({ x: start + x, y });
  const wall = -4.5 * 25_400_000;
  // The face is seen with its back to the left: the wall goes as high as the ceiling there.
  const back = part.regions.flatMap((region) => region.outline).filter((point) => point.x - extent.left < 1_600_000);
  const high = Math.max(0, ...back.map((point) => point.y));
  sheet.polygon([at(wall, 0), at(0, 0), at(0, high), at(wall, high)], { pen: 'fine', fill: 'poche', layer: 'cut' });
  for (const region of part.regions) {
    sheet.polygon(
      region.outline.map((point) => at(point.x - extent.left, point.y)),
      { pen: 'cut', fill: 'tone', layer: 'fill' },
    );
  }
  const depth = extent.right - extent.left;
  const reach = depth + (hearth?.depth ?? 0);
  if (hearth !== undefined) drawHearth(sheet, start + depth, start + reach, hearth);
  drawFloor(sheet, start + wall, start + reach);
  const stops = hearth === undefined ? [0, depth] : [0, depth, reach];
  const below = at(0, 0)[1] + 22;
  drawDimensions(sheet, {
    origin: [at(0, 0)[0], below],
    along: [1, 0],
    outward: [0, 1],
    stops,
    targets: stops.map((stop) => at(stop, -0.1 * foot)),
  });
  if (hearth?.height !== undefined && hearth.height > 0) {
    const right = at(reach, 0)[0] + 28;
    drawDimensions(sheet, {
      origin: [right, 0],
      along: [0, -1],
      outward: [1, 0],
      stops: [0, hearth.height],
      targets: [at(reach, 0), at(reach, hearth.height)],
    });
    sheet.tryWrite([[right, at(0, hearth.height)[1] - 14]], 'hearth', { size: sizes.note, color: 'muted' });
  }
}

/** The hearth's slab, and what carries it when it is raised. */
function drawHearth(sheet: Sheet, left: number, right: number, hearth: Hearth): void {
  const top = hearth.height ?? hearth.slab;
  const box = (low: number, high: number): Spot[] => [
    sheet.spot({ x: left, y: low }),
    sheet.spot({ x: right, y: low }),
    sheet.spot({ x: right, y: high }),
    sheet.spot({ x: left, y: high }),
  ];
  if (top <= 0) return;
  if (top > hearth.slab) sheet.polygon(box(0, top - hearth.slab), { pen: 'object', fill: 'deep', layer: 'object' });
  sheet.polygon(box(top - hearth.slab, top), { pen: 'object', fill: 'paper', layer: 'object' });
}

function drawFloor(sheet: Sheet, left: number, right: number): void {
  const [x1, y] = sheet.spot({ x: left, y: 0 });
  const [x2] = sheet.spot({ x: right, y: 0 });
  sheet.polygon(
    [
      [x1 - 9, y],
      [x2 + 9, y],
      [x2 + 9, y + 2.4],
      [x1 - 9, y + 2.4],
    ],
    { pen: 'fine', fill: 'ink', layer: 'cut' },
  );
}

function describe(feature: FeatureMeasure, { name }: FeatureOptions): string {
  return `Front and side of ${feature.name} in ${name}. ${feature.facts.map(({ label, text }) => `${label} ${text}`).join('; ')}.`;
}
