import { path, rect, type SvgNode } from '../../base/svg/index.js';
import { mix, shade } from './color.js';
import type { Random } from './random.js';

/** What a pattern draws on: a rectangle from 0, 0 that nothing may leave. */
export interface Canvas {
  readonly width: number;
  readonly height: number;
  /** Units for an inch of material. */
  readonly inch: number;
  /** Width of the repeat in units, when the record gives one. */
  readonly repeat?: number;
  readonly random: Random;
  /** At least one. */
  readonly colors: readonly string[];
  readonly base: string;
  /** False when the picture is so small that fine lines only blur it. */
  readonly isFine: boolean;
}

export type Pattern = (canvas: Canvas) => readonly SvgNode[];

export type Corner = readonly [x: number, y: number];

/** One of the record's colours, varied by a little. */
export function pieceColor({ random, colors }: Canvas, spread = 0.025): string {
  const color = colors.length > 1 ? mix(random.pick(colors), random.pick(colors), random.next()) : colors[0]!;
  return shade(color, random.between(-spread, spread));
}

export function ground({ width, height }: Canvas, fill: string): SvgNode {
  return rect(0, 0, width, height, { fill });
}

/** A filled outline, cut at the edge of the picture; undefined when nothing of it is left. */
export function piece(canvas: Canvas, corners: readonly Corner[], fill: string, opacity?: number): SvgNode[] {
  const inside = clip(corners, canvas.width, canvas.height);
  if (inside.length < 3) return [];
  return [path(outlineData(inside), { fill, opacity })];
}

function box(left: number, top: number, right: number, bottom: number): Corner[] {
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

/** The data of a rectangle cut at the edge of the picture, to be joined with others of its colour; empty when nothing is left. */
export function blockData({ width, height }: Canvas, left: number, top: number, right: number, bottom: number): string {
  const inside = clip(box(left, top, right, bottom), width, height);
  if (inside.length < 3) return '';
  const [x1, y1, x2, y2] = [Math.max(0, left), Math.max(0, top), Math.min(width, right), Math.min(height, bottom)].map(
    (value) => Math.round(value * 10),
  ) as [number, number, number, number];
  return x2 > x1 && y2 > y1 ? `M${pair(x1, y1)}h${tenths(x2 - x1)}v${tenths(y2 - y1)}h${tenths(x1 - x2)}z` : '';
}

/** Outlines gathered by colour, so that each colour is written once. */
export class Gathered {
  private readonly byColor = new Map<string, string>();

  add(color: string, data: string): void {
    if (data !== '') this.byColor.set(color, (this.byColor.get(color) ?? '') + data);
  }

  nodes(opacity?: number): SvgNode[] {
    return [...this.byColor].map(([fill, data]) => path(data, { fill, opacity }));
  }
}

/** A few shades between the colours for pieces that are many. */
export function pieceShades(canvas: Canvas, count: number, spread: number): string[] {
  return Array.from({ length: count }, () => pieceColor(canvas, spread));
}

/** A rectangle cut at the edge of the picture. */
export function block(
  canvas: Canvas,
  left: number,
  top: number,
  right: number,
  bottom: number,
  fill: string,
  opacity?: number,
): SvgNode[] {
  const [x1, y1] = [Math.max(0, left), Math.max(0, top)];
  const [x2, y2] = [Math.min(canvas.width, right), Math.min(canvas.height, bottom)];
  return x2 - x1 < 0.05 || y2 - y1 < 0.05
    ? []
    : [rect(tenth(x1), tenth(y1), tenth(x2 - x1), tenth(y2 - y1), { fill, opacity })];
}

export function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

/** Cuts a convex (or nearly convex) outline at the picture's four edges (Sutherland and Hodgman, 1974). */
export function clip(corners: readonly Corner[], width: number, height: number): Corner[] {
  const edges: ((corner: Corner) => number)[] = [([x]) => x, ([x]) => width - x, ([, y]) => y, ([, y]) => height - y];
  return edges.reduce((kept, side) => clipBy(kept, side), [...corners]);
}

export function clipBy(corners: readonly Corner[], side: (corner: Corner) => number): Corner[] {
  const kept: Corner[] = [];
  corners.forEach((corner, index) => {
    const next = corners[(index + 1) % corners.length]!;
    const [here, there] = [side(corner), side(next)];
    if (here >= 0) kept.push(corner);
    if (here >= 0 === there >= 0) return;
    const share = here / (here - there);
    kept.push([corner[0] + (next[0] - corner[0]) * share, corner[1] + (next[1] - corner[1]) * share]);
  });
  return kept;
}

/** A closed outline in steps of a tenth, each from the last: shorter to write than places. */
export function outlineData(corners: readonly Corner[]): string {
  const places = corners.map(([x, y]) => [Math.round(x * 10), Math.round(y * 10)] as const);
  const steps = places.slice(1).map(([x, y], index) => pair(x - places[index]![0], y - places[index]![1]));
  return `M${pair(...places[0]!)}l${joined(steps)}z`;
}

/** A soft closed outline: curves from middle to middle of the sides, with the corners as handles. Stays within the corners' hull. */
export function softOutline(corners: readonly Corner[]): string {
  const places = corners.map(([x, y]) => [Math.round(x * 10), Math.round(y * 10)] as const);
  const middles = places.map(([x, y], index) => {
    const [nextX, nextY] = places[(index + 1) % places.length]!;
    return [Math.round((x + nextX) / 2), Math.round((y + nextY) / 2)] as const;
  });
  let [x, y] = middles.at(-1)!;
  const start = pair(x, y);
  const steps: string[] = [];
  places.forEach((place, index) => {
    const end = middles[index]!;
    steps.push(pair(place[0] - x, place[1] - y), pair(end[0] - x, end[1] - y));
    [x, y] = end;
  });
  return `M${start}q${joined(steps)}z`;
}

/** Two numbers of tenths: `1.2-3`, `.5 4`. */
function pair(x: number, y: number): string {
  const second = tenths(y);
  return `${tenths(x)}${second.startsWith('-') ? '' : ' '}${second}`;
}

function tenths(value: number): string {
  return String(value / 10).replace(/^(-?)0\./, '$1.');
}

function joined(steps: readonly string[]): string {
  return steps.reduce((text, step) => (text === '' || step.startsWith('-') ? text + step : `${text} ${step}`), '');
}
