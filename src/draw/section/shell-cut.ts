import {
  areaOf,
  faceBetween,
  heightAlong,
  nearFeet,
  patchFrom,
  planeFrom,
  pointInFeet,
  rectangle,
  ringInFeet,
  stretchesIn,
  stretchLess,
  unite,
  without,
  type Patch,
  type Profile,
  type Xy,
} from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import { facetPlane } from '../../core/feature/index.js';
import type { OpeningMeasure, RoomMeasure, WallMeasure } from '../../core/model/index.js';
import { outlineOf } from '../../core/opening/index.js';
import { cutThickness } from '../cutaway/cuts.js';
import type { Side } from '../cutaway/outline.js';
import { uprights } from '../cutaway/shell.js';
import { beyond, rightOf, stretchesOf, tracesOf, type Cut } from './cut.js';
import { piecesOf, profileOver, regionRings, type Piece } from './profile.js';

/** What of a room's shell a plane goes through, in the plane's axes. */
export interface ShellCut {
  /** The room as it is cut, one space beside the other. */
  readonly spaces: readonly Space[];
  /** Floor, walls and ceiling, with the openings left out. */
  readonly solid: readonly Patch[];
  /** The room and the openings that the plane goes through: what can be looked into. */
  readonly open: readonly Patch[];
  readonly gaps: readonly Gap[];
}

/** A stretch of room between two sides. */
export interface Space {
  readonly from: number;
  readonly to: number;
  readonly floor: Profile;
  readonly ceiling: Profile;
  readonly left?: SideCut;
  readonly right?: SideCut;
}

/** An opening that the plane goes through. */
export interface Gap {
  readonly opening: OpeningMeasure;
  /** Inner and outer face of its wall. */
  readonly inner: number;
  readonly outer: number;
  readonly sill: number;
  readonly head: number;
}

/** A side of the room where the plane goes through it. */
interface SideCut {
  readonly side: Side;
  readonly x: number;
  readonly along: number;
  /** Thickness as it is cut, to the left below 0; where the room is open, how far its floor is drawn on. */
  readonly width: number;
}

/** How far floor and ceiling are drawn on where the room has no wall, and how thick an upright step is, in feet. As drawn. */
const runsOn = 0.75;
/** A wall that is cut at a flat angle is not drawn thicker than this many times its thickness. */
const flattest = 4;

export function shellCut(measure: RoomMeasure, sides: readonly Side[], cut: Cut): ShellCut {
  const ceiling = piecesOf(cut, ceilingParts(measure));
  const leans = measure.walls.flatMap((wall) => piecesOf(cut, leanParts(wall)));
  const over = [...ceiling, ...leans].toSorted((one, other) => one.from - other.from);
  const floor = piecesOf(cut, floorParts(measure));
  const crossings = sides.flatMap((side) => crossingOf(cut, side));
  const spaces = stretchesOf(cut, [ringInFeet(measure.plan)]).map(({ from, to }): Space => {
    const [left, right] = [from, to].map((x) => crossings.find((one) => Math.abs(one.x - x) < 1e-6));
    return {
      from,
      to,
      floor: profileOver(floor, from, to),
      ceiling: profileOver(over, from, to),
      ...(left && { left }),
      ...(right && { right }),
    };
  });
  const rooms = spaces.flatMap((space) => faceBetween(space.floor, space.ceiling));
  const gaps = spaces.flatMap((space) => gapsOf(space, measure));
  const holes = gaps.map(({ inner, outer, sill, head }) => upright(inner, outer, sill, head));
  const walls = spaces.flatMap((space) => shellOf(space, ceiling, leans));
  const steps = [...(measure.steps ?? []), ...(measure.risers ?? [])].flatMap(uprights).flatMap((facet) =>
    tracesOf(cut, facet).map(({ from, to }) => {
      // The body lies to the left of the trace.
      const behind = to.y > from.y ? -cutThickness.ceiling : cutThickness.ceiling;
      const [low, high] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
      return upright(from.x, from.x + behind, low, high + cutThickness.ceiling);
    }),
  );
  const wells = measure.voids.flatMap((one) =>
    stretchesOf(cut, [ringInFeet(one.outline)]).flatMap(({ from, to }) => [
      upright(from, to, -20, 0),
      ...(one.isOpenAbove ? [upright(from, to, 0, 200)] : []),
    ]),
  );
  return {
    spaces,
    gaps,
    solid: without([...walls, ...steps], [...rooms, ...holes, ...wells]),
    open: unite([...rooms, ...holes]),
  };
}

function ceilingParts({ ceiling }: RoomMeasure) {
  return ceiling.facets.map((facet) => ({ rings: regionRings(facet.plan), plane: facetPlane(facet) }));
}

function floorParts({ floor, plan }: RoomMeasure) {
  if (!floor.levels) return [{ rings: [ringInFeet(plan)], plane: { a: 0, b: 0, c: 0 } }];
  return floor.levels.map((level) => ({ rings: regionRings(level.plan), plane: facetPlane(level) }));
}

/** The inner face of a wall that leans, as the part of a ceiling that it is. */
function leanParts({ lean, from, to }: WallMeasure) {
  if (!lean) return [];
  const [a, b] = [pointInFeet(from), pointInFeet(to)];
  const run = Math.hypot(b.x - a.x, b.y - a.y);
  const inward = { x: (b.y - a.y) / run, y: -(b.x - a.x) / run };
  const plane = planeFrom(a, 0, inward, lean.at / lean.by);
  return lean.plan.map((region) => ({ rings: regionRings(region), plane }));
}

function crossingOf(cut: Cut, side: Side): readonly SideCut[] {
  const { a, b, out, thickness, from, to, isOpen } = side;
  const [start, end] = [beyond(cut, a), beyond(cut, b)];
  if (start > 0 === end > 0) return [];
  const share = start / (start - end);
  const x = rightOf(cut, { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share });
  const square = rightOf(cut, out);
  const width = isOpen ? Math.sign(square) * runsOn : thickness * Math.sign(square) * slant(square);
  return [{ side, x, along: from + (to - from) * share, width }];
}

function slant(square: number): number {
  return Math.min(flattest, 1 / Math.abs(square));
}

/** Floor, ceiling and the walls at both ends of a space, over what they enclose. */
function shellOf(
  { from, to, floor, ceiling, left, right }: Space,
  slabs: readonly Piece[],
  leans: readonly Piece[],
): readonly Patch[] {
  const [first, last] = [floor[0]!, floor.at(-1)!];
  const [start, end] = [ceiling[0]!, ceiling.at(-1)!];
  const bottom = (point: { readonly height: number }): number => point.height - cutThickness.floor;
  const wall = (one: SideCut | undefined, foot: Profile[number], top: Profile[number]): readonly Patch[] => {
    if (!one || Math.abs(one.width) < nearFeet) return [];
    const slab = slabs.find((piece) => one.x >= piece.from - 1e-6 && one.x <= piece.to + 1e-6);
    const lean = leans.find((piece) => one.x >= piece.from - 1e-6 && one.x <= piece.to + 1e-6);
    const outer = one.x + one.width;
    const base = upright(one.x, outer, bottom(foot), foot.height);
    if (lean) return [base, ...leaningWall(lean, one)];
    const rise = (x: number): number => (slab ? slab.at(x) : top.height);
    const head = thickened(rise, one.x, outer);
    if (one.side.isOpen) return [base, head];
    return [
      patchFrom([
        { x: one.x, y: bottom(foot) },
        { x: outer, y: bottom(foot) },
        { x: outer, y: Math.max(rise(outer) + cutThickness.ceiling, foot.height) },
        { x: one.x, y: rise(one.x) + cutThickness.ceiling },
      ]),
    ];
  };
  const lower = floor.map(({ along, height }) => ({ along, height: height - cutThickness.floor }));
  const roof = slabs.flatMap((piece) => {
    const [low, high] = [Math.max(from, piece.from), Math.min(to, piece.to)];
    return high - low < nearFeet ? [] : [thickened(piece.at, low, high)];
  });
  // Over what stands up to it the ceiling goes on.
  const gaps = stretchLess({ from, to }, [...slabs, ...leans]).flatMap((gap) => {
    const inner = ceiling.map(({ along }) => along).filter((x) => x > gap.from + nearFeet && x < gap.to - nearFeet);
    const stops = [gap.from, ...inner, gap.to];
    return stops.slice(1).map((end, i) => thickened((x) => heightAlong(ceiling, x), stops[i]!, end));
  });
  return [
    ...faceBetween(lower, floor),
    ...roof,
    ...gaps,
    ...wall(left, first, start),
    ...wall(right, last, end),
  ].filter((patch) => areaOf([patch]) > 1e-6);
}

function leaningWall({ from, to, at }: Piece, { width }: SideCut): readonly Patch[] {
  const corners: readonly Xy[] = [
    { x: from, y: at(from) },
    { x: to, y: at(to) },
    { x: to + width, y: at(to) },
    { x: from + width, y: at(from) },
  ];
  return [patchFrom(corners)];
}

/** The ceiling's thickness over a line, measured plumb. */
function thickened(at: (x: number) => number, from: number, to: number): Patch {
  const { ceiling } = cutThickness;
  return patchFrom([
    { x: from, y: at(from) },
    { x: to, y: at(to) },
    { x: to, y: at(to) + ceiling },
    { x: from, y: at(from) + ceiling },
  ]);
}

function gapsOf({ left, right, ceiling }: Space, { openings }: RoomMeasure): readonly Gap[] {
  return [left, right].flatMap((one) => {
    if (!one || one.side.isOpen) return [];
    const most = (one === left ? ceiling[0] : ceiling.at(-1))!.height;
    return openings
      .filter(({ wall }) => wall === one.side.wall.id)
      .flatMap((opening): readonly Gap[] => {
        const ring = outlineOf(opening).map(({ x, y }) => ({ x: x + feet(opening.at), y: y + feet(opening.sill) }));
        const [stretch] = stretchesIn([ring], { x: one.along, y: 0 }, { x: 0, y: 1 });
        if (!stretch) return [];
        return [
          { opening, inner: one.x, outer: one.x + one.width, sill: stretch.from, head: Math.min(most, stretch.to) },
        ];
      });
  });
}

export function upright(from: number, to: number, low: number, high: number): Patch {
  return rectangle(Math.min(from, to), low, Math.abs(to - from), Math.max(0, high - low));
}
