import {
  areaOf,
  distance,
  dot,
  edges,
  faceThrough,
  heightAlong,
  heightOn,
  intersect,
  minus,
  patchFrom,
  rectangle,
  ringInFeet,
  xyz,
  type Xy,
  type Xyz,
  patchInFeet,
} from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import { facetPlane } from '../../core/feature/index.js';
import type { CeilingFacet, RoomMeasure } from '../../core/model/index.js';
import type { Facet, FacetRole } from './facet.js';
import { footOver, onSide, topOver, type Height, type Side } from './outline.js';

/** Thickness of the floor and of the ceiling where they are cut, in feet. As drawn. */
export const cutThickness = { floor: 0.85, ceiling: 0.4 };

/** A part of the ceiling as a facet of the picture. */
export type CeilingPart = Facet & { readonly facet: CeilingFacet };

/** The floor's thickness in its holes, below the edge. */
export function holeEdges({ voids }: RoomMeasure): readonly Facet[] {
  return voids.flatMap(({ id, outline }) => {
    const ring = patchFrom(ringInFeet(outline)).outline;
    // Seen from within the hole: its edges walked the other way.
    return edges(ring).flatMap(([a, b], i) => {
      const face = faceThrough([xyz(b, -cutThickness.floor), xyz(a, -cutThickness.floor), xyz(a, 0), xyz(b, 0)]);
      return face ? [{ ...face, id: `${id}/edge-${i}`, role: 'slab' as const, places: [] }] : [];
    });
  });
}

/** The wall taken away: its stubs on the floor, with gaps where openings come down to it, and the edge of the floor. */
export function nearCut(side: Side, { openings }: RoomMeasure, index: number): readonly Facet[] {
  const { wall, from, to, isOpen, outerA, outerB } = side;
  const foot = footOver(side);
  const level = (along: number): number => heightAlong(foot, along);
  const low = Math.min(...foot.map(({ height }) => height)) - cutThickness.floor;
  const edge = facet(`${wall.id}/slab-${index}`, 'slab', [
    xyz(outerB, low),
    xyz(outerA, low),
    xyz(outerA, level(from)),
    xyz(outerB, level(to)),
  ]);
  if (isOpen) return smoothed(edge, side);
  const gaps = openings
    .filter((opening) => opening.wall === wall.id && feet(opening.sill) <= level(feet(opening.at)) + 0.05)
    .map(({ at, width }) => [feet(at), feet(at) + feet(width)] as const)
    .toSorted(([one], [other]) => one - other);
  const stops = [from, ...gaps.flat().map((along) => Math.min(to, Math.max(from, along))), to];
  const stubs: Facet[] = [];
  for (let i = 0; i + 1 < stops.length; i += 1) {
    const [start, end] = [stops[i]!, stops[i + 1]!];
    if (end - start < 1e-3) continue;
    const isGap = i % 2 === 1;
    stubs.push(
      ...facet(`${wall.id}/${isGap ? 'sill' : 'stub'}-${index}-${i}`, isGap ? 'slab' : 'cut', [
        xyz(onSide(side, start, false), level(start)),
        xyz(onSide(side, end, false), level(end)),
        xyz(onSide(side, end, true), level(end)),
        xyz(onSide(side, start, true), level(start)),
      ]),
    );
  }
  return smoothed([...edge, ...stubs], side);
}

/** Tops of a standing wall: seen only where no ceiling lies over them. */
export function topCuts(side: Side): readonly Facet[] {
  const top = topOver(side);
  const cuts = top.slice(1).flatMap((end, i) => {
    const start = top[i]!;
    if (end.along - start.along < 1e-6) return [];
    const outer = (along: number): Xyz => outerTop(side, [start, end], onSide(side, along, true));
    return facet(`${side.wall.id}/top-${tag(side.from)}-${i}`, 'cut', [
      xyz(onSide(side, start.along, false), start.height),
      xyz(onSide(side, end.along, false), end.height),
      outer(end.along),
      outer(start.along),
    ]);
  });
  return smoothed(cuts, side);
}

/** The top of a wall at a place of its outer face: a mitred corner lies beyond the inner face's end, on the same slope. */
function outerTop({ a, from, ahead }: Side, [start, end]: readonly [Height, Height], place: Xy): Xyz {
  const run = end.along - start.along;
  const slope = run < 1e-6 ? 0 : (end.height - start.height) / run;
  const along = dot(minus(place, a), ahead) + from;
  return xyz(place, start.height + slope * (along - start.along));
}

/** Ends of a standing wall where its neighbour was taken away. */
export function endCuts(side: Side, sides: readonly Side[], isSeen: (side: Side) => boolean): readonly Facet[] {
  const index = sides.indexOf(side);
  const [before, after] = [sides.at(index - 1)!, sides[(index + 1) % sides.length]!];
  const [foot, top] = [footOver(side), topOver(side)];
  const end = (
    place: Xy,
    outer: Xy,
    low: Height,
    run: readonly [Height, Height],
    isRight: boolean,
  ): readonly Facet[] => {
    const high = isRight ? run[1] : run[0];
    const corners = [
      xyz(place, low.height),
      xyz(outer, low.height),
      outerTop(side, run, outer),
      xyz(place, high.height),
    ];
    return facet(
      `${side.wall.id}/end-${isRight ? 'right' : 'left'}-${tag(side.from)}`,
      'cut',
      isRight ? corners : corners.toReversed(),
    );
  };
  return [
    ...(isSeen(before) ? [] : end(side.a, side.outerA, foot[0]!, [top[0]!, top[1]!], false)),
    ...(isSeen(after) ? [] : end(side.b, side.outerB, foot.at(-1)!, [top.at(-2)!, top.at(-1)!], true)),
  ];
}

/** The ceiling's thickness along edges where it was cut. */
export function ceilingCuts(seen: readonly CeilingPart[], standing: readonly Side[]): readonly Facet[] {
  const others = seen.map(({ facet: one }) => patchInFeet(one.plan));
  return seen.flatMap(({ id, facet: one }) => {
    const plane = facetPlane(one);
    const ring = patchInFeet(one.plan).outline;
    return edges(ring).flatMap(([a, b], i) => {
      const length = distance(a, b);
      if (length < 0.05) return [];
      const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
      const outside = { x: middle.x + ((b.y - a.y) / length) * 0.02, y: middle.y - ((b.x - a.x) / length) * 0.02 };
      const probe = rectangle(outside.x - 0.005, outside.y - 0.005, 0.01, 0.01);
      if (areaOf(intersect(others, probe)) > 0) return [];
      if (standing.some((side) => liesOn(middle, side))) return [];
      const [low, high] = [heightOn(plane, a), heightOn(plane, b)];
      return facet(`${id}/cut-${i}`, 'cut', [
        xyz(a, low),
        xyz(b, high),
        xyz(b, high + cutThickness.ceiling),
        xyz(a, low + cutThickness.ceiling),
      ]);
    });
  });
}

function liesOn(place: Xy, { a, b, ahead }: Side): boolean {
  const [x, y] = [place.x - a.x, place.y - a.y];
  const along = x * ahead.x + y * ahead.y;
  return Math.abs(x * ahead.y - y * ahead.x) < 0.02 && along > -0.02 && along < distance(a, b) + 0.02;
}

function facet(id: string, role: FacetRole, corners: readonly Xyz[]): readonly Facet[] {
  const face = faceThrough(corners);
  return face && areaOf(face.patches) > 1e-6 ? [{ ...face, id, role, places: [] }] : [];
}

/** Top and ends of a wall that was taken away. */
export function awayLines(
  side: Side,
  sides: readonly Side[],
  isSeen: (side: Side) => boolean,
): readonly (readonly Xyz[])[] {
  if (side.isOpen) return [];
  const [foot, top] = [footOver(side), topOver(side)];
  const next = sides[(sides.indexOf(side) + 1) % sides.length]!;
  const line = top.map(({ along, height }) => xyz(onSide(side, along, false), height));
  const isCorner = !isSeen(next) && Math.abs(side.ahead.x * next.ahead.y - side.ahead.y * next.ahead.x) > 0.2;
  return [line, ...(isCorner ? [[xyz(side.b, foot.at(-1)!.height), line.at(-1)!]] : [])];
}

export function awayFacet({ facet: one }: Pick<CeilingPart, 'facet'>): readonly (readonly Xyz[])[] {
  const plane = facetPlane(one);
  return one.slope === 0 ? [] : [patchInFeet(one.plan).outline.map((place) => xyz(place, heightOn(plane, place)))];
}

/** Pieces of an arc are one. */
function smoothed(facets: readonly Facet[], { wall }: Side): readonly Facet[] {
  return wall.arc ? facets.map((one) => ({ ...one, isSmooth: true })) : facets;
}

/** A place along a wall in an id. */
export function tag(value: number): string {
  return String(Math.round(value * 100) / 100);
}
