import { PathBuilder, circle, element, group, line, path, rect, text, type SvgNode } from '../base/svg/index.js';
import { compacted, givenLook } from './compact.js';
import type { DrawOptions, Drawing } from './drawing.js';
import { sheetsOf, type DrawnSheet, type Subject, type Title } from './drawn-sheet.js';
import { lengthText } from './length-text.js';
import { paint, type Palette } from './palette.js';
import { pens, sizes } from './pen.js';
import { barLength, pointsPerNanometre, scalesFrom, type Scale } from './scale.js';
import { fitText, textWidth } from './text-width.js';

const margin = 5;
const gap = 14;
const blockHeight = 39;
const usualBox = { width: 7, height: 7 };

/** The scale bar of a drawing and, beside it, where true north lies in degrees clockwise from up: for pages that set its title. */
export function drawScaleBar({ ratio }: Pick<Drawing, 'ratio'>, north: number, palette: Palette): SvgNode {
  const [scale] = scalesFrom(ratio);
  const width = (scale ? barWidth(scale) : 0) + 64;
  const nodes = scale ? [...northArrow(12, 14, north), ...scaleBar(scale, 44, 10)] : [];
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${inches(width)}in`,
      height: `${inches(28)}in`,
      viewBox: `0 0 ${round(width)} 28`,
      'font-family': 'Public Sans',
    },
    ...nodes.map((node) => paint(node, palette)),
  );
}

/** The drawing at the largest standard scale, from the subject's largest down, that fits its box. Ids and colours come last:
 *  the sheets are shared by all that ask for the same. */
export function fitDrawing(subject: Subject, options: DrawOptions): Drawing {
  const scales = scalesFrom(Math.max(subject.largest, options.ratio ?? 0));
  const box = options.box ?? usualBox;
  const sheetAt = sheetsOf(subject);
  for (const scale of scales.slice(0, -1)) {
    if (isTooLarge(subject, scale, box)) continue;
    const sheet = sheetAt(scale);
    const layout = layOut(sheet, options);
    if (layout.width / 72 <= box.width && layout.height / 72 <= box.height) return issueDrawing(sheet, layout, options);
  }
  const sheet = sheetAt(scales.at(-1)!);
  return issueDrawing(sheet, layOut(sheet, options), options);
}

/** Is what is drawn alone, without its dimensions and words, too large for the box? Then nothing needs to be drawn. */
function isTooLarge({ span }: Subject, scale: Scale, box: NonNullable<DrawOptions['box']>): boolean {
  if (!span) return false;
  const points = pointsPerNanometre(scale);
  const slack = 0.1 - 2 * margin;
  return span.width * points > box.width * 72 + slack || span.height * points > box.height * 72 + slack;
}

/** Where the sheet and its title block stand on the paper, in points. */
interface Layout {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Lines of the title, and of the notes. */
  readonly titles: readonly string[];
  readonly notes: readonly string[];
}

/** From one line of a title to the next. */
const titleLeading = 12;

function layOut(sheet: DrawnSheet, { box = usualBox, bare = false }: DrawOptions): Layout {
  const { title, bounds } = sheet;
  const { left, top, right, bottom } = bounds;
  const notes = packed(title.notes ?? [], Math.max(right - left, 200));
  const barSpace = barWidth(sheet.scale) + 26 + (title.north === undefined ? 0 : 38);
  const room = box.width * 72 - 2 * margin;
  const wanted = bare ? 0 : Math.min(room, barSpace + 18 + textWidth(title.title, sizes.title, 600));
  const width = Math.ceil(Math.max(right - left, wanted) + 2 * margin);
  const titles = titleLines(title.title, width - 2 * margin - barSpace - 2);
  const extra = notes.length * 9.5 - 8 + (titles.length - 1) * titleLeading;
  const foot = bare ? 0 : gap + blockHeight + extra;
  const height = Math.ceil(bottom - top + foot + 2 * margin);
  return {
    x: left - margin - (width - 2 * margin - (right - left)) / 2,
    y: top - margin,
    width,
    height,
    titles,
    notes,
  };
}

/** Frames the sheet with its title, scale bar and, for plans, north; sizes it in inches of paper. */
function issueDrawing(
  sheet: DrawnSheet,
  { x, y, width, height, titles, notes }: Layout,
  options: DrawOptions,
): Drawing {
  const { title, scale, bounds, groups } = sheet;
  const { id, palette, font = 'Public Sans', bare = false, medium = 'paper' } = options;
  const frame = { left: x + margin, right: x + width - margin, top: bounds.bottom + gap };
  const isScaled = medium === 'paper';
  const block = bare
    ? []
    : [element('g', { class: 'words' }, ...titleBlock(scale, { ...title, titles, notes, isScaled }, frame))];
  const layers = [...groups, ...block].map((node) => paint(node, palette));
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${inches(width)}in`,
      height: `${inches(height)}in`,
      viewBox: `${round(x)} ${round(y)} ${width} ${height}`,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      'font-family': font,
      ...(isScaled ? {} : givenLook),
    },
    element('title', { id: `${id}-title` }, title.title),
    element('desc', { id: `${id}-desc` }, title.description),
    ...(isScaled ? layers : compacted(layers)),
  );
  return {
    id,
    title: title.title,
    description: title.description,
    scale: scale.name,
    ratio: scale.ratio,
    width: width / 72,
    height: height / 72,
    ...plainPart(sheet, { x, y, width }),
    svg,
  };
}

/** Air around what is left without words, in points. */
const air = 4;

function plainPart(
  { plainBounds }: DrawnSheet,
  { x, y, width }: Pick<Layout, 'x' | 'y' | 'width'>,
): Pick<Drawing, 'plain'> {
  const { left, top, right, bottom } = plainBounds;
  if (right < left) return {};
  const share = (points: number): number => points / width;
  return {
    plain: {
      left: share(left - air - x),
      top: share(top - air - y),
      width: share(right - left + 2 * air),
      height: share(bottom - top + 2 * air),
    },
  };
}

/** With the name of the scale, or with its bar alone, which stays true however large it is shown. */
type TitleLines = Title & Pick<Layout, 'titles'> & { readonly isScaled: boolean };

/** Most lines of a title. */
const mostTitles = 3;

/** One line, or more where the sheet is narrow. */
function titleLines(title: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of title.split(' ')) {
    const longer = lines.length === 0 ? word : `${lines.at(-1) ?? ''} ${word}`;
    const isLast = lines.length === mostTitles;
    if (lines.length > 0 && !isLast && textWidth(longer, sizes.title, 600) > width) lines.push(word);
    else lines.splice(-1, 1, longer);
  }
  return lines.map((one) => fitText(one, sizes.title, 600, width));
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

function titleBlock(scale: Scale, title: TitleLines, frame: { left: number; right: number; top: number }): SvgNode[] {
  const { left, right, top } = frame;
  const barLeft = right - barWidth(scale) - 12;
  const down = top + (title.titles.length - 1) * titleLeading;
  const nodes: SvgNode[] = [
    line(left, top, right, top, { stroke: 'ink', 'stroke-width': pens.object }),
    ...title.titles.map((words, index) =>
      text(left, top + 13.5 + titleLeading * index, words, {
        'font-size': sizes.title,
        'font-weight': 600,
        fill: 'text',
      }),
    ),
    ...(title.isScaled
      ? [text(left, down + 24.5, `Scale ${scale.name}`, { 'font-size': sizes.dimension, fill: 'text' })]
      : []),
    ...(title.notes ?? []).map((note, index) =>
      text(left, down + 36.5 + 9.5 * index, fitText(note, sizes.note, 400, right - left), {
        'font-size': sizes.note,
        fill: 'muted',
      }),
    ),
    ...scaleBar(scale, barLeft, top + 10),
  ];
  if (title.north !== undefined) nodes.push(...northArrow(barLeft - 30, top + 16, title.north));
  return nodes;
}

function barWidth(scale: Scale): number {
  return barLength(scale.bar.at(-1) ?? 0) * pointsPerNanometre(scale);
}

function scaleBar(scale: Scale, left: number, top: number): SvgNode[] {
  const points = pointsPerNanometre(scale);
  const nodes: SvgNode[] = [];
  scale.bar.forEach((mark, index) => {
    const x = left + barLength(mark) * points;
    const next = scale.bar[index + 1];
    if (next !== undefined) {
      nodes.push(
        rect(x, top, barLength(next - mark) * points, 4, {
          fill: index % 2 === 0 ? 'ink' : 'paper',
          stroke: 'ink',
          'stroke-width': pens.fine,
        }),
      );
    }
    const label = mark === 0 ? '0' : lengthText(barLength(mark)).replace(/-0"$/, '');
    nodes.push(text(x, top + 13, label, { 'font-size': sizes.note, 'text-anchor': 'middle', fill: 'text' }));
  });
  return nodes;
}

/** A needle whose dark half is west, turned to where true north lies. */
function northArrow(x: number, y: number, turn: number): SvgNode[] {
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
  const needle = [
    circle(x, y, 9, { fill: 'none', stroke: 'ink', 'stroke-width': pens.hair }),
    path(other, { fill: 'paper', stroke: 'ink', 'stroke-width': pens.fine, 'stroke-linejoin': 'round' }),
    path(half, { fill: 'ink', stroke: 'ink', 'stroke-width': pens.fine, 'stroke-linejoin': 'round' }),
    text(x + 13, y - 4, 'N', {
      'font-size': sizes.note,
      'font-weight': 600,
      'text-anchor': 'middle',
      fill: 'text',
    }),
  ];
  return turn === 0 ? needle : [group({ transform: `rotate(${turn} ${round(x)} ${round(y)})` }, needle)];
}

function inches(points: number): string {
  return String(Math.round((points / 72) * 1000) / 1000);
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
