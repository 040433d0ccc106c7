import { circle, element, path, PathBuilder, text, type SvgNode } from '../../base/svg/index.js';
import type { SeenFinish } from '../../core/book/index.js';
import type { Bearing, RoomMeasure } from '../../core/model/index.js';
import type { DrawOptions, Drawing } from '../drawing.js';
import { chooseView } from './choose-view.js';
import { ink } from './ink.js';
import { placeKeys, type Key, type PlacedKey } from './keys.js';
import { looksOf } from './look.js';
import { decalsOf } from './on-wall.js';
import type { Laid } from './order.js';
import { sidesOf } from './outline.js';
import { Painter } from './paint.js';
import { railFacets, railsKey } from './railing.js';
import { sceneOf } from './scene.js';
import type { View } from './view.js';

/** A room with what is seen of its choices. */
export interface CutawayRoom {
  readonly measure: RoomMeasure;
  readonly number: string;
  readonly name: string;
  readonly seen: readonly SeenFinish[];
  /** Bearing from which its record says that it is seen; absent: from where most of it is. */
  readonly viewFrom?: Bearing;
}

export interface CutawayOptions extends DrawOptions {
  /** Absent: the room's own view. */
  readonly view?: View;
  /** Without numbers. */
  readonly plain?: boolean;
  /** Places that the picture is cut to, with what is around them; absent, or where none of them is seen: all of the room. */
  readonly focus?: readonly string[];
}

export interface Cutaway {
  readonly drawing: Drawing;
  /** In order of their numbers. */
  readonly keys: readonly Key[];
  readonly view: View;
}

/** Points around the picture, and the most for a foot. */
const margin = 8;
const largest = 26;
const numberRadius = 7;
/** What is shown around a place, as a share of its size and in feet. */
const focusShare = 0.25;
const focusMargin = 2.5;

/** Not to scale, and not to be measured from: planes are seen at an angle. */
export function drawCutaway(room: CutawayRoom, options: CutawayOptions): Cutaway {
  const { measure, number, name, seen } = room;
  const view = options.view ?? chooseView(measure, sidesOf(measure), room.viewFrom);
  const looks = looksOf(seen);
  const { camera, laid, away } = sceneOf(measure, view, railsKey(seen), () => railFacets(seen, measure));
  const bounds = focusOn(laid, options.focus ?? []) ?? boundsOf(laid);
  const scale = scaleFor(bounds, options.box ?? { width: 7, height: 7 });
  const painter = new Painter(camera, scale, looks, options.id);
  const placed = options.plain ? [] : placeKeys(laid, looks, measure, (numberRadius + 1.5) / scale);
  const shown = laid.filter((one) => meetsBounds(one, bounds));
  const nodes = shown.flatMap((one) => painter.facet(one, decalsOf(one.facet, measure, looks)));
  const lines = away.map((line) => awayLine(line.map(camera.spot), scale));
  const title = `${number} ${name}, as it will look`;
  const description = describe(placed);
  const [x, y] = [bounds.left * scale - margin, bounds.top * scale - margin];
  const [width, height] = [
    (bounds.right - bounds.left) * scale + 2 * margin,
    (bounds.bottom - bounds.top) * scale + 2 * margin,
  ];
  const { id, font = 'Public Sans' } = options;
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${round(width / 72, 3)}in`,
      height: `${round(height / 72, 3)}in`,
      viewBox: [x, y, width, height].map((value) => round(value, 1)).join(' '),
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      'font-family': font,
      'stroke-linejoin': 'round',
    },
    element('title', { id: `${id}-title` }, title),
    element('desc', { id: `${id}-desc` }, description),
    ...(painter.defs.length > 0 ? [element('defs', {}, ...painter.defs)] : []),
    ...nodes,
    ...lines,
    ...placed.flatMap((key) => numberAt(key, scale)),
  );
  const drawing = {
    id,
    title,
    description,
    scale: 'not to scale',
    ratio: 0,
    width: width / 72,
    height: height / 72,
    svg,
  };
  return { drawing, view, keys: placed.map(({ spot: _spot, ...key }) => key) };
}

function describe(keys: readonly Key[]): string {
  const list = keys
    .map(({ number, at, finish }) => `${number === undefined ? '' : `${number}: `}${at}, ${finish}`)
    .join('; ');
  return `The room with its near walls taken away. ${list === '' ? 'No finish is recorded.' : `${list}.`} A drawing, not the sample.`;
}

function scaleFor(
  { left, right, top, bottom }: Bounds,
  box: { readonly width: number; readonly height: number },
): number {
  const [wide, high] = [box.width * 72 - 2 * margin, box.height * 72 - 2 * margin];
  return Math.min(largest, wide / (right - left), high / (bottom - top));
}

function awayLine(line: readonly (readonly [number, number])[], scale: number): SvgNode {
  const spots = line.map(([x, y]) => [x * scale, y * scale] as const);
  const look = { fill: 'none', stroke: ink.away, 'stroke-width': 0.5, 'stroke-dasharray': '3.5 2' };
  return path(new PathBuilder(1).polyline(spots).data, look);
}

function numberAt({ number, spot }: PlacedKey, scale: number): readonly SvgNode[] {
  if (!spot) return [];
  const [x, y] = [round(spot[0] * scale, 1), round(spot[1] * scale, 1)];
  return [
    circle(x, y, numberRadius, { fill: ink.paper, stroke: ink.line, 'stroke-width': 0.6 }),
    text(x, y + 2.7, String(number), { 'text-anchor': 'middle', 'font-size': 7.6, 'font-weight': 600, fill: ink.line }),
  ];
}

interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function boundsOf(laid: readonly Laid[]): Bounds {
  return {
    left: Math.min(...laid.map(({ left }) => left)),
    right: Math.max(...laid.map(({ right }) => right)),
    top: Math.min(...laid.map(({ top }) => top)),
    bottom: Math.max(...laid.map(({ bottom }) => bottom)),
  };
}

function meetsBounds(one: Bounds, other: Bounds): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

/** Around facets at some places, with some of what stands beside them. */
function focusOn(laid: readonly Laid[], places: readonly string[]): Bounds | undefined {
  const here = laid.filter(({ facet }) => facet.places.some((place) => places.includes(place)));
  if (here.length === 0) return undefined;
  const [own, all] = [boundsOf(here), boundsOf(laid)];
  const beside = Math.max(focusMargin, focusShare * Math.max(own.right - own.left, own.bottom - own.top));
  return {
    left: Math.max(all.left, own.left - beside),
    right: Math.min(all.right, own.right + beside),
    top: Math.max(all.top, own.top - beside),
    bottom: Math.min(all.bottom, own.bottom + beside),
  };
}

function round(value: number, digits: number): number {
  return Math.round(value * 10 ** digits) / 10 ** digits;
}
