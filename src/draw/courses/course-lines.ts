import type { CeilingFacet } from '../../model/index.js';
import { fromFrame } from '../../takeoff/layout/index.js';
import type { Layout } from '../../takeoff/layout/index.js';
import type { Spot } from '../convex.js';
import { isInside, stretchesInside } from '../inside.js';
import { lengthText } from '../length-text.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';

/** What of a layout is drawn; its regions are the ceiling's facets in order. */
export type CourseLayout = Pick<Layout, 'direction' | 'courses' | 'startLines'>;

/** Edges of courses, end joints, and the line to snap for the first course. Returns what writes its words. */
export function drawCourses(sheet: Sheet, facets: readonly CeilingFacet[], layout: CourseLayout): () => void {
  const starts: { from: Spot; to: Spot; distance: number; outline: readonly Spot[] }[] = [];
  facets.forEach((facet, index) => {
    const outlines = [facet.plan.outline, ...facet.plan.holes].map((ring) => ring.map((point) => sheet.spot(point)));
    const place = (along: number, across: number): Spot =>
      sheet.spot(onPlan(facet, fromFrame(layout.direction, { along, across })));
    const across = (offset: number, heavy: boolean): [Spot, Spot][] => {
      const a = place(0, offset);
      const b = place(304_800_000, offset);
      const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      if (length < 1e-9) return [];
      const found = stretchesInside(outlines, a, [(b[0] - a[0]) / length, (b[1] - a[1]) / length]);
      for (const stretch of found)
        sheet.polyline(
          stretch,
          heavy ? { pen: 'object', color: 'accent', layer: 'object' } : { pen: 'hair', quiet: true },
        );
      return found;
    };
    for (const course of layout.courses) {
      if (course.region !== index) continue;
      if (course.number > 1) across(course.offset, false);
      for (const piece of course.pieces.slice(1)) {
        const joint: [Spot, Spot] = [
          place(piece.start, course.offset),
          place(piece.start, course.offset + course.width),
        ];
        const middle: Spot = [(joint[0][0] + joint[1][0]) / 2, (joint[0][1] + joint[1][1]) / 2];
        if (outlines.every((outline, ring) => isInside(middle, outline) === (ring === 0)))
          sheet.polyline(joint, { pen: 'fine', color: 'hair', quiet: true });
      }
    }
    for (const start of layout.startLines) {
      if (start.region !== index) continue;
      const longest = across(start.across, true).sort((a, b) => distance(b) - distance(a))[0];
      if (longest !== undefined)
        starts.push({ from: longest[0], to: longest[1], distance: start.distance, outline: outlines[0]! });
    }
  });
  return () => {
    for (const { from, to, distance: width, outline } of starts)
      writeStart(sheet, from, to, `start line, ${lengthText(width)} from edge`, outline);
  };
}

/** Where a place of the unfolded facet lies on the plan; the inverse of the unfolding in src/geometry. */
export function onPlan(
  facet: CeilingFacet,
  { x, y }: { readonly x: number; readonly y: number },
): { x: number; y: number } {
  if (facet.slope === 0) return { x, y };
  const turn = (facet.riseDirection * Math.PI) / 180;
  const up = { x: Math.cos(turn), y: Math.sin(turn) };
  const level = y / Math.hypot(1, facet.slope);
  return { x: up.y * x + up.x * level, y: -up.x * x + up.y * level };
}

function writeStart(sheet: Sheet, from: Spot, to: Spot, words: string, outline: readonly Spot[]): void {
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
  sheet.tryWrite(inside, words, look);
}

function distance([a, b]: [Spot, Spot]): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}
