import { path, rect, type SvgNode } from '../../base/svg/index.js';
import { clip, dotData, outlineData, softOutline, type Canvas, type Corner } from './canvas.js';

/** A material as a rectangle that is laid again and again, before it is written. Lengths are inches of material, x to the right and
 *  y up from the lower left; what lies over an edge comes in again on the other side. */
export interface Repeat {
  readonly width: number;
  readonly height: number;
  /** What shows between the marks. */
  readonly ground: string;
  /** Later ones lie over earlier. */
  readonly marks: readonly Mark[];
  /** Decimals of an inch that its places need; absent: one. */
  readonly digits?: 0 | 1 | 2;
}

export type Mark = Face | Dot;

interface Look {
  readonly fill: string;
  readonly opacity?: number;
  /** Seen at arm's length only, as lit edges and shaded feet are: left out across a room. */
  readonly isNear?: true;
}

export interface Face extends Look {
  /** Convex or nearly. */
  readonly outline: readonly Corner[];
  /** Curves from middle to middle of the sides. */
  readonly isSoft?: boolean;
}

interface Dot extends Look {
  readonly at: Corner;
  /** Its diameter. */
  readonly size: number;
}

/** One repeat of a material at true size, to be laid over a plane through any matrix. */
export interface MaterialCell {
  /** In inches of material; x to the right, y up from the cell's lower left. */
  readonly width: number;
  readonly height: number;
  /** In inches. Only shapes with literal colors, no ids; what lies over an edge is drawn again on the other side, so that cells join. */
  readonly nodes: readonly SvgNode[];
}

/** The repeat as shapes, with a twin of each mark at every edge that it lies over. What is seen near by only is left out. */
export function cellOf({ width, height, ground, marks, digits = 1 }: Repeat): MaterialCell {
  const steps = 10 ** digits;
  // The size is set on the last decimal, and the marks with it: else twins would be off by what rounding leaves.
  const [wide, high] = [Math.round(width * steps) / steps, Math.round(height * steps) / steps];
  const fit = ([x, y]: Corner): Corner => [
    Math.round(((x * wide) / width) * steps) / steps,
    Math.round(((y * high) / height) * steps) / steps,
  ];
  const nodes = gathered(seenFromAfar(marks), 1, digits, (mark) => {
    const corners = cornersOf(mark).map(fit);
    const reach = 'at' in mark ? mark.size / 2 : 0;
    return copiesOf(corners, reach, [0, 0], [wide, high], [wide, high]).flatMap(([right, up]) => {
      const placed = corners.map(([x, y]): Corner => [x + right, y + up]);
      if ('at' in mark) return [dotData(placed[0]!, digits)];
      if (clip(placed, wide, high).length < 3) return [];
      return [mark.isSoft === true ? softOutline(placed, digits) : outlineData(placed, digits)];
    });
  });
  return { width: wide, height: high, nodes: [rect(0, 0, wide, high, { fill: ground }), ...nodes] };
}

function cornersOf(mark: Mark): readonly Corner[] {
  return 'at' in mark ? [mark.at] : mark.outline;
}

/** What of the marks is seen across a room. */
export function seenFromAfar(marks: readonly Mark[]): readonly Mark[] {
  return marks.filter(({ isNear }) => isNear !== true);
}

type Window = Pick<Canvas, 'width' | 'height' | 'inch' | 'isFine'>;

/** The repeat laid over a picture, cut at its edges. `from` is the place in the repeat, in inches, of the picture's lower left corner. */
export function layRepeat(canvas: Window, repeat: Repeat, from: Corner = [0, 0]): SvgNode[] {
  const { width, height, inch } = canvas;
  const nodes = gathered(repeat.marks, inch, 1, (mark) => {
    const corners = cornersOf(mark);
    const reach = 'at' in mark ? mark.size / 2 : 0;
    const step: Corner = [repeat.width, repeat.height];
    return copiesOf(corners, reach, from, [width / inch, height / inch], step).flatMap(([right, up]) => {
      const placed = corners.map(([x, y]): Corner => [
        (x + right - from[0]) * inch,
        height - (y + up - from[1]) * inch,
      ]);
      return 'at' in mark ? dotInside(canvas, mark, placed[0]!) : faceInside(canvas, mark, placed);
    });
  });
  return [rect(0, 0, width, height, { fill: repeat.ground }), ...nodes];
}

/** Inches that a picture of this shape may be wide if it is to show no more corners than stay small to write. */
export function widestView(repeat: Repeat, { width, height, isFine }: Omit<Window, 'inch'>): number {
  const cost = (mark: Mark): number => ('at' in mark ? 2 : mark.outline.length * (mark.isSoft === true ? 2 : 1));
  const dense = repeat.marks.reduce((sum, mark) => sum + cost(mark), 0) / (repeat.width * repeat.height);
  return Math.sqrt(((isFine ? mostCorners : mostCornersSmall) * (width / height)) / dense);
}

const mostCorners = 1000;
const mostCornersSmall = 500;

/** By how much the corners are shifted to each copy of them that lies in the window. */
function copiesOf(
  corners: readonly Corner[],
  reach: number,
  from: Corner,
  size: Corner,
  step: Corner,
): readonly Corner[] {
  const [across, up] = ([0, 1] as const).map((axis) => {
    const values = corners.map((corner) => corner[axis]);
    const first = Math.ceil((from[axis] - Math.max(...values) - reach) / step[axis]);
    const last = Math.floor((from[axis] + size[axis] - Math.min(...values) + reach) / step[axis]);
    return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * step[axis]);
  }) as [number[], number[]];
  return up.flatMap((high) => across.map((right): Corner => [right, high]));
}

/** Nothing may leave the picture: a dot at its edge is moved in if its middle is inside. A light over it is moved in with it. */
function dotInside({ width, height, inch }: Window, dot: Dot, corner: Corner): string[] {
  const reach = (dot.size / 2) * inch + 0.1;
  if (!touches(corner, dot.isNear === true ? reach : 0, width, height)) return [];
  const within = (value: number, limit: number): number => Math.min(limit - reach, Math.max(reach, value));
  return [dotData([within(corner[0], width), within(corner[1], height)])];
}

function faceInside({ width, height }: Window, { isSoft }: Face, placed: readonly Corner[]): string[] {
  const isWhole = placed.every(([x, y]) => x >= 0 && x <= width && y >= 0 && y <= height);
  if (isSoft === true && isWhole) return [softOutline(placed)];
  // A curve is cut as the polygon that it almost is: were its corners cut, it would bend at the picture's edge.
  const inside = clip(isSoft === true ? bentCorners(placed) : placed, width, height);
  const [xs, ys] = [inside.map(([x]) => x), inside.map(([, y]) => y)];
  const isSeen = inside.length > 2 && span(xs) > 0.1 && span(ys) > 0.1;
  return isSeen ? [outlineData(inside)] : [];
}

function span(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}

/** The curve of a soft outline as corners: ends and middles of its quadratic pieces. */
function bentCorners(corners: readonly Corner[]): Corner[] {
  return corners.flatMap((corner, index): Corner[] => {
    const before = corners[(index + corners.length - 1) % corners.length]!;
    const after = corners[(index + 1) % corners.length]!;
    const start: Corner = [(before[0] + corner[0]) / 2, (before[1] + corner[1]) / 2];
    const end: Corner = [(after[0] + corner[0]) / 2, (after[1] + corner[1]) / 2];
    return [start, [(start[0] + 2 * corner[0] + end[0]) / 4, (start[1] + 2 * corner[1] + end[1]) / 4]];
  });
}

function touches([x, y]: Corner, reach: number, width: number, height: number): boolean {
  return x > -reach && x < width + reach && y > -reach && y < height + reach;
}

/** One path for all marks that look alike, in the order in which looks first come. */
function gathered(
  marks: readonly Mark[],
  scale: number,
  digits: number,
  write: (mark: Mark) => readonly string[],
): SvgNode[] {
  const paths = new Map<string, { readonly mark: Mark; readonly data: string[] }>();
  for (const mark of marks) {
    const key = [mark.fill, mark.opacity, 'at' in mark ? mark.size : ''].join(' ');
    const known = paths.get(key) ?? { mark, data: [] };
    known.data.push(...write(mark));
    paths.set(key, known);
  }
  return [...paths.values()].flatMap(({ mark, data }) =>
    data.length === 0 ? [] : [path(data.join(''), lookOf(mark, scale, digits))],
  );
}

function lookOf(mark: Mark, scale: number, digits: number): Record<string, string | number | undefined> {
  const { fill, opacity } = mark;
  if (!('at' in mark)) return { fill, opacity };
  const steps = 10 ** digits;
  const width = Math.max(1 / steps, Math.round(mark.size * scale * steps) / steps);
  return { fill: 'none', stroke: fill, 'stroke-linecap': 'round', 'stroke-width': width, opacity };
}
