import type { CeilingFacet, CourseRun, Region } from '../model/index.js';
import { compass } from '../../base/units/index.js';

/** The way courses run on a surface, and at which side the first one lies. */
export interface Direction {
  /** Degrees counter-clockwise from the surface's own x. */
  readonly direction: number;
  /** `east-west`, `horizontal`, `level` … */
  readonly run: string;
  readonly startsAt: string;
}

/** On a floor or a flat ceiling: as recorded, else along the longer side of the largest part (common practice, no
 *  source). */
export function flatDirection(regions: readonly Region[], courses?: CourseRun): Direction {
  const direction = courses === 'east-west' ? 0 : courses === 'north-south' ? 90 : alongLonger(regions);
  return {
    direction,
    run: direction === 0 ? 'east-west' : 'north-south',
    startsAt: `the ${direction === 0 ? 'south' : 'east'} side`,
  };
}

/** On the slopes of a ceiling: as recorded, else level along each slope, and on what is flat between them as on the largest
 *  slope (common practice, no source). */
export function facetDirections(facets: readonly CeilingFacet[], courses?: CourseRun): readonly Direction[] {
  const slopes = facets.filter(({ slope }) => slope !== 0).sort((a, b) => b.area - a.area);
  const largest = slopes[0];
  const flat = facets.filter(({ slope }) => slope === 0);
  const level = largest && (isUpright(largest.riseDirection) ? 'east-west' : 'north-south');
  const onFlat = flatDirection(
    flat.map(({ shape }) => shape),
    courses ?? level,
  );
  return facets.map((facet) => (facet.slope === 0 ? onFlat : slopeDirection(facet, courses)));
}

/** On a wall or a face: upright as recorded, else level. Sheets on a wall with a level top are hung from the top (common
 *  practice, no source). */
export function wallDirection(
  lay: 'boards' | 'sheets',
  { isTopLevel, isWall }: { readonly isTopLevel: boolean; readonly isWall: boolean },
  courses?: CourseRun,
): Direction {
  if (courses === 'vertical') return { direction: 90, run: 'vertical', startsAt: 'the right-hand end' };
  const fromTop = lay === 'sheets' && isTopLevel;
  const [top, bottom] = isWall ? ['the ceiling', 'the floor'] : ['the top', 'the bottom'];
  return { direction: fromTop ? 180 : 0, run: 'horizontal', startsAt: fromTop ? top : bottom };
}

/** A compass direction on a slope is the one that a plan shows; the first course then lies to the south or east, so that
 *  courses of slopes that meet begin at the same side. */
function slopeDirection({ slope, riseDirection }: CeilingFacet, courses: CourseRun | undefined): Direction {
  if (courses === undefined) return { direction: 0, run: levelWords(riseDirection), startsAt: 'the eave' };
  const rise = (riseDirection * Math.PI) / 180;
  const stretch = Math.hypot(1, slope);
  const way = courses === 'north-south' ? { x: 0, y: 1 } : { x: 1, y: 0 };
  const level = way.x * Math.sin(rise) - way.y * Math.cos(rise);
  const up = (way.x * Math.cos(rise) + way.y * Math.sin(rise)) * stretch;
  const degrees = snapped((Math.atan2(up, level) * 180) / Math.PI);
  const side = sideOf(degrees, rise, stretch);
  const isSouthEast = side.x - side.y > 0;
  const direction = (degrees + (isSouthEast ? 360 : 180)) % 360;
  if (direction % 180 === 0) return { direction: 0, run: courses, startsAt: 'the eave' };
  const toFirst = isSouthEast ? side : { x: -side.x, y: -side.y };
  const bearing = bearingOf((Math.atan2(toFirst.y, toFirst.x) * 180) / Math.PI);
  return { direction, run: courses, startsAt: `the ${bearing} side` };
}

/** Toward the first course, on the plan. Courses are counted to their left, so that it lies to their right. */
function sideOf(degrees: number, rise: number, stretch: number): { readonly x: number; readonly y: number } {
  const turn = (degrees * Math.PI) / 180;
  const [level, up] = [Math.sin(turn), -Math.cos(turn) / stretch];
  return {
    x: level * Math.sin(rise) + up * Math.cos(rise),
    y: -level * Math.cos(rise) + up * Math.sin(rise),
  };
}

function levelWords(riseDirection: number): string {
  if (isUpright(riseDirection) && riseDirection % 90 === 0) return 'east-west';
  return riseDirection % 90 === 0 ? 'north-south' : 'level along the slope';
}

/** Rises to the north or south rather than to the east or west. */
function isUpright(riseDirection: number): boolean {
  return Math.abs(Math.sin((riseDirection * Math.PI) / 180)) > Math.SQRT1_2;
}

/** Degrees counter-clockwise from east as one of eight bearings. */
function bearingOf(degrees: number): string {
  const step = Math.round((90 - degrees) / 45);
  return compass[((step % compass.length) + compass.length) % compass.length] ?? 'north';
}

function snapped(degrees: number): number {
  const quarter = Math.round(degrees / 90) * 90;
  return Math.abs(degrees - quarter) < 1e-6 ? quarter : degrees;
}

/** 0 along x, 90 along y: the longer extent of the largest region. */
function alongLonger(regions: readonly Region[]): number {
  const extents = regions.map(({ outline }) => {
    const xs = outline.map((point) => point.x);
    const ys = outline.map((point) => point.y);
    return { x: Math.max(...xs) - Math.min(...xs), y: Math.max(...ys) - Math.min(...ys) };
  });
  const largest = extents.reduce((best, extent) => (extent.x * extent.y > best.x * best.y ? extent : best), {
    x: 0,
    y: 0,
  });
  return largest.x >= largest.y ? 0 : 90;
}
