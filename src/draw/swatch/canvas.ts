import { numberText, path, rect, type SvgNode } from '../../base/svg/index.js';
import type { Random } from './random.js';
import type { Thing } from './stuff.js';

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
  /** What its record tells of a thing's shape. */
  readonly thing: Thing;
  /** How much of a light its paint throws back, from 0 to 1. */
  readonly gloss?: number;
  /** Of its glass. */
  readonly glass?: string;
  /** False when the picture is so small that fine lines only blur it. */
  readonly isFine: boolean;
}

export type Pattern = (canvas: Canvas) => readonly SvgNode[];

export type Corner = readonly [x: number, y: number];

export function ground({ width, height }: Canvas, fill: string): SvgNode {
  return rect(0, 0, width, height, { fill });
}

/** A filled outline, cut at the edge of the picture; undefined when nothing of it is left. */
export function piece(canvas: Canvas, corners: readonly Corner[], fill: string, opacity?: number): SvgNode[] {
  const inside = clip(corners, canvas.width, canvas.height);
  if (inside.length < 3) return [];
  return [path(outlineData(inside), { fill, opacity })];
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

/** A closed outline in steps, each from the last: shorter to write than places. A unit is written with so many decimals. */
export function outlineData(corners: readonly Corner[], digits = 1): string {
  const [first, ...rest] = straightened(whole(corners, digits));
  let [x, y] = first!;
  let last = '';
  const steps = rest.map((corner) => {
    const [right, down] = [corner[0] - x, corner[1] - y];
    [x, y] = corner;
    const command = right === 0 ? 'v' : down === 0 ? 'h' : 'l';
    const step = command === 'l' ? pair(right, down, digits) : short(command === 'h' ? right : down, digits);
    const separator = command !== last ? command : step.startsWith('-') ? '' : ' ';
    last = command;
    return separator + step;
  });
  return `M${pair(...first!, digits)}${steps.join('')}z`;
}

type Place = readonly [number, number];

/** Corners without those that lie on a level or plumb side. */
function straightened(places: readonly Place[]): readonly Place[] {
  return places.reduce<Place[]>((kept, place) => {
    const [before, last] = [kept.at(-2), kept.at(-1)];
    const isOnSide =
      before !== undefined &&
      last !== undefined &&
      ((before[0] === last[0] && last[0] === place[0]) || (before[1] === last[1] && last[1] === place[1]));
    return [...(isOnSide ? kept.slice(0, -1) : kept), place];
  }, []);
}

/** A soft closed outline: curves from middle to middle of the sides, with the corners as handles. Stays within the corners' hull. */
export function softOutline(corners: readonly Corner[], digits = 1): string {
  const places = whole(corners, digits);
  const middles = places.map(([x, y], index) => {
    const [nextX, nextY] = places[(index + 1) % places.length]!;
    return [Math.round((x + nextX) / 2), Math.round((y + nextY) / 2)] as const;
  });
  let [x, y] = middles.at(-1)!;
  const start = pair(x, y, digits);
  const steps: string[] = [];
  places.forEach((place, index) => {
    const end = middles[index]!;
    steps.push(pair(place[0] - x, place[1] - y, digits), pair(end[0] - x, end[1] - y, digits));
    [x, y] = end;
  });
  return `M${start}q${joined(steps)}z`;
}

/** A dot: a line of almost no length, which a stroke with round ends fills out. */
export function dotData(corner: Corner, digits = 1): string {
  return `M${whole([corner], digits)
    .map(([x, y]) => pair(x, y, digits))
    .join('')}h.1`;
}

function whole(corners: readonly Corner[], digits: number): Place[] {
  const steps = 10 ** digits;
  return corners.map(([x, y]) => [Math.round(x * steps), Math.round(y * steps)] as const);
}

/** Two numbers in steps of the last decimal: `1.2-3`, `.5 4`. */
function pair(x: number, y: number, digits: number): string {
  const second = short(y, digits);
  return `${short(x, digits)}${second.startsWith('-') ? '' : ' '}${second}`;
}

function short(steps: number, digits: number): string {
  return numberText(steps / 10 ** digits, digits).replace(/^(-?)0\./, '$1.');
}

function joined(steps: readonly string[]): string {
  return steps.reduce((text, step) => (text === '' || step.startsWith('-') ? text + step : `${text} ${step}`), '');
}
