import type { FeatureMeasure } from '../../model/index.js';
import type { Length } from '../../units/index.js';
import type { Spot } from '../convex.js';
import { lengthText } from '../length-text.js';
import { extentOf, faceExtent, figureAt, fireboxOf, wordAt } from '../figures.js';
import { sizes } from '../pen.js';
import { corners } from './frame.js';
import type { ElevationFrame } from './frame.js';

/** Draws what of a feature stands on or before the wall; returns what writes its words, with its finish, once all lines
 *  stand. */
export function drawFeatureFace(
  frame: ElevationFrame,
  feature: FeatureMeasure,
  finish?: string,
  guard?: Guard,
): (() => void) | undefined {
  const { sheet, wall } = frame;
  const cover = feature.covers.find((candidate) => candidate.wall === wall.id);
  if (cover === undefined) return isGuarded(feature, wall) ? dropEdge(frame, feature, guard) : undefined;
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
      finish,
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

/** True where the wall is the open side that a feature falls from. */
export function isGuarded(feature: FeatureMeasure, wall: { readonly id: string }): boolean {
  return feature.kind === 'drop-edge' && wordAt(feature, 'wall') === wall.id;
}

/** What is selected for an open edge, and its height as the record says. Local code decides both. */
export interface Guard {
  readonly guard: string;
  readonly guardHeight?: Length;
}

/** A guard before the open side: rail and posts, without a figure where no height is known. */
function dropEdge(frame: ElevationFrame, feature: FeatureMeasure, guard: Guard | undefined): () => void {
  const { sheet, at } = frame;
  const from = figureAt(feature, ['at']) ?? 0;
  const run = feature.runs[0]?.length ?? 0;
  const top = guard?.guardHeight ?? 3.5 * 304_800_000;
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
  const height = guard?.guardHeight === undefined ? '' : `, ${lengthText(guard.guardHeight)} high`;
  const words = `${feature.name}: ${guard ? `${guard.guard}${height}` : 'guard as selected'}`;
  return () => {
    const [x, y] = at(from + run / 2, top / 2);
    sheet.tryWrite(
      [
        [x, y + 2.5],
        [x, y - 8],
        [x, y + 12],
      ],
      words,
      { size: sizes.note, color: 'accent', ground: 'paper' },
    );
  };
}

/** Name and finish in the face, in two lines; else beside it, in one. */
function writeName(
  { sheet, at }: ElevationFrame,
  { name }: FeatureMeasure,
  finish: string | undefined,
  box: { left: number; right: number; bottom: number; top: number },
  ground: 'deep' | 'tone',
): void {
  const [left, top] = at(box.left, box.top);
  const [right, bottom] = at(box.right, box.bottom);
  const middle = (left + right) / 2;
  const look = { size: sizes.note, color: 'muted', ground } as const;
  const finishLook = { ...look, color: 'text' } as const;
  const wide = (words: string): boolean => sheet.textBox([0, 0], words, look)[1]![0] * 2 < right - left - 6;
  const shares = [0.3, 0.5, 0.22, 0.4, 0.7, 0.8, 0.12];
  const inside = shares
    .map((share): Spot => [middle, top + (bottom - top) * share + 2.5])
    .filter((spot) => spot[1] - 6 > top && spot[1] + 2 < bottom);
  if (finish !== undefined && wide(name) && wide(finish)) {
    const place = inside.find(
      ([x, y]) =>
        y + 11 < bottom &&
        sheet.isFree(sheet.textBox([x, y], name, look)) &&
        sheet.isFree(sheet.textBox([x, y + 9], finish, look)),
    );
    if (place) {
      sheet.write(place, name, look);
      sheet.write([place[0], place[1] + 9], finish, finishLook);
      return;
    }
  }
  const words = finish === undefined ? name : `${name}: ${finish}`;
  if (wide(words) && sheet.tryWrite(inside, words, look)) return;
  const outside: Spot[] = [
    [middle, top - 4],
    [middle, bottom + 9],
  ];
  if (finish === undefined && wide(name) && sheet.tryWrite(inside, name, look)) return;
  if (sheet.tryWrite(outside, words, { ...look, ground: 'paper' })) return;
  if (wide(name) && sheet.tryWrite(inside, name, look)) return;
  sheet.tryWrite(outside, name, { ...look, ground: 'paper' });
}
