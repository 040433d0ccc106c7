import { printPitch } from '../../base/units/index.js';
import type { DrawnCourses, DrawnRoom } from '../../core/book/index.js';
import { floorArea, type RoomMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import type { DrawOptions, Drawing } from '../drawing.js';
import type { Title } from '../drawn-sheet.js';
import { fitDrawing } from '../issue.js';
import { areaWords, lengthText, levelText, wallWords } from '../length-text.js';
import { courseNote, drawCourses } from '../courses/course-lines.js';
import { drawMark, markSize } from '../mark.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';
import { textWidth } from '../text-width.js';
import { centered, drawFeature, readable } from './feature-symbol.js';
import { drawOpening, drawOpeningAbove, swingsInward } from './opening-symbol.js';
import { drawPoche } from './poche.js';
import type { LetteredSection } from '../section/index.js';
import { drawRoomLabel } from './room-label.js';
import { drawSectionMarks } from './section-mark.js';
import { drawAlignedStrings, drawSideStrings } from './strings.js';
import { drawLevels } from './levels.js';
import { drawVoid } from './void.js';
import { planSpan } from './span.js';
import { faceSpots, planeHeight, wallLines, type WallLine } from './wall-line.js';

interface PlanOptions extends DrawOptions {
  readonly number: string;
  readonly name: string;
  /** Slug to name of the rooms that this one opens to. */
  readonly neighbours?: ReadonlyMap<string, string>;
  /** Boards as laid out on the floor. */
  readonly courses?: DrawnCourses;
  /** Posts along open edges, by the edge's id. */
  readonly posts?: DrawnRoom['posts'];
  /** Cuts whose ends it marks. */
  readonly sections?: readonly LetteredSection[];
  /** Where a section shows what a plan can't, by feature: `section A`. */
  readonly shownIn?: ReadonlyMap<string, string>;
}

/** The plan of a room: cut walls, openings, features, voids, dimensions to the inside faces. */
export function drawPlan(measure: RoomMeasure, options: PlanOptions): Drawing {
  const { number, name, courses, posts = new Map(), sections = [], shownIn = new Map<string, string>() } = options;
  const neighbours = neighboursOf(measure, options.neighbours);
  const shows = { number, name, neighbours, courses, posts, sections, shownIn };
  const title = { title: `Plan – ${number} ${name}`, description: describe(measure, name, neighbours), north: 0 };
  const draw = (sheet: Sheet): Title => {
    const lines = wallLines(sheet, measure);
    drawPoche(sheet, lines);
    const notes = ['Dimensions to inside faces; wall thickness as drawn'];
    const labels: (() => void)[] = [];
    const starts = courses ? drawFloorCourses(sheet, measure, courses) : [];
    if (courses) notes.push(`Floor: ${courseNote(courses)}`);
    for (const line of lines) {
      if (line.isOpen) sheet.polyline(faceSpots(line, 0, line.length), { pen: 'fine', dash: 'open', color: 'ink' });
      for (const opening of line.openings) drawOpening(sheet, line, opening, measure.room);
      for (const opening of line.above) drawOpeningAbove(sheet, line, opening);
    }
    if (lines.some((line) => line.above.length > 0))
      notes.push(`Dashed on walls: openings above ${lengthText(planeHeight)}`);
    labels.push(...drawLevels(sheet, measure));
    for (const feature of measure.features) {
      for (const { label, note } of drawFeature({
        sheet,
        measure,
        feature,
        lines,
        posts: posts.get(feature.id) ?? [],
        shownIn: shownIn.get(feature.id),
      })) {
        if (label !== undefined) labels.push(label);
        if (note !== undefined) notes.push(note);
      }
    }
    const labelVoids = measure.voids.map(({ outline }) =>
      drawVoid(
        sheet,
        outline.map((point) => sheet.spot(point)),
        'open to below',
      ),
    );
    const unmarked = drawMarks(sheet, lines, measure.room);
    labelVoids.forEach((label) => label());
    // The name of the room stands on its floor.
    measure.voids.forEach(({ outline }) => sheet.reserve(extent(outline.map((point) => sheet.spot(point)))));
    labels.forEach((label) => label());
    drawRoomLabel(sheet, measure, { number, name });
    notes.push(...new Set(starts.flatMap((start) => start() ?? [])));
    drawNeighbours(sheet, lines, neighbours);
    drawSectionMarks(sheet, measure, lines, sections);
    drawAlignedStrings(sheet, lines);
    drawSideStrings(sheet, measure, lines);
    if (unmarked.length > 0) notes.push(`Not marked for want of space: ${unmarked.join(', ')}`);
    return { ...title, notes };
  };
  const span = planSpan(measure);
  return fitDrawing({ of: measure, view: 'plan', shows, largest: 24, span, draw }, options);
}

/** The box around an outline. */
function extent(outline: readonly Spot[]): readonly Spot[] {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

/** Those of the rooms that this one has a way or an opening to. */
function neighboursOf({ walls, openings }: RoomMeasure, names: PlanOptions['neighbours']): ReadonlyMap<string, string> {
  const near = [...walls.map(({ openTo }) => openTo), ...openings.map(({ to }) => to)];
  return new Map(
    near.flatMap((slug) => {
      const name = slug === undefined ? undefined : names?.get(slug);
      return slug === undefined || name === undefined ? [] : [[slug, name] as const];
    }),
  );
}

/** Course lines where the floor is, hearth, stair and built-ins left out. */
function drawFloorCourses(
  sheet: Sheet,
  measure: RoomMeasure,
  { surfaces, face }: DrawnCourses,
): (() => string | undefined)[] {
  return surfaces.flatMap((surface) =>
    levelRegions(measure).map(({ outline, holes }) => {
      const outlines = [outline, ...holes].map((ring) => ring.map((point) => sheet.spot(point)));
      return drawCourses(sheet, { outlines, spot: (point) => sheet.spot(point) }, surface, face, true);
    }),
  );
}

/** What of the floor lies as the plan shows it; a ramp is longer than that. */
function levelRegions({ floor }: RoomMeasure): RoomMeasure['floor']['regions'] {
  if (!floor.levels) return floor.regions;
  return floor.levels.filter(({ slope }) => slope === 0).map(({ plan }) => plan);
}

/** A mark stands on the side of the wall where no leaf swings. Returns those that found no place. */
function drawMarks(sheet: Sheet, lines: readonly WallLine[], room: string): string[] {
  const unmarked: string[] = [];
  for (const line of lines) {
    for (const opening of [...line.openings, ...line.above]) {
      const middle = (opening.at + opening.width / 2) * sheet.perNanometre;
      const { halfWidth, halfHeight } = markSize(opening.mark);
      // Half the mark's extent across the wall, however the wall runs.
      const reach = Math.abs(line.outward[0]) * halfWidth + Math.abs(line.outward[1]) * halfHeight;
      const outside = [0, 14, -14, 28, -28].map((shift): Spot => line.at(middle + shift, line.thickness + 6 + reach));
      const inside = [0, 14, -14].map((shift): Spot => line.at(middle + shift, -5 - reach));
      const isInward = line.above.includes(opening)
        ? line.openings.length === 0
        : opening.kind !== 'door' ||
          opening.operation === 'pocket' ||
          opening.operation === 'sliding' ||
          swingsInward(opening, room);
      const places = isInward ? [...outside, ...inside] : [...inside, ...outside];
      if (!drawMark(sheet, places, opening.mark)) unmarked.push(opening.mark);
    }
  }
  return unmarked;
}

/** Names of the rooms behind openings and open edges, outside of the wall and along it. */
function drawNeighbours(sheet: Sheet, lines: readonly WallLine[], neighbours: ReadonlyMap<string, string>): void {
  const look = { size: sizes.note, color: 'muted' } as const;
  for (const line of lines) {
    const turn = readable(line.along);
    // Level with the mark first, beside it; further out only when that is taken.
    const beyond = (middle: number, from: number, words: string): Spot[] => {
      const beside = textWidth(words, sizes.note) / 2 + 19;
      return [0, 9, 18].flatMap((out) =>
        [0, beside, -beside, 12, -12].map((shift) => centered(line.at(middle + shift, from + out), turn)),
      );
    };
    const openTo = line.wall.openTo;
    if (openTo !== undefined) {
      const words = `open to ${neighbours.get(openTo) ?? openTo}`;
      sheet.tryWrite(beyond(line.length / 2, 8, words), words, { ...look, turn });
    }
    for (const opening of line.openings) {
      const name = neighbours.get(opening.to);
      if (name === undefined || opening.kind === 'window') continue;
      const middle = (opening.at + opening.width / 2) * sheet.perNanometre;
      sheet.tryWrite(beyond(middle, line.thickness + 9, name), name, { ...look, turn });
    }
  }
}

function levelsWords({ floor }: RoomMeasure): readonly string[] {
  const parts = (floor.levels ?? []).filter(({ height, slope }) => height !== 0 || slope !== 0);
  if (parts.length === 0) return [];
  const words = parts.map(({ name, height, slope }) =>
    slope === 0 ? `${name} ${levelText(height)}` : `${name} from ${levelText(height)}, sloping ${printPitch(slope)}`,
  );
  return [`Beside the rest of the floor: ${words.join('; ')}.`];
}

function describe(measure: RoomMeasure, name: string, neighbours: ReadonlyMap<string, string>): string {
  const walls = measure.walls.map(
    (wall) =>
      `${wall.id} ${lengthText(wall.run)}${wallWords(wall)}${wall.openTo === undefined ? '' : ` (open to ${neighbours.get(wall.openTo) ?? wall.openTo})`}`,
  );
  const openings = measure.openings.map(
    (opening) => `${opening.mark}, a ${opening.kind} ${lengthText(opening.width)} wide in the ${opening.wall} wall`,
  );
  const features = measure.features.map((feature) => feature.name);
  const parts = [
    `Floor plan of ${name}, ${areaWords(floorArea(measure.floor))}, seen from above with north up.`,
    `Walls: ${walls.join(', ')}.`,
    openings.length > 0 ? `Openings: ${openings.join('; ')}.` : '',
    features.length > 0 ? `Features: ${features.join(', ')}.` : '',
    measure.voids.length > 0 ? `${measure.voids.length} open to below.` : '',
    ...levelsWords(measure),
  ];
  return parts.filter((part) => part !== '').join(' ');
}
