import { factOf } from '../fact/index.js';
import type { Convention, CourseRun, Option, RoomMeasure, Surface, WallMeasure } from '../model/index.js';
import type { Length } from '../../base/units/index.js';
import { facetDirections, flatDirection, wallDirection } from './course-direction.js';
import {
  boardRules,
  layOut,
  sheetRules,
  summarize,
  type LaidRegion,
  type LayOut,
  type NamedPlane,
} from './layout/index.js';
import { surfacesOf } from './convention/area.js';
import { coveredRegions } from './hidden.js';
import type { Place } from './places.js';
import type { LayoutSummary } from './takeoff.js';

/** How a category's pieces are laid on a room: what, and which way the record wants them. */
interface Laying {
  readonly lay: 'boards' | 'sheets';
  readonly measure: RoomMeasure;
  readonly courses: CourseRun | undefined;
  readonly rule: Convention;
}

interface Plane extends NamedPlane {
  readonly regions: readonly LaidRegion[];
}

/** Lays an option out on the surfaces of its places, when its category asks for it and the option tells its face coverage
 *  and stock lengths. Pieces are bought for all places together. Undefined when there is nothing to lay or no stock is long
 *  enough to lay it. */
export function layPlaces(
  places: readonly Place[],
  option: Option,
  rule: Convention,
  measure: RoomMeasure,
  courses?: CourseRun,
  lay: LayOut = layOut,
): LayoutSummary | undefined {
  const face = factOf(option, 'pieces', 'face');
  const stock = factOf(option, 'pieces', 'stock');
  const endTrim = factOf(option, 'pieces', 'end-trim');
  const { lay: pieces, orderBy = 'area' } = rule;
  if (pieces === undefined || face === undefined || stock === undefined) return undefined;
  // Which slopes a part of the ceiling is of is not told with it: it is ordered by its area.
  if (places.some((place) => place.kind === 'surface' && place.part)) return undefined;
  const planes = places.flatMap((place) => planesOf(place, { lay: pieces, measure, courses, rule }));
  if (planes.length === 0) return undefined;
  const layout = lay({
    regions: planes.flatMap(({ regions, direction }, plane) =>
      regions.map((region) => ({ ...region, plane, direction })),
    ),
    direction: 0,
    face,
    stock,
    ...(endTrim !== undefined && { endTrim }),
    // Sheets are scored and snapped.
    ...(pieces === 'sheets' && { kerf: 0 as Length }),
    rules: pieces === 'boards' ? boardRules : sheetRules,
  });
  if (layout.courses.length === 0) return undefined;
  const named = planes.map(({ regions: _, ...plane }) => plane);
  return summarize(layout, { lay: pieces, orderBy }, named);
}

/** A ceiling is laid slope by slope; on a wall that openings part, courses run through. */
function planesOf(place: Place, laying: Laying): readonly Plane[] {
  const { lay, measure, courses, rule } = laying;
  if (place.id === 'ceiling') {
    const { facets, deductions } = measure.ceiling;
    const directions = facetDirections(facets, courses);
    return facets.flatMap(({ name, shape }, facet): Plane[] => {
      const direction = directions[facet];
      return direction
        ? [{ place: place.id, name, facet, ...direction, regions: coveredRegions([shape], deductions, rule, facet) }]
        : [];
    });
  }
  return (surfacesOf(place) ?? []).flatMap(({ id, name, surface }): Plane[] => {
    const regions = coveredRegions(surface.regions, surface.deductions, rule);
    if (regions.length === 0) return [];
    const direction =
      id === 'floor'
        ? flatDirection(regions, courses)
        : wallDirection(lay, topOf(place.kind === 'wall' ? place.wall : surface), courses);
    return [{ place: id, name, ...direction, regions }];
  });
}

function topOf(surface: Surface | WallMeasure): { isTopLevel: boolean; isWall: boolean } {
  if (!('top' in surface)) return { isTopLevel: true, isWall: false };
  return { isTopLevel: surface.top.every(({ height }) => height === surface.top[0]?.height), isWall: true };
}
