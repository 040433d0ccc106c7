import { PathBuilder, circle, element, line, path, rect, text } from '../svg/index.js';
import type { SvgNode } from '../svg/index.js';
import type { DrawOptions, Drawing } from './drawing.js';
import { lengthText } from './length-text.js';
import type { Palette } from './palette.js';
import { pens, sizes } from './pen.js';
import { scales } from './scale.js';
import type { Scale } from './scale.js';
import type { Sheet } from './sheet.js';
import { fitText, textWidth } from './text-width.js';

const margin = 5;
const gap = 14;
const blockHeight = 39;
const usualBox = { width: 7, height: 7 };

export interface Title {
  readonly title: string;
  readonly description: string;
  /** Beside the scale, such as `Heights above this room's floor`. */
  readonly notes?: readonly string[];
  readonly north?: boolean;
}

/** The drawing at the largest standard scale, from `largest` down, that fits its box. */
export function fitDrawing(
  largest: string,
  options: DrawOptions,
  draw: (scale: Scale) => { sheet: Sheet; title: Title },
): Drawing {
  const first = Math.max(
    0,
    scales.findIndex((scale) => scale.name === largest),
  );
  const box = options.box ?? usualBox;
  let drawing: Drawing | undefined;
  for (const scale of scales.slice(first)) {
    const { sheet, title } = draw(scale);
    drawing = issueDrawing(sheet, title, options);
    if (drawing.width <= box.width && drawing.height <= box.height) break;
  }
  return drawing!;
}

/** Frames the sheet with its title, scale bar and, for plans, north; sizes it in inches of paper. */
function issueDrawing(sheet: Sheet, title: Title, options: DrawOptions): Drawing {
  const { palette } = options;
  const { left, top, right, bottom } = sheet.bounds;
  const bar = barWidth(sheet);
  const notes = packed(title.notes ?? [], Math.max(right - left, 200));
  const barSpace = bar + 26 + (title.north === true ? 38 : 0);
  const room = (options.box ?? usualBox).width * 72 - 2 * margin;
  const wanted = options.bare === true ? 0 : Math.min(room, barSpace + 18 + textWidth(title.title, sizes.title, 600));
  const width = Math.ceil(Math.max(right - left, wanted) + 2 * margin);
  const extra = notes.length * 9.5 - 8;
  const foot = options.bare === true ? 0 : gap + blockHeight + extra;
  const height = Math.ceil(bottom - top + foot + 2 * margin);
  const x = left - margin - (width - 2 * margin - (right - left)) / 2;
  const y = top - margin;
  const block =
    options.bare === true
      ? []
      : titleBlock(
          sheet,
          { ...title, notes },
          palette,
          { left: x + margin, right: x + width - margin, top: bottom + gap },
          bar,
        );
  const font = options.font ?? 'Public Sans';
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${inches(width)}in`,
      height: `${inches(height)}in`,
      viewBox: `${round(x)} ${round(y)} ${width} ${height}`,
      role: 'img',
      'aria-labelledby': `${options.id}-title ${options.id}-desc`,
      'font-family': font,
    },
    element('title', { id: `${options.id}-title` }, title.title),
    element('desc', { id: `${options.id}-desc` }, title.description),
    ...sheet.groups(),
    ...(block.length > 0 ? [element('g', {}, ...block)] : []),
  );
  return {
    id: options.id,
    title: title.title,
    description: title.description,
    scale: sheet.scale.name,
    width: width / 72,
    height: height / 72,
    svg,
  };
}

/** Short notes share a line. */
function packed(notes: readonly string[], width: number): string[] {
  const lines: string[] = [];
  for (const note of notes) {
    const longer = `${lines.at(-1) ?? ''}. ${note}`;
    if (lines.length > 0 && textWidth(longer, sizes.note) <= width) lines[lines.length - 1] = longer;
    else lines.push(note);
  }
  return lines;
}

function titleBlock(
  sheet: Sheet,
  title: Title,
  palette: Palette,
  frame: { left: number; right: number; top: number },
  bar: number,
): SvgNode[] {
  const { left, right, top } = frame;
  const barLeft = right - bar - 12;
  const textSpace = barLeft - left - 16 - (title.north === true ? 38 : 0);
  const nodes: SvgNode[] = [
    line(left, top, right, top, { stroke: palette.ink, 'stroke-width': pens.object }),
    text(left, top + 13.5, fitText(title.title, sizes.title, 600, textSpace), {
      'font-size': sizes.title,
      'font-weight': 600,
      fill: palette.text,
    }),
    text(left, top + 24.5, `Scale ${sheet.scale.name}`, { 'font-size': sizes.dimension, fill: palette.text }),
    ...(title.notes ?? []).map((note, index) =>
      text(left, top + 36.5 + 9.5 * index, fitText(note, sizes.note, 400, right - left), {
        'font-size': sizes.note,
        fill: palette.muted,
      }),
    ),
    ...scaleBar(sheet, palette, barLeft, top + 10),
  ];
  if (title.north === true) nodes.push(...northArrow(palette, barLeft - 30, top + 16));
  return nodes;
}

function barWidth(sheet: Sheet): number {
  return (sheet.scale.bar.at(-1) ?? 0) * sheet.scale.inchesPerFoot * 72;
}

function scaleBar(sheet: Sheet, palette: Palette, left: number, top: number): SvgNode[] {
  const perFoot = sheet.scale.inchesPerFoot * 72;
  const nodes: SvgNode[] = [];
  sheet.scale.bar.forEach((mark, index) => {
    const x = left + mark * perFoot;
    const next = sheet.scale.bar[index + 1];
    if (next !== undefined) {
      nodes.push(
        rect(x, top, (next - mark) * perFoot, 4, {
          fill: index % 2 === 0 ? palette.ink : palette.paper,
          stroke: palette.ink,
          'stroke-width': pens.fine,
        }),
      );
    }
    const label = mark === 0 ? '0' : lengthText(mark * 304_800_000).replace(/-0"$/, '');
    nodes.push(text(x, top + 13, label, { 'font-size': sizes.note, 'text-anchor': 'middle', fill: palette.text }));
  });
  return nodes;
}

/** A needle whose dark half is west. North is up on every plan. */
function northArrow(palette: Palette, x: number, y: number): SvgNode[] {
  const half = new PathBuilder().polygon([
    [x, y - 11],
    [x, y + 4],
    [x - 6, y + 8],
  ]).data;
  const other = new PathBuilder().polygon([
    [x, y - 11],
    [x + 6, y + 8],
    [x, y + 4],
  ]).data;
  return [
    circle(x, y, 9, { fill: 'none', stroke: palette.ink, 'stroke-width': pens.hair }),
    path(other, { fill: palette.paper, stroke: palette.ink, 'stroke-width': pens.fine, 'stroke-linejoin': 'round' }),
    path(half, { fill: palette.ink, stroke: palette.ink, 'stroke-width': pens.fine, 'stroke-linejoin': 'round' }),
    text(x + 13, y - 4, 'N', {
      'font-size': sizes.note,
      'font-weight': 600,
      'text-anchor': 'middle',
      fill: palette.text,
    }),
  ];
}

function inches(points: number): string {
  return String(Math.round((points / 72) * 1000) / 1000);
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
