import {
  areaOf,
  contains,
  dot,
  headings,
  ringInFeet,
  type Ring,
  type Xy,
  patchInFeet,
} from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import { worthSeeing } from '../../core/feature/index.js';
import type { Bearing, CeilingFacet, RoomMeasure } from '../../core/model/index.js';
import type { Side } from './outline.js';
import { radians, type View } from './view.js';

/** How steep a level ceiling's room is looked into, and the most and least for a sloped one, in degrees. */
const elevations = { away: 31, most: 30, least: 11 };
/** Under a slope one sees up to where its rise and the line of sight agree; this share of it shows the slope well. */
const shareOfLimit = 0.64;
/** What else is worth seeing, in square feet of wall. */
const worth = { window: 12, ceiling: 0.5 };

/** What a square foot of wall costs that hides a part of the room. */
const hiddenCost = 3.5;

/** The view in which most of the room is seen: of eight directions along its longest wall, or of those nearest to where its record says that it is seen from.
 *  Where none of some walls would stand in it, the best view in which one of these does. */
export function chooseView(
  measure: RoomMeasure,
  sides: readonly Side[],
  { from, walls = [] }: { readonly from?: Bearing | undefined; readonly walls?: readonly string[] } = {},
): View {
  const longest = sides.toSorted((one, other) => other.to - other.from - (one.to - one.from))[0];
  const base = longest ? Math.atan2(longest.ahead.y, longest.ahead.x) : 0;
  const all = Array.from({ length: 8 }, (_, i) => {
    const turn = (base * 180) / Math.PI + 90 * Math.floor(i / 2) + (i % 2 === 0 ? 33 : 57);
    return ((turn % 360) + 360) % 360;
  });
  const best = (azimuths: readonly number[]): View => {
    const views = azimuths.map((azimuth) => viewAt(azimuth, measure));
    const scored = views.map((view) => ({ view, score: scoreOf(view, measure, sides) }));
    return scored.reduce((first, one) => (one.score > first.score + 1e-6 ? one : first)).view;
  };
  const own = best(from === undefined ? all : nearest(all, headings[from]));
  const asked = sides.filter(({ wall, isOpen }) => !isOpen && walls.includes(wall.id));
  const isShown = (azimuth: number): boolean => asked.some(({ out }) => cosineOf(out, towardOf(azimuth)) > wellSeen);
  const showing = all.filter(isShown);
  return isShown(own.azimuth) || showing.length === 0 ? own : best(showing);
}

/** How square to the view a wall stands on which something is looked for. */
const wellSeen = 0.35;

function towardOf(azimuth: number): Xy {
  return { x: Math.cos(radians(azimuth)), y: Math.sin(radians(azimuth)) };
}

function cosineOf(out: Xy, toward: Xy): number {
  return 0 - dot(out, toward);
}

/** The two directions nearest to a bearing. */
function nearest(azimuths: readonly number[], { x, y }: Xy): readonly number[] {
  const likeness = (azimuth: number): number => dot(towardOf(azimuth), { x, y });
  return azimuths.toSorted((one, other) => likeness(other) - likeness(one)).slice(0, 2);
}

function viewAt(azimuth: number, { ceiling }: RoomMeasure): View {
  const limits = ceiling.facets.map((facet) => ({ area: facet.area as number, limit: limitOf(facet, azimuth) }));
  const seen = limits.filter(({ limit }) => shareOfLimit * limit >= elevations.least);
  const area = seen.reduce((sum, one) => sum + one.area, 0);
  if (area < 0.2 * ceiling.facets.reduce((sum, one) => sum + one.area, 0))
    return { azimuth, elevation: elevations.away, ceiling: 'away' };
  const largest = seen.reduce((best, one) => (one.area > best.area ? one : best));
  return { azimuth, elevation: Math.min(elevations.most, shareOfLimit * largest.limit), ceiling: 'seen' };
}

/** Degrees over the floor under which a slope is seen from below. */
function limitOf({ slope, riseDirection }: CeilingFacet, azimuth: number): number {
  return (Math.atan(slope * Math.cos(radians(riseDirection - azimuth))) * 180) / Math.PI;
}

function scoreOf(view: View, measure: RoomMeasure, sides: readonly Side[]): number {
  const toward = towardOf(view.azimuth);
  const plan = ringInFeet(measure.plan);
  const walls = sides.reduce((sum, side) => sum + wallScore(side, toward, plan, measure), 0);
  if (view.ceiling === 'away') return walls;
  const ceiling = measure.ceiling.facets.filter((facet) => limitOf(facet, view.azimuth) > view.elevation);
  return walls + worth.ceiling * ceiling.reduce((sum, { area }) => sum + area, 0);
}

function wallScore(side: Side, toward: Xy, plan: Ring, { openings, features }: RoomMeasure): number {
  const { wall, isOpen, out, a, b, from, to } = side;
  const cosine = cosineOf(out, toward);
  if (isOpen || cosine <= 0.02) return 0;
  const share = (to - from) / feet(wall.run);
  const net = areaOf(wall.regions.map(patchInFeet)) * share;
  // What faces the viewer with room behind it hides that room.
  const hidden = shareThatHides(a, b, toward, plan);
  const windows = openings.filter((opening) => opening.wall === wall.id && opening.kind === 'window').length;
  const things = features
    .filter(({ covers }) => covers[0]?.wall === wall.id)
    .reduce((sum, feature) => sum + worthSeeing(feature), 0);
  return (net + windows * worth.window + things - hiddenCost * hidden * net) * cosine;
}

/** How much of a side has room behind it, away from the viewer. */
function shareThatHides(a: Xy, b: Xy, toward: Xy, plan: Ring): number {
  const shares = [0.1, 0.3, 0.5, 0.7, 0.9];
  const hiding = shares.filter((share) =>
    [0.5, 1, 2, 4, 6, 9].some((far) =>
      contains(plan, {
        x: a.x + (b.x - a.x) * share - toward.x * far,
        y: a.y + (b.y - a.y) * share - toward.y * far,
      }),
    ),
  );
  return hiding.length / shares.length;
}
