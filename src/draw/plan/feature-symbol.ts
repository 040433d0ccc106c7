import {
  planMarks,
  type BesideWall,
  type EdgeLine,
  type OverheadMark,
  type PlanMark,
  type StandingMark,
} from '../../core/feature/index.js';
import type { FeatureMeasure, FloorVoid, RoomMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import type { DrawnPost } from '../../core/book/index.js';
import { lengthText } from '../length-text.js';
import type { Role } from '../palette.js';
import { sizes } from '../pen.js';
import type { Sheet, Stroke } from '../sheet.js';
import { timberLines, timberNote, type TimberedRoom, type TimberLine } from '../timber-lines.js';
import { lineThrough, planeHeight, type WallLine } from './wall-line.js';

/** What a symbol may know. */
interface Place {
  readonly sheet: Sheet;
  /** Of the feature. */
  readonly name: string;
  readonly lines: readonly WallLine[];
  /** Holes in the room's floor. */
  readonly voids: readonly Pick<FloorVoid, 'name' | 'sides'>[];
  /** Of the railing on it. */
  readonly posts: readonly DrawnPost[];
}

/** A feature where it stands. */
interface FeaturePlace extends Pick<Place, 'sheet' | 'lines' | 'posts'> {
  readonly measure: RoomMeasure;
  readonly feature: FeatureMeasure;
  /** The section that shows it. */
  readonly shownIn?: string | undefined;
}

/** Words for a symbol that wait until all lines stand, and a note for what has no place. */
interface Said {
  readonly label?: () => void;
  readonly note?: string;
}

type Mark<Role extends PlanMark['role']> = Extract<PlanMark, { readonly role: Role }>;

/** Draws a feature on the plan by what its kind shows of itself. */
export function drawFeature(place: FeaturePlace): readonly Said[] {
  const { sheet, lines, posts, measure, feature } = place;
  return planMarks(feature).map((mark) =>
    mark.role === 'overhead'
      ? overhead(place, mark)
      : drawMark({ sheet, name: feature.name, lines, voids: measure.voids, posts }, mark),
  );
}

/** Draws what stands on the floor or in a wall. */
export function drawMark(place: Place, mark: StandingMark): Said {
  switch (mark.role) {
    case 'body':
      return named(place, mark, { pen: 'object', fill: 'tone', layer: 'fill' });
    case 'low-wall':
      return named(place, mark, { pen: 'object', fill: 'deep', layer: 'object' });
    case 'slab':
      return beside(place, mark, { pen: 'fine', fill: 'tone', layer: 'fill' });
    case 'mass':
      return beside(place, mark, { pen: 'cut', fill: 'poche', layer: 'cut' });
    case 'hollow':
      return beside(place, mark, { pen: 'fine', fill: 'paper', layer: 'cut' });
    case 'recess':
      return recess(place, mark);
    case 'guard':
      return guard(place, mark);
    case 'flight':
      return flight(place, mark);
  }
}

function named(place: Place, { outline }: Mark<'body' | 'low-wall'>, stroke: Stroke): Said {
  const corners = outline.map((point) => place.sheet.spot(point));
  place.sheet.polygon(corners, stroke);
  return { label: () => writeNear(place, corners) };
}

function beside({ sheet, lines }: Place, { wall, outline }: Mark<'slab' | 'mass' | 'hollow'>, stroke: Stroke): Said {
  const line = lines.find((candidate) => candidate.wall.id === wall);
  const k = sheet.perNanometre;
  const spot = ({ along, out }: BesideWall): Spot[] => (line ? [line.at(along * k, -out * k)] : []);
  if (line) sheet.polygon(outline.flatMap(spot), stroke);
  return {};
}

/** How far a break line leans along a flight, of the flight's width, and its zigzag, of the same. */
const lean = { line: 0.3, zigzag: 0.16 };

/** Up to the plane of the plan as it is seen, behind a break line dashes; an arrow the way it goes up. */
function flight({ sheet }: Place, { outline, treads, risers, riser, foot: floor }: Mark<'flight'>): Said {
  const [a, b, c, d] = outline.map((point) => sheet.spot(point)) as [Spot, Spot, Spot, Spot];
  /** A place by its shares of the run, up, and of the width, to the right. */
  const at = (up: number, right: number): Spot => between(between(a, b, right), between(d, c, right), up);
  const length = Math.hypot(d[0] - a[0], d[1] - a[1]);
  const slope = Math.hypot(b[0] - a[0], b[1] - a[1]) / length;
  // The last tread under the plane is seen whole.
  const seen = Math.floor((planeHeight - floor) / riser) / treads;
  const isCut = seen > 0 && seen + slope * lean.line < 1;
  const breakAt = (right: number): number => (isCut ? seen + slope * lean.line * (right - 0.5) : 1);
  const zigzag: readonly Spot[] = [
    [0.44, 0],
    [0.47, 1],
    [0.53, -1],
    [0.56, 0],
  ].map(([right = 0, side = 0]) => at(breakAt(right) + side * slope * lean.zigzag, right));
  const top = [at(breakAt(0), 0), ...(isCut ? zigzag : []), at(breakAt(1), 1)];
  sheet.polygon([a, ...top, b], { pen: 'fine', fill: 'paper', layer: 'fill' });
  const sides = [at(breakAt(0), 0), a, b, at(breakAt(1), 1)];
  sheet.polyline(isCut ? sides : [...sides, sides[0]!], { pen: 'object', layer: 'fill' });
  for (let index = 1; index < treads; index++) {
    const up = index / treads;
    // Behind the break nothing is seen; where it leans over a nosing, the rest of that.
    const from = isCut ? Math.max(0, (up - breakAt(0)) / (breakAt(1) - breakAt(0))) : 0;
    if (from < 1) sheet.polyline([at(up, from), at(up, 1)], { pen: 'fine', color: 'hair' });
  }
  if (isCut)
    sheet.polyline([at(breakAt(0), 0), d, c, at(breakAt(1), 1)], { pen: 'fine', dash: 'hidden', layer: 'fill' });
  const foot = at(0, 0.5);
  const head = at(isCut ? seen - slope * lean.zigzag : 1, 0.5);
  const reach = Math.hypot(head[0] - foot[0], head[1] - foot[1]);
  const ahead: Spot = [(head[0] - foot[0]) / reach, (head[1] - foot[1]) / reach];
  const tip: Spot = [head[0] - ahead[0] * 3, head[1] - ahead[1] * 3];
  sheet.polyline([at(0.5 / treads, 0.5), tip], { pen: 'fine', color: 'accent', layer: 'object' });
  const barb = (side: number): Spot => [
    tip[0] - ahead[0] * 6 - ahead[1] * 2.6 * side,
    tip[1] - ahead[1] * 6 + ahead[0] * 2.6 * side,
  ];
  sheet.polygon([tip, barb(1), barb(-1)], { pen: 'fine', color: 'accent', fill: 'accent', layer: 'object' });
  const words = `UP ${risers} R`;
  const label = (): void => {
    // The words stand across the arrow, on a ground that hides the lines behind them.
    const spots = [0.22, 0.3, 0.4, 0.5, 0.6].map((share) => lowered(between(foot, head, share)));
    sheet.tryWrite(spots, words, { size: sizes.note, weight: 600, color: 'accent', ground: 'paper' }, 0.5);
  };
  return { label };
}

function guard(place: Place, { along, from, to, fall: drop }: Mark<'guard'>): Said {
  const { sheet, name } = place;
  const k = sheet.perNanometre;
  const line = edgeLine(place, along);
  const fall = `${name}: falls ${lengthText(drop)}`;
  if (line === undefined) return { note: fall };
  const [low, high] = [from * k, to * k];
  const inset = -1.75 * 25_400_000 * k * 1.5;
  for (const v of [inset - 1.1, inset + 1.1])
    sheet.polyline([line.at(low, v), line.at(high, v)], { pen: 'fine', color: 'accent', layer: 'object' });
  for (const { at } of place.posts.filter(({ isOwn }) => isOwn)) {
    const u = low + at * k;
    const half = 1.7;
    sheet.polygon(
      [
        line.at(u - half, inset - half),
        line.at(u + half, inset - half),
        line.at(u + half, inset + half),
        line.at(u - half, inset + half),
      ],
      {
        pen: 'fine',
        color: 'accent',
        fill: 'paper',
        layer: 'object',
      },
    );
  }
  const turn = readable(line.along);
  const label = (): void => {
    const middle = (low + high) / 2;
    const spots = [0, -0.2, 0.2, -0.35, 0.35].map((shift) =>
      centered(line.at(middle + (high - low) * shift, inset - 8), turn),
    );
    const look = { size: sizes.note, color: 'accent', turn, ground: 'paper' } as const;
    if (sheet.tryWrite(spots, fall, look)) return;
    sheet.tryWrite(spots, `falls ${lengthText(drop)}`, look);
  };
  return { label };
}

/** The side that an edge runs along: floor lies to its right, the fall to its left, for sides of the room and of holes alike. */
function edgeLine({ sheet, voids, lines }: Place, along: EdgeLine): Pick<WallLine, 'along' | 'at'> | undefined {
  if ('wall' in along) return lines.find(({ wall }) => wall.id === along.wall);
  const hole = voids.find(({ name }) => name === along.void);
  const side = hole?.sides.find(({ name }) => name === along.side);
  return side && lineThrough(sheet.spot(side.from), sheet.spot(side.to));
}

function recess({ sheet, name, lines }: Place, { wall, from, to, depth: deep }: Mark<'recess'>): Said {
  const line = lines.find((candidate) => candidate.wall.id === wall);
  if (line === undefined) return {};
  const k = sheet.perNanometre;
  const depth = Math.min(deep * k, line.thickness * 0.8);
  sheet.polygon([line.at(from * k, 0), line.at(to * k, 0), line.at(to * k, depth), line.at(from * k, depth)], {
    pen: 'fine',
    fill: 'paper',
    layer: 'cut',
    quiet: true,
  });
  const turn = readable(line.along);
  const label = (): void => {
    const middle = ((from + to) / 2) * k;
    sheet.tryWrite(
      [-8, -16, -24].map((v) => centered(line.at(middle, v), turn)),
      name,
      { size: sizes.note, color: 'muted', turn, ground: 'paper' },
    );
  };
  return { label };
}

function overhead({ sheet, measure, feature, shownIn }: FeaturePlace, mark: Mark<'overhead'>): Said {
  const lines = drawTimbers(sheet, measure, mark);
  if (lines.length === 0) return { note: timberNote(feature, mark, shownIn) };
  const label = (): void => {
    const middle = lines[Math.floor((lines.length - 1) / 2)]?.line;
    if (middle === undefined) return;
    const [from, to] = middle;
    const along: Spot = [to[0] - from[0], to[1] - from[1]];
    const turn = readable(along);
    const spots = [0.2, 0.8, 0.32, 0.68, 0.5].map((share) => centered(between(from, to, share), turn));
    sheet.tryWrite(spots, `${feature.name} above`, { size: sizes.note, color: 'muted', turn, ground: 'paper' });
  };
  return { label };
}

/** Both sides of timbers over a room, dashed; none where it is not known where they lie. */
export function drawTimbers(
  sheet: Sheet,
  room: TimberedRoom,
  pieces: OverheadMark,
  color: Role = 'ink',
): readonly TimberLine[] {
  const lines = timberLines(sheet, room, pieces);
  for (const [a, b, c, d] of lines.map(({ corners }) => corners))
    for (const side of [
      [a, b],
      [d, c],
    ])
      sheet.polyline(side, { pen: 'hair', dash: 'hidden', color, quiet: true });
  return lines;
}

/** The feature's name in it, lengthwise where it is upright, else beside it. */
function writeNear({ sheet, name }: Place, corners: readonly Spot[]): void {
  const xs = corners.map((spot) => spot[0]);
  const ys = corners.map((spot) => spot[1]);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const middle: Spot = [(left + right) / 2, (top + bottom) / 2];
  const look = { size: sizes.note, color: 'muted' } as const;
  if (sheet.tryWrite([centered(middle, 0)], name, look)) return;
  if (sheet.tryWrite([centered(middle, -90)], name, { ...look, turn: -90 })) return;
  const around: Spot[] = [
    [middle[0], top - 4],
    [middle[0], bottom + 9],
  ];
  const beside = { ...look, ground: 'paper' } as const;
  if (sheet.tryWrite(around, name, beside)) return;
  sheet.tryWrite(
    [
      [left - 4, middle[1]],
      [right + 9, middle[1]],
    ],
    name,
    { ...beside, turn: -90 },
  );
}

export function between(a: Spot, b: Spot, share: number): Spot {
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
}

/** Degrees that text along a direction is turned, never upside down. */
export function readable([x, y]: Spot): number {
  const degrees = (Math.atan2(y, x) * 180) / Math.PI;
  if (degrees > 89.9) return degrees - 180;
  return degrees < -90.1 ? degrees + 180 : degrees;
}

/** Baseline place of small text whose middle is to be at the spot. */
export function centered([x, y]: Spot, turn: number): Spot {
  const radians = (turn * Math.PI) / 180;
  const drop = sizes.note * 0.3;
  return [x - Math.sin(radians) * drop, y + Math.cos(radians) * drop];
}

function lowered([x, y]: Spot): Spot {
  return [x, y + sizes.note * 0.34];
}
