import polygonClipping, { type MultiPolygon, type Polygon } from 'polygon-clipping';
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  clip,
  clipAll,
  convexPieces,
  facets,
  intersect,
  isConvex,
  leftOf,
  opposite,
  patchArea,
  patchContains,
  patchFrom,
  rectangle,
  subtract,
  weld,
  type Patch,
  type Plane,
  type Ring,
} from '../../src/base/geometry/index.js';
import { holed, seeded, star } from './random.js';

const ring = (...points: [number, number][]): Ring => points.map(([x, y]) => ({ x, y }));

describe('half-plane', () => {
  // A U, 6 wide and 4 high, with a 2 wide slot from the top down to y = 1: area 24 − 6.
  const u = patchFrom(ring([0, 0], [6, 0], [6, 4], [4, 4], [4, 1], [2, 1], [2, 4], [0, 4]));
  const above = (y: number) => ({ a: 0, b: 1, c: -y });

  test('falls apart where the outline does', () => {
    const pieces = clip(u, above(2));
    expect(pieces.map(patchArea)).toEqual([4, 4]);
    expect(clip(u, opposite(above(2))).map(patchArea)).toEqual([10]);
  });

  test('through a corner, along an edge, beside the shape', () => {
    expect(clip(u, above(1)).map(patchArea)).toEqual([6, 6]); // along the bottom of the slot
    expect(clip(u, opposite(above(1))).map(patchArea)).toEqual([6]);
    expect(clip(u, above(0))).toEqual([u]);
    expect(clip(u, above(4))).toEqual([]);
    expect(areaOf(clip(u, leftOf({ x: 2, y: 1 }, { x: 4, y: 4 })))).toBeCloseTo(
      18 - areaOf(clip(u, leftOf({ x: 4, y: 4 }, { x: 2, y: 1 }))),
      12,
    );
  });

  test('a hole that the line meets becomes part of the border; one it misses stays', () => {
    const frame = patchFrom(ring([0, 0], [10, 0], [10, 10], [0, 10]), [ring([4, 4], [6, 4], [6, 6], [4, 6])]);
    expect(clip(frame, above(5)).map(({ holes }) => holes.length)).toEqual([0]);
    expect(areaOf(clip(frame, above(5)))).toBe(48);
    expect(clip(frame, above(2)).map(({ holes }) => holes.length)).toEqual([1]);
    expect(areaOf(clip(frame, above(4)))).toBe(56); // touches the hole's edge
  });
});

describe('combining', () => {
  test('concave shapes are cut into convex pieces that add up', () => {
    const frame = patchFrom(ring([0, 0], [10, 0], [10, 10], [0, 10]), [ring([4, 4], [6, 4], [6, 6], [4, 6])]);
    const pieces = convexPieces(frame);
    expect(pieces.every(({ outline }) => isConvex(outline))).toBe(true);
    expect(areaOf(pieces)).toBeCloseTo(96, 9);
  });

  test('weld closes seams and opens notches', () => {
    const halves = [rectangle(0, 0, 4, 3), rectangle(4, 1, 4, 5)];
    expect(weld(halves)).toMatchObject([{ holes: [] }]);
    expect(weld(halves)[0]?.outline).toHaveLength(8);
    const cross = subtract([rectangle(0, 0, 9, 9)], rectangle(3, 0, 3, 9));
    expect(weld(cross)).toHaveLength(2);
    // Squares that only touch at a corner stay two.
    const checkers = weld([rectangle(0, 0, 1, 1), rectangle(1, 1, 1, 1), rectangle(1, -1, 1, 1)]);
    expect(checkers.map(({ outline }) => outline.length)).toEqual([4, 4, 4]);
    const ringed = weld(subtract([rectangle(0, 0, 9, 9)], rectangle(3, 3, 3, 3)));
    expect(ringed).toHaveLength(1);
    expect(ringed[0]?.holes).toHaveLength(1);
    expect(areaOf(ringed)).toBeCloseTo(72, 12);
  });
});

const seeds = Array.from({ length: 150 }, (_, i) => i + 1);

describe('against an independent polygon library, on 150 random concave shapes with holes', () => {
  test('half-planes', () => {
    for (const seed of seeds) {
      const random = seeded(seed);
      const patch = holed(random);
      const [from, to] = [
        { x: 3 + 24 * random(), y: 24 * random() },
        { x: 3 + 24 * random(), y: 24 * random() },
      ];
      const side = leftOf(from, to);
      const kept = areaOf(clip(patch, side));
      expect(kept + areaOf(clip(patch, opposite(side))), `seed ${seed}`).toBeCloseTo(patchArea(patch), 8);
      expect(kept, `seed ${seed}`).toBeCloseTo(
        libraryArea(polygonClipping.intersection(polygon(patch), halfPlane(side))),
        6,
      );
    }
  });

  test('intersection and difference', () => {
    for (const seed of seeds) {
      const random = seeded(seed);
      const [one, other] = [holed(random), patchFrom(star(random, { x: 18, y: 14 }))];
      expect(areaOf(intersect([one], other)), `seed ${seed}`).toBeCloseTo(
        libraryArea(polygonClipping.intersection(polygon(one), polygon(other))),
        6,
      );
      expect(areaOf(subtract([one], other)), `seed ${seed}`).toBeCloseTo(
        libraryArea(polygonClipping.difference(polygon(one), polygon(other))),
        6,
      );
      const welded = weld(subtract([one], other));
      expect(areaOf(welded), `seed ${seed}`).toBeCloseTo(areaOf(subtract([one], other)), 6);
    }
  });

  test('facets of a random envelope', () => {
    for (const seed of seeds) {
      const random = seeded(seed);
      const patch = holed(random);
      const planes = randomPlanes(random);
      const parts = facets([patch], planes);
      expect(areaOf(parts.flat()), `seed ${seed}`).toBeCloseTo(patchArea(patch), 7);
      parts.forEach((pieces, i) => {
        const plane = planes[i] as Plane;
        const sides = planes.filter((other) => other !== plane).map((other) => halfPlane(lower(plane, other)));
        const expected = polygonClipping.intersection(polygon(patch), ...sides);
        expect(areaOf(pieces), `seed ${seed}, plane ${i}`).toBeCloseTo(libraryArea(expected), 6);
        for (const piece of pieces) {
          const inside = sample(piece, random);
          if (inside) expect(planes.every((other) => z(plane, inside) <= z(other, inside) + 1e-6)).toBe(true);
        }
      });
    }
  });
});

function z({ a, b, c }: Plane, { x, y }: { x: number; y: number }): number {
  return a * x + b * y + c;
}

function randomPlanes(random: () => number): Plane[] {
  return Array.from({ length: 2 + Math.floor(random() * 4) }, () => {
    const [a, b] = [2 * random() - 1, 2 * random() - 1];
    return { a, b, c: 12 + 2 * random() - a * 15 - b * 12 };
  });
}

function lower(plane: Plane, other: Plane): { a: number; b: number; c: number } {
  const [a, b, c] = [other.a - plane.a, other.b - plane.b, other.c - plane.c];
  const length = Math.hypot(a, b);
  return { a: a / length, b: b / length, c: c / length };
}

/** A half-plane as a square large enough for every shape here. */
function halfPlane({ a, b, c }: { a: number; b: number; c: number }): Polygon {
  const far = 200;
  const [x, y] = [-a * c, -b * c];
  return [
    [
      [x + b * far, y - a * far],
      [x + b * far + a * far, y - a * far + b * far],
      [x - b * far + a * far, y + a * far + b * far],
      [x - b * far, y + a * far],
    ],
  ];
}

function polygon({ outline, holes }: Patch): Polygon {
  return [outline, ...holes].map((points) => points.map(({ x, y }): [number, number] => [x, y]));
}

function libraryArea(shapes: MultiPolygon): number {
  const shoelace = (points: [number, number][]): number =>
    Math.abs(
      points.reduce((sum, [x, y], i) => {
        const [u, v] = points[(i + 1) % points.length] as [number, number];
        return sum + x * v - u * y;
      }, 0) / 2,
    );
  return shapes.reduce(
    (sum, [outline, ...holes]) =>
      sum + shoelace(outline ?? []) - holes.reduce((less, hole) => less + shoelace(hole), 0),
    0,
  );
}

function sample(patch: Patch, random: () => number): { x: number; y: number } | undefined {
  const xs = patch.outline.map(({ x }) => x);
  const ys = patch.outline.map(({ y }) => y);
  for (let i = 0; i < 50; i += 1) {
    const x = Math.min(...xs) + random() * (Math.max(...xs) - Math.min(...xs));
    const y = Math.min(...ys) + random() * (Math.max(...ys) - Math.min(...ys));
    if (patchContains(patch, { x, y })) return { x, y };
  }
  return undefined;
}

test('clipping many times over keeps the whole', () => {
  const random = seeded(7);
  let pieces: readonly Patch[] = [holed(random)];
  const whole = areaOf(pieces);
  for (let i = 0; i < 12; i += 1) {
    const side = leftOf({ x: 24 * random(), y: 24 * random() }, { x: 24 * random(), y: 24 * random() });
    pieces = [...clipAll(pieces, side), ...clipAll(pieces, opposite(side))];
  }
  expect(areaOf(pieces)).toBeCloseTo(whole, 7);
  const welded = weld(pieces);
  expect(areaOf(welded)).toBeCloseTo(whole, 6);
});
