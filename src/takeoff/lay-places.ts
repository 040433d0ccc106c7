import type { CeilingMeasure, Convention, Option, Region, RoomMeasure } from '../model/index.js';
import { boardRules, layOut, sheetRules, summarize } from './layout/index.js';
import type { LayoutInput } from './layout/index.js';
import { surfacesOf } from './convention/area.js';
import type { Place } from './places.js';
import type { LayoutSummary } from './takeoff.js';

/** Lays an option out on the surfaces of its places, when its category asks for it and the option tells its face coverage
 *  and stock lengths. Courses run level across a slope, along the wall on a wall, and along the longer side of what is flat
 *  (common practice, no source). Undefined when there is nothing to lay or no stock is long enough to lay it. */
export function layPlaces(
  places: readonly Place[],
  option: Option,
  rule: Convention,
  measure: RoomMeasure,
): LayoutSummary | undefined {
  const face = option.attributes['face']?.value;
  const stock = option.attributes['stock']?.value;
  if (rule.lay === undefined || face?.kind !== 'length' || stock?.kind !== 'lengths') return undefined;
  const regions = places.flatMap((place) => regionsOf(place, measure.ceiling));
  if (regions.length === 0) return undefined;
  const layout = layOut({
    regions,
    direction: isFlat(places, measure.ceiling) ? alongLonger(regions) : 0,
    face: face.length,
    stock: stock.lengths,
    rules: rule.lay === 'boards' ? boardRules : sheetRules,
  } satisfies LayoutInput);
  return layout.courses.length === 0 ? undefined : summarize(layout);
}

/** A ceiling is laid slope by slope. */
function regionsOf(place: Place, ceiling: CeilingMeasure): readonly Region[] {
  if (place.id === 'ceiling') return ceiling.facets.map((facet) => facet.shape);
  return surfacesOf(place)?.flatMap(({ surface }) => surface.regions) ?? [];
}

function isFlat(places: readonly Place[], ceiling: CeilingMeasure): boolean {
  return places.every((place) =>
    place.id === 'ceiling' ? ceiling.facets.every((facet) => facet.slope === 0) : place.id === 'floor',
  );
}

/** 0 along x, 90 along y: the longer extent of the largest region. */
function alongLonger(regions: readonly Region[]): number {
  const extents = regions.map(({ outline }) => {
    const xs = outline.map((point) => point.x);
    const ys = outline.map((point) => point.y);
    return { x: Math.max(...xs) - Math.min(...xs), y: Math.max(...ys) - Math.min(...ys) };
  });
  const largest = extents.reduce((best, extent) => (extent.x * extent.y > best.x * best.y ? extent : best));
  return largest.x >= largest.y ? 0 : 90;
}
