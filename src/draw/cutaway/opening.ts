import {
  along,
  areaOf,
  bounds,
  edges,
  faceBetween,
  faceThrough,
  intersect,
  patchFrom,
  placeOn,
  rectangle,
  without,
  type Patch,
  type Ring,
  type SpacePlane,
} from '../../base/geometry/index.js';
import { feet, type Length } from '../../base/units/index.js';
import { wallFoot, type Division, type OpeningMeasure, type RoomMeasure } from '../../core/model/index.js';
import { grown, outlineOf } from '../../core/opening/index.js';
import type { Decal, Facet } from './facet.js';
import { sidePlane, type Side } from './outline.js';

/** Sizes as drawn, in feet. */
const frame = 2.25 / 12;
const bar = 1 / 12;
const leafIn = 1.5 / 12;

/** What is seen in the openings of a wall: jambs, leaves, glass, the light of what lies beyond. */
export function openingFacets(side: Side, measure: RoomMeasure): readonly Facet[] {
  const place = placeOf(side);
  return openingsOf(side, measure).flatMap((opening) => {
    const hole = holeOf(opening, place);
    const deep = Math.max(side.thickness, 0.3);
    return [...revealOf(hole, opening, place.plane, deep), ...fillOf(hole, opening, place.plane, deep, measure.room)];
  });
}

/** Casing and other trim that lies on the wall around its openings. */
export function trimOn(
  side: Side,
  measure: RoomMeasure,
  widthOf: (mark: string) => Length | undefined,
): readonly Decal[] {
  const place = placeOf(side);
  return openingsOf(side, measure).flatMap((opening) => {
    const width = opening.kind === 'open' ? undefined : widthOf(opening.mark);
    return width === undefined ? [] : trimOf(opening, holeOf(opening, place), place.face, width);
  });
}

function openingsOf({ wall, from, to }: Side, { openings }: RoomMeasure): readonly OpeningMeasure[] {
  return openings.filter(({ wall: on, at, width }) => {
    const middle = feet(at) + feet(width) / 2;
    return on === wall.id && (!wall.arc || (middle > from && middle <= to));
  });
}

interface Place {
  readonly face: Patch | undefined;
  readonly plane: SpacePlane;
}

/** All of the wall's face, with what is open in it. */
function wallFace({ wall }: Side): readonly Patch[] {
  const points = (profile: readonly { readonly along: Length; readonly height: Length }[]) =>
    profile.map((point) => ({ along: feet(point.along), height: feet(point.height) }));
  return faceBetween(points(wallFoot(wall)), points(wall.top));
}

function placeOf(side: Side): Place {
  const [face] = wallFace(side);
  return { face, plane: sidePlane(side) };
}

/** As much of an opening as the ceiling leaves. */
function holeOf(opening: OpeningMeasure, { face }: Place): Patch {
  const whole = patchFrom(moved(outlineOf(opening), feet(opening.at), feet(opening.sill)));
  return face ? (intersect([whole], face)[0] ?? whole) : whole;
}

/** The jambs, head and sill, as deep as the wall. */
function revealOf(
  hole: Patch,
  { mark, wall, kind }: OpeningMeasure,
  plane: SpacePlane,
  deep: number,
): readonly Facet[] {
  const look =
    kind === 'open'
      ? ({ role: 'finish', places: [wall] } as const)
      : ({ role: 'frame', places: [mark, wall] } as const);
  // Of more sides than a rake has is what is curved.
  const isSmooth = hole.outline.length > 6;
  return edges(hole.outline).flatMap(([a, b], i) => {
    const [near, far] = [placeOn(plane, a), placeOn(plane, b)];
    const face = faceThrough([near, far, along(far, plane.faces, -deep), along(near, plane.faces, -deep)]);
    return face ? [{ ...face, ...look, id: `${mark}/reveal-${i}`, ...(isSmooth && { isSmooth }) }] : [];
  });
}

/** A leaf, a sash with its glass and bars, or the light of what lies beyond. */
function fillOf(hole: Patch, opening: OpeningMeasure, plane: SpacePlane, deep: number, room: string): readonly Facet[] {
  const { mark, kind, operation } = opening;
  const set = (back: number): SpacePlane => ({ ...plane, at: along(plane.at, plane.faces, -back) });
  if (kind === 'open' || kind === 'cased')
    return [{ id: `${mark}/beyond`, role: 'beyond', places: [], plane: set(deep), patches: [hole] }];
  if (kind === 'door' && operation !== 'fixed') {
    const isHere = opening.swing === undefined || opening.swing === room;
    const back = operation === 'swing' || operation === 'double' ? (isHere ? 0.04 : deep - leafIn) : deep / 2;
    return [
      {
        id: `${mark}/leaf`,
        role: 'door',
        places: [mark],
        plane: set(back),
        patches: [hole],
        decals: leafDecals(opening, hole),
      },
    ];
  }
  const inner = shrunk(hole, frame);
  const back = deep * 0.6;
  if (!inner) return [{ id: `${mark}/glass`, role: 'glass', places: [], plane: set(back), patches: [hole] }];
  const lights = divided(inner, opening.division ?? { across: operation === 'double' ? 2 : 1, up: 1 });
  return [
    { id: `${mark}/glass`, role: 'glass', places: [], plane: set(back + 0.02), patches: [inner] },
    {
      id: `${mark}/sash`,
      role: 'frame',
      places: [mark],
      plane: set(back),
      patches: without([hole], lights),
    },
  ];
}

/** The panes between the bars. */
function divided(inner: Patch, { across, up }: Division): readonly Patch[] {
  const { west, east, south, north } = bounds(inner.outline);
  const upright = Array.from({ length: across - 1 }, (_, i) => {
    const middle = west + ((east - west) * (i + 1)) / across;
    return rectangle(middle - bar / 2, south - 1, bar, north - south + 2);
  });
  const level = Array.from({ length: up - 1 }, (_, i) => {
    const middle = south + ((north - south) * (i + 1)) / up;
    return rectangle(west - 1, middle - bar / 2, east - west + 2, bar);
  });
  return without([inner], [...upright, ...level]);
}

/** The seam of a pair, panels and the handle; which panels a leaf has is told by what it is made of. */
function leafDecals({ mark, hinge, operation }: OpeningMeasure, { outline }: Patch): readonly Decal[] {
  const xs = outline.map(({ x }) => x);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const low = Math.min(...outline.map(({ y }) => y));
  const high = Math.max(...outline.map(({ y }) => y));
  const isPair = operation === 'double';
  const leaves = isPair
    ? [
        [left, (left + right) / 2],
        [(left + right) / 2, right],
      ]
    : [[left, right]];
  const panels = leaves.flatMap(([from, to]) => panelsOf(from!, low, to! - from!, high - low));
  const latch = isPair ? (left + right) / 2 + 0.2 : hinge === 'left' ? right - 0.22 : left + 0.22;
  const knob = rectangle(latch - 0.09, low + 3 - 0.045, 0.18, 0.09);
  return [
    { patches: panels, role: 'panel', place: mark },
    ...(isPair
      ? [
          {
            patches: [rectangle((left + right) / 2 - 0.01, low, 0.02, high - low)],
            role: 'panel' as const,
            place: mark,
          },
        ]
      : []),
    { patches: [knob], role: 'knob', place: mark },
  ];
}

/** A low panel and a high one between stiles and rails of usual widths. As drawn. */
function panelsOf(left: number, low: number, width: number, height: number): readonly Patch[] {
  const [stile, rail, foot] = [0.38, 0.38, 0.75];
  if (width < 3 * stile || height < 5) return [];
  const middle = low + height * 0.42;
  return [
    rectangle(left + stile, low + foot, width - 2 * stile, middle - low - foot - rail / 2),
    rectangle(left + stile, middle + rail / 2, width - 2 * stile, low + height - rail - middle - rail / 2),
  ];
}

function trimOf(opening: OpeningMeasure, hole: Patch, face: Patch | undefined, width: Length): readonly Decal[] {
  const { mark, at, sill, kind } = opening;
  const around = moved(outlineOf(grown(opening, width)), feet((at - width) as Length), feet((sill - width) as Length));
  // Down to the floor, legs stand on it and no trim runs below.
  const low = kind === 'window' ? [] : [rectangle(-1e3, -1e3, 2e3, 1e3 + feet(opening.floor ?? sill))];
  const whole = without(face ? intersect([patchFrom(around)], face) : [patchFrom(around)], low);
  const patches = without(whole, [hole]);
  return areaOf(patches) > 1e-4 ? [{ patches, role: 'trim', place: mark }] : [];
}

function moved(ring: Ring, x: number, y: number): Ring {
  return ring.map((corner) => ({ x: corner.x + x, y: corner.y + y }));
}

/** The shape drawn in from its edge all around; nothing where it is too small. Convex shapes only, as openings are. */
function shrunk({ outline }: Patch, by: number): Patch | undefined {
  const sides = edges(outline).map(([a, b]) => {
    const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    return { nx: -(b.y - a.y) / length, ny: (b.x - a.x) / length, a };
  });
  const corners = sides.map((after, i) => {
    const before = sides.at(i - 1)!;
    const turn = before.nx * after.ny - before.ny * after.nx;
    if (Math.abs(turn) < 1e-6) return { x: after.a.x + after.nx * by, y: after.a.y + after.ny * by };
    return {
      x: after.a.x + (by * (after.ny - before.ny)) / turn,
      y: after.a.y + (by * (before.nx - after.nx)) / turn,
    };
  });
  const patch = patchFrom(corners);
  return areaOf([patch]) > 0.05 && areaOf([patch]) < areaOf([{ outline, holes: [] }]) ? patch : undefined;
}
