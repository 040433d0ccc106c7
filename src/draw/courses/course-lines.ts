import type { DrawnCourses } from '../../core/book/index.js';
import { fromFrame } from '../../core/takeoff/layout/index.js';
import type { LaidSurface } from '../../core/takeoff/index.js';
import type { Spot } from '../convex.js';
import { isInside, stretchesInside } from '../inside.js';
import { lengthText } from '../length-text.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';
import { counted } from '../../base/units/index.js';

/** A plane on the sheet: its outlines with holes, by the even-odd rule, and where places of its own frame lie. */
interface CoursePlane {
  readonly outlines: readonly (readonly Spot[])[];
  spot(point: { readonly x: number; readonly y: number }): Spot;
}

/** Points between courses under which they are drawn light. */
const closeCourses = 5;

/** Edges of courses, end joints, and the line to snap for the first course. Returns what writes its words once all lines
 *  stand; where it finds no place, it returns them for a note. `quiet`
 *  draws them lightly, under what else the plan shows. */
export function drawCourses(
  sheet: Sheet,
  plane: CoursePlane,
  surface: LaidSurface,
  face: number,
  quiet = false,
): () => string | undefined {
  const { outlines } = plane;
  const outer = outlines[0];
  const place = (along: number, across: number): Spot => plane.spot(fromFrame(surface.direction, { along, across }));
  const a = place(0, 0);
  const b = place(304_800_000, 0);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length < 1e-9 || !outer) return () => undefined;
  const direction: Spot = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const across = (offset: number): [Spot, Spot][] => stretchesInside(outlines, place(0, offset), direction);
  const edges = courseEdges(surface, face);
  // Near one another, lines as dark as dimensions would drown what is written.
  const color = quiet || face * sheet.perNanometre < closeCourses ? 'deep' : 'hair';
  edges.slice(1, -1).forEach((edge, index) => {
    if (index > 0) for (const stretch of across(edge)) sheet.polyline(stretch, { pen: 'hair', color, quiet: true });
  });
  surface.joints.forEach((joints, index) => {
    for (const at of joints) {
      const joint: [Spot, Spot] = [place(at, edges[index] ?? 0), place(at, edges[index + 1] ?? 0)];
      const middle: Spot = [(joint[0][0] + joint[1][0]) / 2, (joint[0][1] + joint[1][1]) / 2];
      if (outlines.every((outline, ring) => isInside(middle, outline) === (ring === 0)))
        sheet.polyline(joint, { pen: 'fine', color, quiet: true });
    }
  });
  if (surface.courses < 2) return () => undefined;
  const starts = across(edges[1] ?? 0);
  for (const start of starts) sheet.polyline(start, { pen: 'object', color: 'accent', layer: 'object' });
  const longest = [...starts].sort((one, other) => distance(other) - distance(one))[0];
  const words = `start line, ${lengthText(surface.firstCourse)} from ${surface.startsAt}`;
  return () => (!longest || writeStart(sheet, longest, words, outer) ? undefined : `${surface.name}: ${words}`);
}

/** Where courses begin and end, across them: all but the first and last are a face wide. */
export function courseEdges({ courses, edge, firstCourse, lastCourse }: LaidSurface, face: number): readonly number[] {
  const width = (index: number): number => (index === 0 ? firstCourse : index === courses - 1 ? lastCourse : face);
  const edges = [edge as number];
  for (let index = 0; index < courses; index += 1) edges.push((edges.at(-1) ?? 0) + width(index));
  return edges;
}

/** `Clear fir 1x6 in 68 courses, north-south`. */
export function courseNote({ product, surfaces }: DrawnCourses): string {
  const courses = surfaces.reduce((sum, surface) => sum + surface.courses, 0);
  const runs = [...new Set(surfaces.map(({ run }) => run))].join(' and ');
  return `${product} in ${counted(courses, 'course')}, ${runs}`;
}

function writeStart(sheet: Sheet, [from, to]: [Spot, Spot], words: string, outline: readonly Spot[]): boolean {
  const degrees = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  const turn = degrees > 89.9 ? degrees - 180 : degrees < -90.1 ? degrees + 180 : degrees;
  const radians = (turn * Math.PI) / 180;
  const spots = [0.5, 0.3, 0.7, 0.2, 0.8].flatMap((share) =>
    [-2.6, 8.4].map((drop): Spot => [
      from[0] + (to[0] - from[0]) * share - Math.sin(radians) * drop,
      from[1] + (to[1] - from[1]) * share + Math.cos(radians) * drop,
    ]),
  );
  const look = { size: sizes.note, color: 'accent', turn, ground: 'paper' } as const;
  const inside = spots.filter((spot) => sheet.textBox(spot, words, look).every((corner) => isInside(corner, outline)));
  return sheet.tryWrite(inside, words, look);
}

function distance([a, b]: [Spot, Spot]): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}
