import type { PlanMark } from '../core/feature/index.js';
import type { FeatureMeasure, RoomMeasure } from '../core/model/index.js';
import type { Spot } from './convex.js';
import { stretchesInside } from './inside.js';
import { lengthText } from './length-text.js';
import type { Sheet } from './sheet.js';

export type Overhead = Extract<PlanMark, { readonly role: 'overhead' }>;

/** Share of the room that a piece must reach over to be drawn from side to side. */
const leastSpan = 0.85;

/** Center lines of a set of timbers that span the room, spaced evenly over the room: the record holds how many and how long, not where. They
 *  run across the ridge where there is one that their length allows, else the way that their length fits better. None for pieces that
 *  do not span, such as posts and rafters: `timberNote` names them. */
export function timberLines(
  sheet: Sheet,
  measure: RoomMeasure,
  pieces: Overhead,
): { readonly lines: readonly (readonly [Spot, Spot])[]; readonly width: number } {
  const outline = measure.plan.map((point) => sheet.spot(point));
  const xs = outline.map((spot) => spot[0]);
  const ys = outline.map((spot) => spot[1]);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const { count } = pieces;
  const [piece, width] = [pieces.length * sheet.perNanometre, pieces.width * sheet.perNanometre];
  const isLevel = runsEastWest(measure, piece, right - left, bottom - top);
  const lines: (readonly [Spot, Spot])[] = [];
  if (piece < (isLevel ? right - left : bottom - top) * leastSpan) return { lines, width };
  for (let index = 0; index < count; index++) {
    const share = (index + 1) / (count + 1);
    const through: Spot = isLevel ? [left, top + (bottom - top) * share] : [left + (right - left) * share, top];
    const stretch = stretchesInside([outline], through, isLevel ? [1, 0] : [0, 1])[0];
    if (stretch !== undefined) lines.push(stretch);
  }
  return { lines, width };
}

/** What is not drawn, in words. */
export function timberNote({ name }: FeatureMeasure, { count, length }: Overhead): string {
  return `Not drawn: ${name}, ${count} of ${lengthText(length)}`;
}

function runsEastWest(measure: RoomMeasure, piece: number, eastWest: number, northSouth: number): boolean {
  const sloped = measure.ceiling.facets.filter((facet) => facet.slope > 0);
  const rises = sloped.filter((facet) => Math.abs(Math.cos((facet.riseDirection * Math.PI) / 180)) > 0.7).length;
  // Along the ridge only a piece that is too long for the other way.
  const across = sloped.length === 0 ? undefined : rises > sloped.length / 2 ? eastWest : northSouth;
  const other = across === eastWest ? northSouth : eastWest;
  if (across !== undefined && (piece <= across * 1.25 || across >= other)) return across === eastWest;
  return Math.abs(piece - eastWest) < Math.abs(piece - northSouth);
}
