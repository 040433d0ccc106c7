import { circle, element, group, path, PathBuilder, text, type SvgNode } from '../../base/svg/index.js';
import type { SeenFinish } from '../../core/book/index.js';
import type { Bearing, RoomMeasure } from '../../core/model/index.js';
import { findPlaces, placeText } from '../../core/takeoff/index.js';
import type { DrawOptions, Drawing } from '../drawing.js';
import { isOf, timbersBefore } from './before.js';
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
import { unseenOf } from './unseen.js';
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

/** On the sheet, in feet. */
export interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface CutawayOptions extends DrawOptions {
  /** Absent: the room's own view. */
  readonly view?: View;
  /** Without numbers. */
  readonly plain?: boolean;
  /** Places that the picture is cut to, with what is around them; absent, or where none of them is seen: all of the room. */
  readonly focus?: readonly string[];
  /** What is shown, as other pictures of the room tell it; it goes before `focus`. */
  readonly bounds?: Bounds;
  /** What the picture is called; absent: `101 Great room, as it will look`. */
  readonly title?: string;
}

export interface Cutaway {
  readonly drawing: Drawing;
  /** In order of their numbers. */
  readonly keys: readonly Key[];
  /** Finishes of the room that nothing of the picture shows, without numbers. */
  readonly unseen: readonly Key[];
  readonly view: View;
  readonly bounds: Bounds;
  /** What is drawn, with the materials that it refers to, without ids and words. */
  readonly nodes: readonly SvgNode[];
}

type PictureOptions = Required<Pick<CutawayOptions, 'view' | 'focus' | 'plain'>> &
  Pick<CutawayOptions, 'box' | 'bounds'>;

/** The picture as drawn: its ids begin with a mark, in place of which each who asks for it has its own. */
interface Picture extends Pick<Cutaway, 'keys' | 'unseen' | 'view' | 'bounds' | 'nodes'> {
  /** Left, top, width and height in points. */
  readonly frame: readonly [number, number, number, number];
  readonly isCut: boolean;
}

/** What pictures must not be taken for. */
export const pictureWords = 'A drawing, not the sample. Not to be measured from.';

/** Points around the picture, and the most for a foot. */
const margin = 8;
const largest = 26;
/** Points of a number's radius: less in a small picture, where less has room. */
const numberRadius = { most: 7, least: 4.4, forInch: 1.25 };
/** What is shown around a place, as a share of its size and in feet. */
const focusShare = 0.25;
const focusMargin = 2.5;
const idMark = '~';

const kept = new WeakMap<RoomMeasure, Map<string, Picture>>();

/** From where a room is seen when nothing else is asked for; where it is drawn for some places, from where one of these is seen, if the room's own view has
 *  none of them. */
export function roomView(
  { measure, viewFrom }: Pick<CutawayRoom, 'measure' | 'viewFrom'>,
  focus: readonly string[] = [],
): View {
  return chooseView(measure, sidesOf(measure), { from: viewFrom, walls: wallsBehind(focus, measure) });
}

/** Walls that places are on; none where one of the places is on no wall, and seen from anywhere. */
function wallsBehind(places: readonly string[], { walls, openings, features }: RoomMeasure): readonly string[] {
  const found = places.map((place) => {
    const feature = features.find(({ id }) => place === id || place.startsWith(`${id}/`));
    const opening = openings.find(({ mark }) => mark === place);
    if (feature) return feature.covers.map(({ wall }) => wall);
    return opening ? [opening.wall] : walls.filter(({ id }) => id === place).map(({ id }) => id);
  });
  return found.some((one) => one.length === 0) ? [] : found.flat();
}

/** Do two pictures show the same? */
export function looksSame(one: Cutaway, other: Cutaway): boolean {
  return one.nodes === other.nodes || JSON.stringify(one.nodes) === JSON.stringify(other.nodes);
}

/** Not to scale, and not to be measured from: planes are seen at an angle. A picture is drawn once for as long as the room's measure lives. */
export function drawCutaway(room: CutawayRoom, options: CutawayOptions): Cutaway {
  const { measure, seen } = room;
  const { plain = false, focus = [], box, bounds } = options;
  const view = options.view ?? roomView(room);
  const pictures = kept.get(measure) ?? new Map<string, Picture>();
  kept.set(measure, pictures);
  const name = JSON.stringify([seen, view, plain, focus, box, bounds]);
  const picture =
    pictures.get(name) ?? drawPicture(room, { plain, focus, view, ...(box && { box }), ...(bounds && { bounds }) });
  pictures.set(name, picture);
  const { keys, unseen, nodes } = picture;
  return { drawing: issue(picture, room, options), keys, unseen, view, bounds: picture.bounds, nodes };
}

function drawPicture(
  { measure, seen }: CutawayRoom,
  { view, focus, plain, box, bounds: wanted }: PictureOptions,
): Picture {
  const looks = looksOf(seen);
  const { camera, laid, away } = sceneOf(measure, view, railsKey(seen), () => railFacets(seen, measure));
  const around = focusOn(laid, focus);
  const bounds = wanted ?? around ?? boundsOf(laid);
  const scale = scaleFor(bounds, box ?? { width: 7, height: 7 });
  const painter = new Painter(camera, scale, looks, idMark);
  const radius = radiusIn(bounds, scale);
  const decals = laid.map(({ facet }) => decalsOf(facet, measure, looks));
  const covered = laid.map((one, i) => ({ laid: one, decals: decals[i]! }));
  const placed = placeKeys(covered, looks, { measure, camera }, plain ? undefined : (radius + 1.5) / scale);
  const before = [...timbersBefore(laid, focus, measure)];
  const nodes = laid.flatMap((one, i) => {
    if (!meets(one, bounds, margin / scale)) return [];
    return before.some((id) => isOf(id, one.facet)) ? painter.faint(one) : painter.facet(one, decals[i]!);
  });
  const lines = away.map((line) => awayLine(line.map(camera.spot), scale));
  return {
    view,
    bounds,
    keys: placed.map(({ spot: _spot, ...key }) => key),
    unseen: unseenOf(seen, { laid, decals: decals.flat(), looks, keys: placed, measure }),
    nodes: [
      ...(painter.defs.length > 0 ? [element('defs', {}, ...painter.defs)] : []),
      ...nodes,
      ...lines,
      ...placed.flatMap((key) => numberAt(key, scale, radius)),
    ],
    frame: [
      bounds.left * scale - margin,
      bounds.top * scale - margin,
      (bounds.right - bounds.left) * scale + 2 * margin,
      (bounds.bottom - bounds.top) * scale + 2 * margin,
    ],
    isCut: around !== undefined,
  };
}

function issue(
  { nodes, frame, keys, isCut }: Picture,
  { number, name, measure }: CutawayRoom,
  { id, font = 'Public Sans', focus = [], title = `${number} ${name}, as it will look` }: CutawayOptions,
): Drawing {
  const [width, height] = [frame[2], frame[3]];
  const description = isCut ? describePart(focus, measure) : describe(keys);
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${round(width / 72, 3)}in`,
      height: `${round(height / 72, 3)}in`,
      viewBox: frame.map((value) => round(value, 1)).join(' '),
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      'font-family': font,
      'stroke-linejoin': 'round',
    },
    element('title', { id: `${id}-title` }, title),
    element('desc', { id: `${id}-desc` }, description),
    ...nodes.map((node) => withId(node, id)),
  );
  return {
    id,
    title,
    description,
    scale: 'not to scale',
    ratio: 0,
    width: width / 72,
    height: height / 72,
    svg,
  };
}

function withId(node: SvgNode, id: string): SvgNode {
  const attributes = Object.entries(node.attributes).map(([key, value]) => [
    key,
    typeof value === 'string' ? value.replace(idMark, id) : value,
  ]);
  const children = node.children.map((child) => (typeof child === 'string' ? child : withId(child, id)));
  return { ...node, attributes: Object.fromEntries(attributes) as SvgNode['attributes'], children };
}

const closing = 'A drawing, not the sample.';

function describe(keys: readonly Key[]): string {
  const list = keys
    .map(({ number, at, finish }) => `${number === undefined ? '' : `${number}, `}${at}: ${finish}`)
    .join('; ');
  return `The room with its near walls taken away. ${list === '' ? 'No finish is recorded.' : `${list}.`} ${closing}`;
}

function describePart(focus: readonly string[], measure: RoomMeasure): string {
  const place = placeText(
    [],
    focus.flatMap((id) => findPlaces(id, measure) ?? []),
  );
  return `${place}, and what is around, in the room with its near walls taken away. ${closing}`;
}

function scaleFor(
  { left, right, top, bottom }: Bounds,
  box: { readonly width: number; readonly height: number },
): number {
  const [wide, high] = [box.width * 72 - 2 * margin, box.height * 72 - 2 * margin];
  return Math.min(largest, wide / (right - left), high / (bottom - top));
}

function radiusIn({ left, right, top, bottom }: Bounds, scale: number): number {
  const inches = (Math.max(right - left, bottom - top) * scale) / 72;
  return round(Math.min(numberRadius.most, Math.max(numberRadius.least, inches * numberRadius.forInch)), 1);
}

function awayLine(line: readonly (readonly [number, number])[], scale: number): SvgNode {
  const spots = line.map(([x, y]) => [x * scale, y * scale] as const);
  const look = { fill: 'none', stroke: ink.away, 'stroke-width': 0.5, 'stroke-dasharray': '3.5 2' };
  return path(new PathBuilder(1).polyline(spots).data, look);
}

function numberAt({ number, spot }: PlacedKey, scale: number, radius: number): readonly SvgNode[] {
  if (!spot) return [];
  const [x, y] = [round(spot[0] * scale, 1), round(spot[1] * scale, 1)];
  const disc = circle(x, y, radius, { fill: ink.paper, stroke: ink.line, 'stroke-width': 0.6 });
  const look = { 'text-anchor': 'middle', 'font-size': round(radius * 1.086, 1), 'font-weight': 600, fill: ink.line };
  // A group, so that a small screen can show it larger.
  return [group({ class: 'number' }, [disc, text(x, round(y + radius * 0.386, 1), String(number), look)])];
}

function boundsOf(laid: readonly Laid[]): Bounds {
  return {
    left: Math.min(...laid.map(({ left }) => left)),
    right: Math.max(...laid.map(({ right }) => right)),
    top: Math.min(...laid.map(({ top }) => top)),
    bottom: Math.max(...laid.map(({ bottom }) => bottom)),
  };
}

function meets(one: Bounds, other: Bounds, play: number): boolean {
  const apart = Math.max(
    one.left - other.right,
    other.left - one.right,
    one.top - other.bottom,
    other.top - one.bottom,
  );
  return apart < play;
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
