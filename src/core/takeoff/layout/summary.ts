import { feet, type Area, type Length } from '../../../base/units/index.js';
import type { Cut, LaidSurface, LayoutSummary } from '../takeoff.js';
import { inSixteenths, isRipped } from './courses.js';
import type { Layout } from './layout.js';

/** What is said of a plane beside its courses; the planes stand in the order of the layout's. */
export type NamedPlane = Pick<LaidSurface, 'place' | 'name' | 'facet' | 'direction' | 'run' | 'startsAt'>;

/** What a take-off keeps of a layout. With several surfaces, the narrowest of their first and of their last courses. */
export function summarize(
  layout: Layout,
  { lay, orderBy }: Pick<LayoutSummary, 'lay' | 'orderBy'>,
  planes: readonly NamedPlane[],
): LayoutSummary {
  const { first, last } = endWidths(layout);
  const { face, stock, waste, bought, bound, gap, courses, departures, surface } = layout;
  return {
    lay,
    orderBy,
    face,
    courses: courses.length,
    firstCourse: Math.min(...(first.length > 0 ? first : [0])) as Length,
    lastCourse: Math.min(...(last.length > 0 ? last : [0])) as Length,
    stock,
    waste,
    surface: {
      bought: squareFeet(surface.bought),
      covered: squareFeet(surface.covered),
      cutAway: squareFeet(surface.cutAway),
      strips: squareFeet(surface.strips),
      ends: squareFeet(surface.ends),
      endTrim: squareFeet(surface.endTrim),
      sawCuts: squareFeet(surface.sawCuts),
    },
    bought,
    bound,
    gap,
    cuts: cutsOf(layout),
    surfaces: planes.flatMap((plane, index) => laidSurface(layout, plane, index)),
    departures: departures.map(({ course, words }) => {
      const name = planes[courses[course]?.region ?? -1]?.name;
      return name === undefined ? words : `${name}, ${words}`;
    }),
  };
}

/** What a float says of nothing, such as half a millionth too little, is nothing. */
function squareFeet(area: number): Area {
  const foot = 1 / feet(1 as Length);
  const value = area / foot / foot;
  return (Math.abs(value) < 1e-6 ? 0 : value) as Area;
}

function laidSurface(layout: Layout, plane: NamedPlane, index: number): LaidSurface[] {
  const courses = layout.courses.filter((course) => course.region === index);
  const start = layout.startLines.find((line) => line.region === index);
  const [first, last] = [courses.at(0), courses.at(-1)];
  if (!first || !last || !start) return [];
  return [
    {
      ...plane,
      courses: courses.length,
      firstCourse: first.width,
      lastCourse: last.width,
      edge: first.offset,
      startLine: { from: start.from, to: start.to },
      joints: courses.map(({ pieces }) =>
        pieces.flatMap(({ start: at }, i) => (i > 0 && pieces[i - 1]?.end === at ? [at] : [])),
      ),
    },
  ];
}

/** Pieces alike to the nearest 1/16 inch are one line. */
function cutsOf({ boards, face }: Layout): readonly Cut[] {
  const counts = new Map<string, Cut & { count: number }>();
  for (const { length: from, pieces } of boards) {
    for (const piece of pieces) {
      const length = inSixteenths(piece.length);
      const width = isRipped(piece.width, face) ? inSixteenths(piece.width) : undefined;
      const key = `${from} ${length} ${width ?? ''}`;
      const cut = counts.get(key) ?? { length, ...(width !== undefined && { width }), from, count: 0 };
      cut.count += 1;
      counts.set(key, cut);
    }
  }
  return [...counts.values()].sort(
    (a, b) => b.from - a.from || b.length - a.length || (b.width ?? face) - (a.width ?? face),
  );
}

function endWidths({ courses }: Layout): { first: readonly Length[]; last: readonly Length[] } {
  const first = courses.filter((course) => course.number === 1);
  const last = courses.filter((course, i) => (courses[i + 1]?.number ?? 1) === 1);
  return { first: first.map(({ width }) => width), last: last.map(({ width }) => width) };
}
