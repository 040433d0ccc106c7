import type { FeatureMeasure } from '../../core/model/index.js';
import type { Length } from '../../base/units/index.js';
import { drawBreak } from '../break-line.js';
import type { Spot } from '../convex.js';
import { drawDimensions } from '../dimension.js';
import type { Drawing } from '../drawing.js';
import type { Title } from '../drawn-sheet.js';
import { fitDrawing } from '../issue.js';
import { lengthText } from '../length-text.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';
import type { FeatureOptions } from './chimney-breast.js';

const inch = 25_400_000;
const foot = 12 * inch;

interface EdgeSectionOptions extends FeatureOptions {
  /** Height of the guard above the finished floor, from what is selected. Without it no figure is written. */
  readonly guardHeight?: Length;
  /** What is selected, such as `Steel cable rail`. */
  readonly guard?: string;
}

/** What draws a cut through the open edge of a loft or gallery: floor, guard, fall. Undefined for a feature without a fall. */
export function edgeDrawer(feature: FeatureMeasure): ((options: EdgeSectionOptions) => Drawing) | undefined {
  const { drop } = feature;
  if (drop === undefined || drop <= 0) return undefined;
  return (options) => drawEdge(feature, drop, options);
}

function drawEdge(feature: FeatureMeasure, drop: number, options: EdgeSectionOptions): Drawing {
  const { number, name, guard, guardHeight } = options;
  const run = feature.runs[0]?.length;
  const notes = [
    ...(run === undefined ? [] : [`Edge runs ${lengthText(run)}`]),
    'Floor depth as drawn',
    `Local code decides the guard's height and openings`,
  ];
  const title = {
    title: `${feature.name}, section – ${number} ${name}`,
    description: describe(feature, options),
    notes,
  };
  const draw = (sheet: Sheet): Title => {
    const at = (x: number, y: number): Spot => sheet.spot({ x, y });
    const box = (left: number, low: number, right: number, high: number): Spot[] => [
      at(left, low),
      at(right, low),
      at(right, high),
      at(left, high),
    ];
    const width = 4.5 * foot;
    const depth = Math.min(foot, drop * 0.4);
    const top = guardHeight ?? 3 * foot;
    sheet.polygon(box(-width, -depth, 0, -0.75 * inch), { pen: 'cut', fill: 'poche', layer: 'cut' });
    sheet.polygon(box(-width, -0.75 * inch, 1 * inch, 0), { pen: 'fine', fill: 'deep', layer: 'cut' });
    sheet.polygon(box(0, -depth - 0.5 * inch, 0.75 * inch, -0.75 * inch), { pen: 'fine', fill: 'paper', layer: 'cut' });
    sheet.polygon(box(-width, -drop - 4 * inch, width, -drop), { pen: 'cut', fill: 'poche', layer: 'cut' });
    const post = { left: -6 * inch, right: -2.5 * inch };
    const look = {
      pen: 'object',
      fill: 'tone',
      layer: 'object',
      ...(guardHeight === undefined ? ({ dash: 'hidden' } as const) : {}),
    } as const;
    sheet.polygon(box(post.left, 0, post.right, top - 1.5 * inch), look);
    sheet.polygon(box(post.left - inch, top - 1.5 * inch, post.right + inch, top), { ...look, fill: 'deep' });
    drawBreak(sheet, at(-width, -depth / 2), depth * sheet.perNanometre);
    const fall = at(width * 0.42, 0)[0];
    const floors = [-drop, 0];
    drawDimensions(sheet, {
      origin: [fall, 0],
      along: [0, -1],
      outward: [1, 0],
      stops: floors,
      targets: [undefined, at(1 * inch, 0)],
    });
    if (guardHeight !== undefined) {
      const left = at(post.left, 0)[0] - 26;
      drawDimensions(sheet, {
        origin: [left, 0],
        along: [0, -1],
        outward: [-1, 0],
        stops: [0, top],
        targets: [undefined, at(post.left - inch, top)],
      });
    }
    const right = at(post.right + inch, 0)[0] + 5;
    const words = guard ?? 'guard as selected';
    sheet.tryWrite(
      [0.7, 0.5, 0.3].map((share): Spot => [right, at(0, top * share)[1]]),
      words,
      { size: sizes.note, anchor: 'start', color: 'muted' },
    );
    sheet.tryWrite([[at(-width, 0)[0] + 4, at(0, 0)[1] - 4]], 'finished floor', {
      size: sizes.note,
      anchor: 'start',
      color: 'muted',
    });
    sheet.tryWrite([[at(-width, 0)[0] + 4, at(0, -drop)[1] - 4]], 'finished floor below', {
      size: sizes.note,
      anchor: 'start',
      color: 'muted',
    });
    sheet.tryWrite([[fall + 8, at(0, -drop / 2)[1]]], 'fall', {
      size: sizes.note,
      anchor: 'start',
      color: 'accent',
      weight: 600,
    });
    return title;
  };
  const shows = { number, name, guard, guardHeight };
  return fitDrawing({ of: feature, view: 'edge', shows, largest: 16, draw }, options);
}

function describe(feature: FeatureMeasure, { name, guardHeight, guard }: EdgeSectionOptions): string {
  const height = guardHeight === undefined ? '' : ` ${lengthText(guardHeight)} high`;
  return `Section through ${feature.name} in ${name}: the floor ends at a fall of ${lengthText(feature.drop ?? 0)}, with ${guard ?? 'a guard'}${height}. Local code decides the guard's height and openings.`;
}
