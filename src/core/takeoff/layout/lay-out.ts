import { locale, remember, type Length, type Shelf } from '../../../base/units/index.js';
import { stockOf } from '../stock.js';
import { courseWidths, isRipped } from './courses.js';
import { departuresOf } from './departures.js';
import { shapeArea, toFrame, type FrameShape } from './frame.js';
import type { Board, Course, LaidArea, Layout, LayoutInput, StartLine } from './layout.js';
import { usualKerf } from './rules.js';
import { leastSum } from './search/bound.js';
import { makePlan } from './search/plan.js';
import type { Plan, Span, Task } from './search/task.js';
import { spansInBand, type Stretch } from './spans.js';

export type LayOut = (input: LayoutInput) => Layout;

/** Lays boards or sheets on surfaces, course by course, and says what to buy. Deterministic. The result says why nothing
 *  was laid when there is no stock, no face or no surface; a rule that cannot be kept somewhere is listed as departure. */
export function layOut(input: LayoutInput): Layout {
  const notLaid = refusal(input);
  const { endTrim = 0 } = input;
  const sold = [...new Set<number>(input.stock)].filter((length) => length > endTrim).sort((a, b) => b - a);
  const stock = sold.map((length) => length - endTrim);
  const groups = notLaid === undefined ? groupsOf(input) : [];
  const bands = groups.flatMap((group, index) => bandsOfGroup(group, index, input.face, input.rules));
  const task = taskOf(input, bands, stock);
  const needed = neededLength(task);
  const plan = makePlan(task, leastSum(stock, needed));
  const bound = leastSum(sold, needed + endTrim * Math.ceil(needed / (stock[0] ?? 1)));
  const bought = plan.bought + endTrim * plan.boards.length;
  const courses = coursesOf(bands, task, plan);
  const covered = groups.flat().reduce((sum, shape) => sum + shapeArea(shape), 0);
  return {
    direction: input.direction,
    face: input.face,
    kerf: task.kerf as Length,
    courses,
    boards: boardsOf(plan, task, courses, endTrim),
    stock: stockOf(plan.boards.map((length) => (length + endTrim) as Length)),
    startLines: startLines(bands),
    needed: needed as Length,
    bought: bought as Length,
    waste: bought > 0 ? 1 - covered / (bought * input.face) : 0,
    surface: surfaceOf(plan, task, covered, endTrim),
    bound: bound as Length,
    gap: bound > 0 ? bought / bound - 1 : 0,
    departures: departuresOf(task, courses, plan),
    ...(notLaid === undefined ? {} : { notLaid }),
  };
}

/** Lays out as `layOut` does; the same surfaces in the same stock are laid once, whatever house they are in, and not at all where the shelf has them. */
export function keptLayouts(shelf?: Shelf<Layout>): LayOut {
  const known = new Map<string, Layout>();
  return (input) => {
    const key = JSON.stringify([locale().units, input]);
    return remember(known, key, () => remember(shelf, key, () => layOut(input)));
  };
}

function refusal({ regions, stock, face, endTrim = 0 as Length }: LayoutInput): string | undefined {
  if (!(face > 0)) return 'no face width is given';
  if (!stock.some((length) => length > 0)) return 'no stock length is given';
  if (!stock.some((length) => length > endTrim)) return 'nothing is left of any stock length once its ends are off';
  if (regions.every((region) => region.outline.length < 3)) return 'there is no surface';
  return undefined;
}

/** A course before boards are laid in it. */
interface Band {
  readonly region: number;
  readonly number: number;
  readonly offset: number;
  readonly width: number;
  readonly ripped: boolean;
  readonly stretches: readonly Stretch[];
  /** Low end of the region along the courses. */
  readonly origin: number;
  readonly edge: number;
}

/** Shapes that courses run through, in the frame of their courses. */
function groupsOf({ regions, direction, rules }: LayoutInput): readonly (readonly FrameShape[])[] {
  const groups: { plane: number | undefined; direction: number; shapes: FrameShape[] }[] = [];
  for (const region of regions) {
    const last = groups.at(-1);
    const joins = last && (region.plane === undefined ? rules.grid === 'through' : region.plane === last.plane);
    const group = joins ? last : { plane: region.plane, direction: region.direction ?? direction, shapes: [] };
    if (group !== last) groups.push(group);
    if (region.outline.length >= 3) group.shapes.push(toFrame(region, group.direction));
  }
  return groups.map(({ shapes }) => shapes);
}

function bandsOfGroup(
  group: readonly FrameShape[],
  region: number,
  face: number,
  rules: LayoutInput['rules'],
): readonly Band[] {
  const points = group.flat(2);
  if (points.length === 0) return [];
  const acrosses = points.map((point) => point.across);
  const edge = Math.min(...acrosses);
  const origin = Math.min(...points.map((point) => point.along));
  let offset = edge;
  return courseWidths(Math.max(...acrosses) - edge, face, rules).map((width, i) => {
    const stretches = spansInBand(group, offset, offset + width);
    const band = { region, number: i + 1, offset, width, ripped: isRipped(width, face), stretches, origin, edge };
    offset += width;
    return band;
  });
}

function taskOf(
  { face, kerf = usualKerf, rules }: LayoutInput,
  bands: readonly Band[],
  stock: readonly number[],
): Task {
  const spans = bands.flatMap((band, course): Span[] =>
    band.stretches.map(({ start, end }) => ({
      course,
      follows: band.number > 1,
      start,
      end,
      width: Math.min(band.width, face),
      framingAt: band.origin + (rules.framing?.from ?? 0),
    })),
  );
  return {
    spans,
    stock,
    face,
    kerf,
    stagger: rules.stagger,
    leastPiece: rules.leastPiece,
    reuseOffcuts: rules.reuseOffcuts,
    reuseRips: rules.reuseRips,
    joinAny: rules.joints === 'any-span',
    ...(rules.framing ? { framing: rules.framing.spacing } : {}),
  };
}

/** Length of full boards that the spans take at least: all of it, unless strips are used; then the spans too wide to share a
 *  board with another, or all by their share of the width, whichever is more. */
function neededLength({ spans, face, kerf, reuseRips }: Task): number {
  const sumBy = (share: (width: number) => number): number =>
    spans.reduce((sum, { start, end, width }) => sum + (end - start) * share(width), 0);
  if (!reuseRips) return sumBy(() => 1);
  const byArea = Math.ceil(sumBy((width) => width / face) - 1e-3);
  return Math.max(
    byArea,
    sumBy((width) => (2 * width + kerf > face ? 1 : 0)),
  );
}

function coursesOf(bands: readonly Band[], { spans }: Task, plan: Plan): readonly Course[] {
  const pieces = bands.map((): Course['pieces'][number][] => []);
  for (const { span, start, end, board } of plan.pieces) {
    pieces[spans[span]?.course ?? 0]?.push({ start: start as Length, end: end as Length, board });
  }
  return bands.map(({ region, number, offset, width, ripped }, i) => ({
    region,
    number,
    offset: offset as Length,
    width: width as Length,
    ripped,
    pieces: pieces[i] ?? [],
  }));
}

/** Boards as bought: what is laid lies between the two ends that come off. */
function boardsOf(plan: Plan, { spans }: Task, courses: readonly Course[], endTrim: number): readonly Board[] {
  const head = Math.floor(endTrim / 2);
  const boards = plan.boards.map((usable) => ({
    length: (usable + endTrim) as Length,
    pieces: [] as Board['pieces'][number][],
    offcuts: [] as Board['offcuts'][number][],
  }));
  const counts = courses.map(() => 0);
  for (const { span, start, end, board, spot } of plan.pieces) {
    const { course, width } = spans[span] ?? { course: 0, width: 0 };
    const piece = counts[course] ?? 0;
    counts[course] = piece + 1;
    const along = head + spot.along;
    boards[board]?.pieces.push({ course, piece, ...part({ ...spot, along, length: end - start, width }) });
  }
  for (const offcut of plan.offcuts)
    boards[offcut.board]?.offcuts.push(part({ ...offcut, along: head + offcut.along }));
  return boards;
}

function surfaceOf(plan: Plan, { spans, face }: Task, covered: number, endTrim: number): LaidArea {
  const laid = plan.pieces.reduce((sum, { span, start, end }) => sum + (end - start) * (spans[span]?.width ?? 0), 0);
  const left = (ofWidth: (width: number) => boolean): number =>
    plan.offcuts.reduce((sum, { length, width }) => (ofWidth(width) ? sum + length * width : sum), 0);
  const [strips, ends] = [left((width) => isRipped(width, face)), left((width) => !isRipped(width, face))];
  const trim = endTrim * plan.boards.length * face;
  const bought = plan.bought * face + trim;
  const sawCuts = bought - laid - strips - ends - trim;
  return { bought, covered, cutAway: laid - covered, strips, ends, endTrim: trim, sawCuts };
}

function part({
  along,
  across,
  length,
  width,
}: Record<'along' | 'across' | 'length' | 'width', number>): Board['offcuts'][number] {
  return { along: along as Length, across: across as Length, length: length as Length, width: width as Length };
}

function startLines(bands: readonly Band[]): readonly StartLine[] {
  return bands
    .filter((band) => band.number === 1 && band.stretches.length > 0)
    .map(({ region, width, offset, stretches }) => ({
      region,
      distance: width as Length,
      across: (offset + width) as Length,
      from: (stretches[0]?.start ?? 0) as Length,
      to: (stretches.at(-1)?.end ?? 0) as Length,
    }));
}
