import type { FeatureMeasure } from '../../model/index.js';
import type { Spot } from '../convex.js';
import { extentOf, faceExtent, figureAt, fireboxOf, wordAt } from '../figures.js';
import { sizes } from '../pen.js';
import { corners } from './frame.js';
import type { ElevationFrame } from './frame.js';

/** Draws what of a feature stands on or before the wall; returns what writes its words once all lines stand. */
export function drawFeatureFace(frame: ElevationFrame, feature: FeatureMeasure): (() => void) | undefined {
  const { sheet, wall } = frame;
  const cover = feature.covers.find((candidate) => candidate.wall === wall.id);
  if (cover === undefined)
    return feature.kind === 'drop-edge' && wordAt(feature, 'wall') === wall.id ? dropEdge(frame, feature) : undefined;
  const bottom = cover.sill ?? 0;
  const isBreast = feature.kind === 'chimney-breast';
  const outlines = isBreast
    ? frontOutlines(frame, feature, cover.from)
    : [corners(frame, cover.from, bottom, cover.to, cover.height)];
  sheet.region(outlines, { pen: 'object', fill: isBreast ? 'deep' : 'tone', layer: 'object' });
  if (isBreast) drawHearthAndFirebox(frame, feature, (cover.from + cover.to) / 2);
  if (feature.kind === 'niche') {
    const edge = 25_400_000;
    sheet.polygon(corners(frame, cover.from + edge, bottom + edge, cover.to - edge, cover.height - edge), {
      pen: 'hair',
      color: 'ink',
      layer: 'object',
    });
  }
  return () =>
    writeName(
      frame,
      feature,
      { left: cover.from, right: cover.to, bottom, top: cover.height },
      isBreast ? 'deep' : 'tone',
    );
}

function frontOutlines(frame: ElevationFrame, feature: FeatureMeasure, from: number): Spot[][] {
  const front = feature.faces.find((face) => face.id.endsWith('/front'));
  const extent = front === undefined ? undefined : extentOf(front.regions);
  if (front === undefined || extent === undefined) return [];
  return front.regions.map((region) => region.outline.map((point) => frame.at(from + point.x - extent.left, point.y)));
}

function drawHearthAndFirebox(frame: ElevationFrame, feature: FeatureMeasure, middle: number): void {
  const { sheet } = frame;
  const firebox = fireboxOf(feature);
  if (firebox !== undefined) {
    const half = (firebox.right - firebox.left) / 2;
    sheet.polygon(corners(frame, middle - half, firebox.bottom, middle + half, firebox.top), {
      pen: 'object',
      fill: 'poche',
      layer: 'object',
    });
  }
  const hearth = faceExtent(feature, 'hearth');
  if (hearth === undefined) return;
  const half = (hearth.right - hearth.left) / 2;
  const top = figureAt(feature, ['hearth', 'height']) ?? 2 * 25_400_000;
  const slab = Math.min(figureAt(feature, ['hearth', 'thickness']) ?? top, top);
  if (top > 0)
    sheet.polygon(corners(frame, middle - half, 0, middle + half, top), { pen: 'fine', fill: 'tone', layer: 'object' });
  if (slab > 0 && slab < top)
    sheet.polygon(corners(frame, middle - half, top - slab, middle + half, top), {
      pen: 'fine',
      fill: 'paper',
      layer: 'object',
    });
}

/** A guard before the open side: rail and posts, height as a guard usually has, without a figure. */
function dropEdge(frame: ElevationFrame, feature: FeatureMeasure): () => void {
  const { sheet, at } = frame;
  const from = figureAt(feature, ['at']) ?? 0;
  const run = feature.runs[0]?.length ?? 0;
  const top = 3.5 * 304_800_000;
  const posts = Math.max(1, Math.ceil(run / (6 * 304_800_000)));
  for (const height of [top, top - 3 * 25_400_000, 4 * 25_400_000])
    sheet.polyline([at(from, height), at(from + run, height)], {
      pen: 'fine',
      color: 'accent',
      dash: 'hidden',
      layer: 'object',
    });
  for (let index = 0; index <= posts; index++) {
    const along = from + (run * index) / posts;
    sheet.polyline([at(along, 0), at(along, top)], {
      pen: 'fine',
      color: 'accent',
      dash: 'hidden',
      layer: 'object',
      quiet: true,
    });
  }
  return () => {
    const [x, y] = at(from + run / 2, top / 2);
    sheet.tryWrite(
      [
        [x, y + 2.5],
        [x, y - 8],
        [x, y + 12],
      ],
      `${feature.name}: guard as selected`,
      { size: sizes.note, color: 'accent', ground: 'paper' },
    );
  };
}

function writeName(
  { sheet, at }: ElevationFrame,
  { name }: FeatureMeasure,
  box: { left: number; right: number; bottom: number; top: number },
  ground: 'deep' | 'tone',
): void {
  const [left, top] = at(box.left, box.top);
  const [right, bottom] = at(box.right, box.bottom);
  const middle = (left + right) / 2;
  const look = { size: sizes.note, color: 'muted', ground } as const;
  const fits = sheet.textBox([0, 0], name, look)[1]![0] * 2 < right - left - 6;
  const inside = [0.3, 0.5, 0.22, 0.4, 0.7]
    .map((share): Spot => [middle, top + (bottom - top) * share + 2.5])
    .filter((spot) => spot[1] - 6 > top && spot[1] + 2 < bottom);
  if (fits && sheet.tryWrite(inside, name, look)) return;
  const outside: Spot[] = [
    [middle, top - 4],
    [middle, bottom + 9],
  ];
  sheet.tryWrite(outside, name, { ...look, ground: 'paper' });
}
