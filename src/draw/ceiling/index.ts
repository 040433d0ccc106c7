import { printPitch } from '../../base/units/index.js';
import type { DrawnCourses } from '../../core/book/index.js';
import { planMarks, skylightOf, type OverheadMark } from '../../core/feature/index.js';
import type { CeilingFacet, FeatureMeasure, RoomMeasure, WallMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import type { DrawOptions, Drawing } from '../drawing.js';
import type { Title } from '../drawn-sheet.js';
import { spotsInside } from '../inside.js';
import { fitDrawing } from '../issue.js';
import { drawRise } from '../rise-arrow.js';
import { areaWords, lengthText } from '../length-text.js';
import { sizes } from '../pen.js';
import { centered, between, readable } from '../plan/feature-symbol.js';
import { drawPoche } from '../plan/poche.js';
import { planSpan } from '../plan/span.js';
import { drawAlignedStrings, drawSideStrings } from '../plan/strings.js';
import { drawVoid } from '../plan/void.js';
import { faceSpots, wallLines, type WallLine } from '../plan/wall-line.js';
import { courseNote, drawCourses } from '../courses/course-lines.js';
import type { Sheet } from '../sheet.js';
import { timberLines, timberNote } from '../timber-lines.js';
import { onPlan } from './on-plan.js';
import { seamsOf, type Seam } from './seam.js';

interface CeilingPlanOptions extends DrawOptions {
  readonly number: string;
  readonly name: string;
  /** Boards or sheets as laid out on the ceiling. */
  readonly courses?: DrawnCourses;
  /** Where a section shows what a plan can't, by feature: `section A`. */
  readonly shownIn?: ReadonlyMap<string, string>;
}

/** The ceiling as if the floor were a mirror: planes with their slopes, seams, heights above the floor, timbers, courses. */
export function drawCeilingPlan(measure: RoomMeasure, options: CeilingPlanOptions): Drawing {
  const { number, name, courses, shownIn = new Map<string, string>() } = options;
  const title = {
    title: `Reflected ceiling plan – ${number} ${name}`,
    description: describe(measure, name, courses),
    north: 0,
    notes: ['Heights above the finished floor; arrows point up the slope'],
  };
  const draw = (sheet: Sheet): Title => {
    const lines = wallLines(sheet, measure).map((line) => ({ ...line, openings: [], above: [] }));
    drawPoche(sheet, lines);
    for (const line of lines)
      if (line.isOpen) sheet.polyline(faceSpots(line, 0, line.length), { pen: 'fine', dash: 'open', color: 'ink' });
    const { facets } = measure.ceiling;
    const labels: (() => void)[] = [];
    const starts: (() => string | undefined)[] = [];
    const notes = [...title.notes];
    if (courses !== undefined) {
      starts.push(...drawFacetCourses(sheet, facets, courses));
      notes.push(courseNote(courses));
    }
    const seams = seamsOf(facets);
    seams.forEach((seam) => drawSeam(sheet, seam));
    const leaning = measure.walls.flatMap((wall) => (wall.lean?.plan ?? []).map(({ outline }) => outline));
    for (const outline of leaning) {
      const spots = outline.map((point) => sheet.spot(point));
      sheet.polygon(spots, { pen: 'object', fill: 'deep', layer: 'fill' });
      const places = spotsInside(spots, 8).map(([x, y]): Spot => [x, y + 2.5]);
      labels.push(() => sheet.tryWrite(places, 'wall leans', { size: sizes.note, color: 'muted' }));
    }
    for (const feature of measure.features) {
      for (const mark of planMarks(feature)) {
        if (mark.role !== 'overhead') continue;
        const label = drawOverhead({ sheet, measure, feature }, mark);
        if (label === undefined) notes.push(timberNote(feature, mark, shownIn.get(feature.id)));
        else labels.push(label);
      }
    }
    for (const feature of measure.features) {
      if (feature.overhead === undefined) continue;
      const outline = feature.overhead.map((point) => sheet.spot(point));
      sheet.polygon(outline, { pen: 'object', fill: 'deep', layer: 'object' });
      const places = spotsInside(outline, 8).map(([x, y]): Spot => [x, y + 2.5]);
      sheet.tryWrite(places.slice(0, 9), feature.name, { size: sizes.note, color: 'muted' });
      sheet.reserve(outline);
    }
    const skylights = measure.features.flatMap((feature) => drawSkylight(sheet, feature) ?? []);
    const openAbove = measure.voids.filter(({ isOpenAbove }) => isOpenAbove);
    const voids = openAbove.map(({ outline }) =>
      drawVoid(
        sheet,
        outline.map((point) => sheet.spot(point)),
        'open above',
      ),
    );
    for (const facet of facets) labelFacet(sheet, facet);
    labelSeams(sheet, seams);
    labelEaves(sheet, measure, lines);
    voids.forEach((label) => label());
    notes.push(...skylights.flatMap((label) => label() ?? []));
    notes.push(...starts.flatMap((start) => start() ?? []));
    labels.forEach((label) => label());
    drawAlignedStrings(sheet, lines);
    drawSideStrings(sheet, measure, lines);
    return { ...title, notes };
  };
  const shows = { number, name, courses, shownIn };
  const span = planSpan(measure);
  return fitDrawing({ of: measure, view: 'ceiling', shows, largest: 24, span, draw }, options);
}

/** A hole in the ceiling, crossed as the sky is. Its words come later, and are a note where there is no room for them. */
function drawSkylight(sheet: Sheet, feature: FeatureMeasure): (() => string | undefined) | undefined {
  const data = skylightOf(feature);
  if (!data || !feature.opensCeiling) return undefined;
  const outline = feature.opensCeiling.map((point) => sheet.spot(point)) as [Spot, Spot, Spot, Spot];
  sheet.polygon(outline, { pen: 'object', fill: 'glass', layer: 'object' });
  const [first, second, third, fourth] = outline;
  for (const ends of [
    [first, third],
    [second, fourth],
  ])
    sheet.polyline(ends, { pen: 'hair', dash: 'hidden', layer: 'object', quiet: true });
  sheet.reserve(outline);
  const middle = between(first, third, 0.5);
  const reach = Math.max(...outline.map(([, y]) => Math.abs(y - middle[1])));
  const words = `${feature.name}, ${lengthText(data.width)} × ${lengthText(data.length)}`;
  return () => {
    const spots = [reach + 9, -reach - 4, reach + 18, -reach - 13].map((drop): Spot => [middle[0], middle[1] + drop]);
    return sheet.tryWrite(spots, words, { size: sizes.note, color: 'muted', ground: 'paper' }) ? undefined : words;
  };
}

function drawSeam(sheet: Sheet, { a, b, kind }: Seam): void {
  const ends = [sheet.spot(a), sheet.spot(b)];
  if (kind === 'valley') sheet.polyline(ends, { pen: 'object', dash: 'hidden', layer: 'object' });
  else sheet.polyline(ends, { pen: kind === 'break' ? 'fine' : 'object', layer: 'object' });
}

function drawOverhead(
  { sheet, measure, feature }: { sheet: Sheet; measure: RoomMeasure; feature: FeatureMeasure },
  mark: OverheadMark,
): (() => void) | undefined {
  const lines = timberLines(sheet, measure, mark);
  if (lines.length === 0) return undefined;
  for (const { corners } of lines) sheet.polygon(corners, { pen: 'fine', fill: 'tone', layer: 'object' });
  return () => {
    const middle = lines[Math.floor((lines.length - 1) / 2)]?.line;
    if (middle === undefined) return;
    const turn = readable([middle[1][0] - middle[0][0], middle[1][1] - middle[0][1]]);
    const spots = [0.2, 0.8, 0.3, 0.7, 0.1].map((share) => centered(between(middle[0], middle[1], share), turn));
    sheet.tryWrite(spots, feature.name, { size: sizes.note, color: 'muted', turn, ground: 'tone' });
  };
}

/** Courses as the plan shows them: narrower on a slope than they are. */
function drawFacetCourses(
  sheet: Sheet,
  facets: readonly CeilingFacet[],
  { surfaces, face }: DrawnCourses,
): (() => string | undefined)[] {
  return surfaces.flatMap((surface) => {
    const facet = facets[surface.facet ?? -1];
    if (!facet) return [];
    const outlines = [facet.plan.outline, ...facet.plan.holes].map((ring) => ring.map((point) => sheet.spot(point)));
    return drawCourses(sheet, { outlines, spot: (point) => sheet.spot(onPlan(facet, point)) }, surface, face);
  });
}

/** An arrow up the slope with its pitch, or the height of a flat. */
function labelFacet(sheet: Sheet, facet: CeilingFacet): void {
  const outline = facet.plan.outline.map((point) => sheet.spot(point));
  const spots = spotsInside(outline, 18);
  if (facet.slope === 0) {
    const words = `flat ${lengthText(facet.highest)}`;
    sheet.tryWrite(
      spots.map(([x, y]): Spot => [x, y + 2.5]),
      words,
      { size: sizes.dimension, ground: 'paper' },
      4,
    );
    return;
  }
  if (drawRise(sheet, facet, outline, spots)) return;
  sheet.tryWrite(spots, printPitch(facet.slope), { size: sizes.note, color: 'accent', ground: 'paper' });
}

function labelSeams(sheet: Sheet, seams: readonly Seam[]): void {
  for (const { a, b, kind, heights } of seams) {
    if (kind === 'break' || kind === 'step') continue;
    const ends = [sheet.spot(a), sheet.spot(b)] as const;
    const turn = readable([ends[1][0] - ends[0][0], ends[1][1] - ends[0][1]]);
    const isLevel = Math.abs(heights[0] - heights[1]) < 1_600_000;
    const words = isLevel ? `${kind} ${lengthText(heights[0])}` : kind;
    const length = Math.hypot(ends[1][0] - ends[0][0], ends[1][1] - ends[0][1]);
    if (sheet.textBox([0, 0], words, { size: sizes.note })[1]![0] * 2 > length * 0.8) continue;
    const radians = (turn * Math.PI) / 180;
    const spots = [0.5, 0.3, 0.7, 0.2, 0.8].flatMap((share) => {
      const [x, y] = between(ends[0], ends[1], share);
      return [-2.5, 8.2].map((drop): Spot => [x - Math.sin(radians) * drop, y + Math.cos(radians) * drop]);
    });
    sheet.tryWrite(spots, words, { size: sizes.note, turn, ground: 'paper' });
  }
}

/** Height of the ceiling along level wall tops, just inside the wall. */
function labelEaves(sheet: Sheet, measure: RoomMeasure, lines: readonly WallLine<WallMeasure>[]): void {
  if (measure.ceiling.facets.length === 1 && measure.ceiling.facets[0]!.slope === 0) return;
  for (const line of lines) {
    const tops = line.wall.top;
    for (let index = 0; index + 1 < tops.length; index++) {
      const a = tops[index]!;
      const b = tops[index + 1]!;
      const width = (b.along - a.along) * sheet.perNanometre;
      if (Math.abs(a.height - b.height) > 1_600_000 || width < 40) continue;
      const turn = readable(line.along);
      const middle = ((a.along + b.along) / 2) * sheet.perNanometre;
      const spots = [0, -0.22, 0.22, -0.36, 0.36].map((shift) => centered(line.at(middle + width * shift, -7.5), turn));
      sheet.tryWrite(spots, lengthText(a.height), { size: sizes.note, turn, ground: 'paper' });
    }
  }
}

function skylightWords(features: RoomMeasure['features']): string {
  const sizes = features.flatMap((feature) => {
    const data = skylightOf(feature);
    return data ? [`${feature.name}, ${lengthText(data.width)} by ${lengthText(data.length)}`] : [];
  });
  return sizes.length === 0 ? '' : ` Skylights: ${sizes.join('; ')}.`;
}

function describe(measure: RoomMeasure, name: string, courses: DrawnCourses | undefined): string {
  const facets = measure.ceiling.facets.map((facet) =>
    facet.slope === 0 ? `${facet.name}, flat` : `${facet.name}, sloping ${printPitch(facet.slope)}`,
  );
  const [low, high] = [lengthText(measure.lowest), lengthText(measure.highest)];
  return `Reflected ceiling plan of ${name}: ${facets.join('; ')}. ${low === high ? `Height ${low}` : `Heights from ${low} to ${high}`}. True area ${areaWords(measure.ceiling.gross)}.${skylightWords(measure.features)}${courseWords(courses)}`;
}

function courseWords(layout: DrawnCourses | undefined): string {
  if (!layout) return '';
  const starts = layout.surfaces.map(
    ({ name, courses, firstCourse, startsAt }) =>
      `${name}: ${courses}, the first ${lengthText(firstCourse)} wide from ${startsAt}`,
  );
  return ` ${courseNote(layout)}. ${starts.join('; ')}.`;
}
