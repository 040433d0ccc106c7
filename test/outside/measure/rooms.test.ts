import { describe, expect, test } from 'vitest';
import type { CeilingFacet, Region } from '../../../src/core/model/index.js';
import { feet, type Length } from '../../../src/base/units/index.js';
import { common, integral, isIn, steepness, total, type Height, type Piece, type Spot } from './second-way/plan.js';
import { rooms, type Roofed } from './second-way/rooms.js';

/** Ceilings in parts, their steps, and walls under them by a second way (`second-way/plan.ts`): areas and volume as a scanner sums them,
 *  walls and steps along many short pieces. */

const within = (share: number, of: number): number => share * Math.max(1, of);
const spotsOf = (region: Region['outline']): readonly Spot[] => region.map(({ x, y }) => ({ x: feet(x), y: feet(y) }));
const covers = ({ outline, holes }: Region, at: Spot): boolean =>
  isIn(spotsOf(outline), at) && !holes.some((hole) => isIn(spotsOf(hole), at));

/** By triangles from the first corner. */
function areaOf({ outline, holes }: Region): number {
  const fan = (corners: readonly Spot[]): number =>
    corners.slice(2).reduce((sum, to, index) => {
      const [first, from] = [corners[0] as Spot, corners[index + 1] as Spot];
      return sum + ((from.x - first.x) * (to.y - first.y) - (from.y - first.y) * (to.x - first.x)) / 2;
    }, 0);
  return Math.abs(fan(spotsOf(outline))) - total(holes, (hole) => Math.abs(fan(spotsOf(hole))));
}

const told = rooms.map(
  (room, index) => [`${index}: ${room.pieces.length} over ${room.corners.length} corners`, room] as const,
);

describe.each(told)('room %s', (_, { corners, pieces, isBox, measure, cells, height }) => {
  test('plan, ceiling, volume and headroom', () => {
    const plan = total(cells, ({ area }) => area);
    expect(measure.floor.net).toBeCloseTo(plan, 5);
    expect(measure.ceiling.planArea).toBeCloseTo(plan, 5);
    const { ceiling, volume, headroom } = measure;
    const sloped = total(cells, ({ at, area }) => area * steepness(height, at).factor);
    expect(Math.abs(ceiling.net - sloped)).toBeLessThan(within(0.004, sloped));
    const cubic = total(cells, ({ at, area }) => area * height(at));
    expect(Math.abs(volume - cubic)).toBeLessThan(within(0.002, cubic));
    for (const [least, area] of [
      [5, headroom.fiveFeet],
      [7, headroom.sevenFeet],
    ] as const) {
      const high = total(cells, (cell) => (height(cell.at) >= least ? cell.area : 0));
      expect(Math.abs(area - high), `over ${least} ft`).toBeLessThan(within(0.03, plan));
    }
  });

  test('lowest at a corner of a part, highest where it is', () => {
    // Under the least of some planes nothing is lower than at the corners.
    const ends = pieces.flatMap(({ over, height: own }) => common(corners, over).map(own));
    expect(feet(measure.lowest)).toBeCloseTo(Math.min(...ends), 4);
    const seen = Math.max(...ends, ...cells.map(({ at }) => height(at)));
    expect(feet(measure.highest)).toBeGreaterThan(seen - 1e-6);
    expect(feet(measure.highest)).toBeLessThan(seen + 0.5);
  });

  test('each facet lies on its slope and is unfolded to its true size', () => {
    const { facets, net } = measure.ceiling;
    expect(total(facets, ({ area }) => area)).toBeCloseTo(net, 6);
    for (const facet of facets) {
      const inside = cells.filter(({ at }) => covers(facet.plan, at)).slice(0, 12);
      for (const { at } of inside) expect(facet).toMatchObject(slopeAt(height, at));
      const own = inside[0] && pieces.find(({ over }) => isIn(over, inside[0]?.at as Spot));
      if (own) expect(facet.name).toMatch(nameOf(pieces.length > 1 ? own.name : '', facet));
      expect(areaOf(facet.shape)).toBeCloseTo(facet.area, 4);
      expect(areaOf(facet.plan) * Math.sqrt(1 + facet.slope ** 2)).toBeCloseTo(facet.area, 4);
      expect(boxOf(spotsOf(facet.shape.outline))).toEqual(
        boxOf(spotsOf(facet.plan.outline).map((at) => unfolded(facet, at))),
      );
    }
  });

  test('steps between parts of different heights', () => {
    const expected = new Map<string, number>();
    for (const [lower, higher, x] of bordersOf(pieces)) {
      const area = stepArea(corners, lower, higher, x);
      if (area > 0.01) expected.set(`step-${lower.name.toLowerCase()}-${higher.name.toLowerCase()}`, area);
    }
    const steps = (measure.steps ?? []).filter(({ net }) => net > 0.01);
    expect(steps.map(({ id }) => id).sort()).toEqual([...expected.keys()].sort());
    for (const { id, gross, net, regions } of steps) {
      const area = expected.get(id) ?? NaN;
      expect(Math.abs(net - area), id).toBeLessThan(within(0.004, area));
      expect(gross).toBe(net);
      expect(total(regions, areaOf)).toBeCloseTo(net, 4);
    }
    if (!isBox) return;
    for (const [lower, higher, x] of bordersOf(pieces)) {
      const step = steps.find(({ id }) => id === `step-${lower.name.toLowerCase()}-${higher.name.toLowerCase()}`);
      if (step) expectFace(step.regions, { corners, lower, higher, x });
    }
  });

  test('walls under it', () => {
    expect(measure.walls.map(({ id }) => id)[0]).toBe('w1');
    const perimeter = total(corners, (from) => Math.hypot(...runOf(corners, corners.indexOf(from))));
    expect(feet(measure.perimeter)).toBeCloseTo(perimeter, 4);
    corners.forEach((from, index) => {
      const wall = measure.walls.find(({ id }) => id === `w${index + 1}`);
      if (!wall) throw new Error('not measured');
      const [start, end] = [wall.from, wall.to].map((at) => ({ x: feet(at.x), y: feet(at.y) })) as [Spot, Spot];
      const [east, north] = runOf(corners, index);
      const run = Math.hypot(east, north);
      expect(feet(wall.run)).toBeCloseTo(run, 5);
      // One of the ends is the corner, and the room lies to the right.
      expect(
        Math.min(Math.hypot(start.x - from.x, start.y - from.y), Math.hypot(end.x - from.x, end.y - from.y)),
      ).toBeLessThan(1e-6);
      const at = (along: number): Spot => {
        const way = { x: (end.x - start.x) / run, y: (end.y - start.y) / run };
        return { x: start.x + way.x * along + way.y * 1e-6, y: start.y + way.y * along - way.x * 1e-6 };
      };
      expect(isIn(corners, at(run / 2))).toBe(true);
      const area = integral(0, run, (along) => height(at(along)), 500);
      expect(Math.abs(wall.gross - area), wall.id).toBeLessThan(within(0.004, area));
      expect(total(wall.regions, areaOf)).toBeCloseTo(wall.gross, 4);
      for (const share of [0.013, 0.21, 0.37, 0.52, 0.74, 0.987]) {
        const heights = [-2e-3, 0, 2e-3].map((aside) => height(at(share * run + aside)));
        const top = topAt(wall.top, share * run);
        expect(top).toBeGreaterThan(Math.min(...heights) - 0.01);
        expect(top).toBeLessThan(Math.max(...heights) + 0.01);
      }
    });
  });
});

test('there is enough of each to ask', () => {
  const steps = rooms.flatMap(({ measure }) => measure.steps ?? []);
  expect(steps.length).toBeGreaterThan(30);
  expect(rooms.filter(({ pieces }) => pieces.some(({ openAbove }) => openAbove !== undefined)).length).toBeGreaterThan(
    15,
  );
});

function runOf(corners: readonly Spot[], index: number): readonly [number, number] {
  const [from, to] = [corners[index] as Spot, corners[(index + 1) % corners.length] as Spot];
  return [to.x - from.x, to.y - from.y];
}

/** By how much a ceiling rises there, and which way. */
function slopeAt(height: Height, at: Spot): object {
  const { a, b } = steepness(height, at);
  const slope = Math.sqrt(a * a + b * b);
  const isFlat = slope < 1e-4;
  const degrees = (Math.atan2(b, a) * 180) / Math.PI;
  const turns = (degrees + 360) % 360;
  const rises: unknown =
    turns > 359.9 || turns < 0.1
      ? expect.toSatisfy((way: number) => way < 0.2 || way > 359.8)
      : expect.closeTo(turns, 1);
  return { slope: expect.closeTo(isFlat ? 0 : slope, 4) as unknown, riseDirection: isFlat ? 0 : rises };
}

const bearings = ['East', 'North-east', 'North', 'North-west', 'West', 'South-west', 'South', 'South-east'];

/** `Flat`, or the side that it comes down to; of one of several parts after the part's name. */
function nameOf(part: string, { slope, riseDirection }: CeilingFacet): RegExp {
  const eighth = ((riseDirection + 180) / 45) % 8;
  // Half way between two bearings either may be told.
  const sides = [Math.floor(eighth + 0.499), Math.floor(eighth + 0.501)].map(
    (side) => `${bearings[side % 8] ?? ''} slope`,
  );
  const words = slope === 0 ? ['Flat'] : sides;
  const own = part === '' ? words : words.map((each) => `${part}: ${each.toLowerCase()}`);
  return new RegExp(`^(${own.join('|')})( \\d+)?$`, 'u');
}

/** Level to the right of who looks up the slope, and up along it. */
function unfolded({ slope, riseDirection }: CeilingFacet, { x, y }: Spot): Spot {
  if (slope === 0) return { x, y };
  const rise = (riseDirection * Math.PI) / 180;
  return {
    x: x * Math.sin(rise) - y * Math.cos(rise),
    y: (x * Math.cos(rise) + y * Math.sin(rise)) * Math.sqrt(1 + slope * slope),
  };
}

function boxOf(corners: readonly Spot[]): readonly number[] {
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)].map(
    (each) => Math.round(each * 1e4) / 1e4 + 0,
  );
}

/** Each border both ways: of two parts either may be the higher. */
function bordersOf(pieces: readonly Piece[]): readonly (readonly [lower: Piece, higher: Piece, x: number])[] {
  return pieces.slice(1).flatMap((east, index) => {
    const west = pieces[index] as Piece;
    const x = east.over[0]?.x ?? 0;
    return [
      [west, east, x],
      [east, west, x],
    ] as const;
  });
}

function faceAt({ lower, higher, x }: Border, y: number): readonly [number, number] {
  const top = Math.min(higher.openAbove ?? Infinity, higher.height({ x, y }));
  return [lower.height({ x, y }), top];
}

interface Border {
  readonly lower: Piece;
  readonly higher: Piece;
  readonly x: number;
}

function stepArea(corners: readonly Spot[], lower: Piece, higher: Piece, x: number): number {
  const ys = corners.map(({ y }) => y);
  return integral(Math.min(...ys), Math.max(...ys), (y) => {
    if (!isIn(corners, { x: x - 1e-7, y }) || !isIn(corners, { x: x + 1e-7, y })) return 0;
    const [low, high] = faceAt({ lower, higher, x }, y);
    return Math.max(0, high - low);
  });
}

/** A step of a plain room, place by place from the left as one faces it from under the higher part. */
function expectFace(regions: readonly Region[], border: Border & Pick<Roofed, 'corners'>): void {
  const ys = border.corners.map(({ y }) => y);
  const [south, north] = [Math.min(...ys), Math.max(...ys)];
  const isHigherEast = border.higher.over[0]?.x === border.x;
  for (const share of [0.03, 0.17, 0.41, 0.6, 0.83, 0.97]) {
    const y = south + (north - south) * share;
    // Who looks west has the south at the left hand.
    const along = isHigherEast ? y - south : north - y;
    const [low, high] = faceAt(border, y);
    if (Math.abs(high - low) < 0.05) continue;
    const middle = { x: along, y: (low + high) / 2 };
    const isThere = regions.some((region) => covers(region, middle));
    expect(isThere).toBe(high > low);
    if (!isThere) continue;
    for (const [place, is] of [
      [low + 0.01, true],
      [high - 0.01, true],
      [low - 0.01, false],
      [high + 0.01, false],
    ] as const)
      expect(regions.some((region) => covers(region, { x: along, y: place }))).toBe(is);
  }
}

function topAt(top: readonly { readonly along: Length; readonly height: Length }[], along: number): number {
  const after = top.findIndex((point) => feet(point.along) >= along);
  const [a, b] = [top[after - 1], top[after]];
  if (!a || !b) return NaN;
  const share = (along - feet(a.along)) / (feet(b.along) - feet(a.along));
  return feet(a.height) + (feet(b.height) - feet(a.height)) * share;
}
