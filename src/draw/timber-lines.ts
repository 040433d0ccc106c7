import type { OverheadMark } from '../core/feature/index.js';
import type { CeilingFacet, FeatureMeasure, RoomMeasure } from '../core/model/index.js';
import type { Spot } from './convex.js';
import { stretchesInside } from './inside.js';
import { lengthText } from './length-text.js';
import type { Sheet } from './sheet.js';

/** What of a room says where its timbers lie. */
export interface TimberedRoom extends Pick<RoomMeasure, 'plan'> {
  readonly ceiling: { readonly facets: readonly Pick<CeilingFacet, 'slope' | 'riseDirection'>[] };
}

/** Share of the room that a piece must reach over to be drawn from side to side. */
const leastSpan = 0.85;

/** A timber in plan: its center line, and its corners, of which the first two lie along one side. */
export interface TimberLine {
  readonly line: readonly [Spot, Spot];
  readonly corners: readonly [Spot, Spot, Spot, Spot];
}

/** A set of timbers where their record says that they are. Where it does not, those that span the room are spaced evenly over it. They
 *  run across the ridge where there is one that their length allows, else the way that their length fits better. None for pieces that
 *  do not span, such as posts and rafters: `timberNote` names them. */
export function timberLines(sheet: Sheet, measure: TimberedRoom, pieces: OverheadMark): readonly TimberLine[] {
  const outline = measure.plan.map((point) => sheet.spot(point));
  const xs = outline.map((spot) => spot[0]);
  const ys = outline.map((spot) => spot[1]);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const { count } = pieces;
  const width = pieces.width * sheet.perNanometre;
  const run = runOver(measure, pieces);
  const isLevel = run === 'east-west';
  if (pieces.lines) return pieces.lines.map(({ from, to }) => lineOf(sheet.spot(from), sheet.spot(to), width / 2));
  const lines: TimberLine[] = [];
  if (!run) return lines;
  for (let index = 0; index < count; index++) {
    const share = (index + 1) / (count + 1);
    const through: Spot = isLevel ? [left, top + (bottom - top) * share] : [left + (right - left) * share, top];
    const stretch = stretchesInside([outline], through, isLevel ? [1, 0] : [0, 1])[0];
    if (stretch !== undefined) lines.push(lineOf(...stretch, width / 2));
  }
  return lines;
}

/** Which way timbers run from side to side of a room; undefined for pieces that do not span it. */
export function runOver(
  room: TimberedRoom,
  { length }: Pick<OverheadMark, 'length'>,
): 'east-west' | 'north-south' | undefined {
  const extent = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
  const [eastWest, northSouth] = [extent(room.plan.map(({ x }) => x)), extent(room.plan.map(({ y }) => y))];
  const isLevel = runsEastWest(room, length, eastWest, northSouth);
  if (length < (isLevel ? eastWest : northSouth) * leastSpan) return undefined;
  return isLevel ? 'east-west' : 'north-south';
}

/** What stands is as long in plan as it is wide. */
function lineOf(from: Spot, to: Spot, half: number): TimberLine {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const isUpright = length < half / 2;
  const [x, y] = isUpright ? [half, 0] : [((to[0] - from[0]) / length) * half, ((to[1] - from[1]) / length) * half];
  const [start, end]: [Spot, Spot] = isUpright
    ? [
        [from[0] - x, from[1]],
        [from[0] + x, from[1]],
      ]
    : [from, to];
  const corners: TimberLine['corners'] = [
    [start[0] - y, start[1] + x],
    [end[0] - y, end[1] + x],
    [end[0] + y, end[1] - x],
    [start[0] + y, start[1] - x],
  ];
  return { line: [start, end], corners };
}

/** What is not drawn, in words; `shownIn` is the section that shows it. */
export function timberNote(
  { name }: FeatureMeasure,
  { count, length }: OverheadMark,
  shownIn: string | undefined,
): string {
  const words = `${name}, ${count} of ${lengthText(length)}`;
  return shownIn === undefined ? `Not drawn: ${words}` : `In ${shownIn}: ${words}`;
}

function runsEastWest(measure: TimberedRoom, piece: number, eastWest: number, northSouth: number): boolean {
  const sloped = measure.ceiling.facets.filter((facet) => facet.slope > 0);
  const rises = sloped.filter((facet) => Math.abs(Math.cos((facet.riseDirection * Math.PI) / 180)) > 0.7).length;
  // Along the ridge only a piece that is too long for the other way.
  const across = sloped.length === 0 ? undefined : rises > sloped.length / 2 ? eastWest : northSouth;
  const other = across === eastWest ? northSouth : eastWest;
  if (across !== undefined && (piece <= across * 1.25 || across >= other)) return across === eastWest;
  return Math.abs(piece - eastWest) < Math.abs(piece - northSouth);
}
