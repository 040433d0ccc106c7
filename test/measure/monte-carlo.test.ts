import { headings } from '../../src/base/geometry/index.js';
import { expect, test } from 'vitest';
import type { CeilingForm, OutlineCorner, RoomMeasure } from '../../src/core/model/index.js';
import { feet, fromFeet, type Length } from '../../src/base/units/index.js';
import { seeded, star } from '../geometry/random.js';
import { measured } from './measured.js';
import { len } from './room-record.js';

// Throws darts at random rooms under random ceilings. Heights, slopes and the inside of the plan are worked here from the
// words of the record format, not by the source's geometry. Each estimate must lie within 3 standard errors; of many
// hundred estimates about 3 in 1,000 lie beyond by chance, so 1 in 100 may, and none beyond 5.

const rooms = 120;
const darts = 4000;

interface Spot {
  x: number;
  y: number;
}

type Heights = (at: Spot) => { height: number; factor: number };

test(`${rooms} random rooms: floor, ceiling, walls, volume and headroom within 3 sigma of ${darts} darts`, () => {
  const scores: Score[] = [];
  for (let seed = 1; seed <= rooms; seed += 1) {
    const random = seeded(seed * 7919);
    const corners = [...star(random)].reverse();
    const { form, cut, heights } = randomCeiling(random, corners);
    const measure = measured({
      shape: { by: 'outline', corners: recorded(corners) },
      ceiling: cut === undefined ? { form } : { form, cut },
    });
    scores.push(...score(measure, corners, heights, random, `seed ${seed} ${form.form}`));
  }
  judge(scores);
});

test(`${rooms} random rooms under three ceilings that meet at any angle: the same`, () => {
  const scores: Score[] = [];
  for (let seed = 1; seed <= rooms; seed += 1) {
    const random = seeded(seed * 104_729);
    const corners = [...star(random)].reverse();
    const parts = threeParts(random).map((over, i) => {
      // A part that the room does not reach has any ceiling.
      const reached = within(corners, over);
      const under = reached.length < 3 ? corners : reached;
      // A hip rises from the walls of its own part, which is another story.
      let ceiling = randomCeiling(random, under);
      while (ceiling.form.form === 'hip') ceiling = randomCeiling(random, under);
      return { name: `Part ${i + 1}`, over, ...ceiling };
    });
    const measure = measured({
      shape: { by: 'outline', corners: recorded(corners) },
      ceiling: parts.map(({ name, over, form, cut }) => ({
        name,
        form,
        over: over.map(({ x, y }) => ({ x: fromFeet(x), y: fromFeet(y) })),
        ...(cut !== undefined && { cut }),
      })),
    });
    const heights: Heights = (at) =>
      parts.find(({ over }) => inside(over, at))?.heights(at) ?? { height: Number.NaN, factor: Number.NaN };
    scores.push(...score(measure, corners, heights, random, `seed ${seed}`));
  }
  judge(scores);
});

/** Half of a wide plane, and the other half in two: quadrilaterals about a spot near the middle, turned at random, that
 *  share corners and reach beyond every room. */
function threeParts(random: () => number): Spot[][] {
  const [centre, turn] = [{ x: 12 + 6 * random(), y: 9 + 6 * random() }, random() * 2 * Math.PI];
  const at = (along: number, across: number): Spot => ({
    x: centre.x + along * Math.cos(turn) - across * Math.sin(turn),
    y: centre.y + along * Math.sin(turn) + across * Math.cos(turn),
  });
  return [
    [at(-60, 0), at(60, 0), at(60, 60), at(-60, 60)],
    [at(0, 0), at(0, -60), at(60, -60), at(60, 0)],
    [at(-60, 0), at(-60, -60), at(0, -60), at(0, 0)],
  ];
}

/** Corners of an outline cut to a convex one, edge by edge (Sutherland and Hodgman 1974): its extremes are right, also
 *  where the cut leaves several pieces. */
function within(corners: readonly Spot[], over: readonly Spot[]): Spot[] {
  const area = over.reduce(
    (sum, { x, y }, i) => sum + x * (over[(i + 1) % over.length]?.y ?? 0) - y * (over[(i + 1) % over.length]?.x ?? 0),
    0,
  );
  const ring = area > 0 ? over : [...over].reverse();
  return ring.reduce<Spot[]>(
    (rest, from, i) => {
      const to = ring[(i + 1) % ring.length] as Spot;
      const side = ({ x, y }: Spot): number => (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x);
      return rest.flatMap((spot, k) => {
        const next = rest[(k + 1) % rest.length] as Spot;
        const [here, there] = [side(spot), side(next)];
        const kept = here >= 0 ? [spot] : [];
        if (here >= 0 === there >= 0) return kept;
        const t = here / (here - there);
        return [...kept, { x: spot.x + (next.x - spot.x) * t, y: spot.y + (next.y - spot.y) * t }];
      });
    },
    [...corners],
  );
}

interface Score {
  readonly what: string;
  readonly sigma: number;
}

function judge(scores: readonly Score[]): void {
  const far = scores.filter(({ sigma }) => Math.abs(sigma) > 3);
  expect(far.length, JSON.stringify(far)).toBeLessThanOrEqual(scores.length / 100);
  expect(scores.filter(({ sigma }) => Math.abs(sigma) > 5)).toEqual([]);
  // Scores that are too small would mean that the test cannot fail.
  const spread = Math.sqrt(scores.reduce((sum, { sigma }) => sum + sigma * sigma, 0) / scores.length);
  expect(spread).toBeGreaterThan(0.85);
  expect(spread).toBeLessThan(1.15);
}

function score(
  measure: RoomMeasure,
  corners: readonly Spot[],
  heights: Heights,
  random: () => number,
  whose: string,
): Score[] {
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [west, south] = [Math.min(...xs), Math.min(...ys)];
  const [wide, deep] = [Math.max(...xs) - west, Math.max(...ys) - south];
  const names = ['floor', 'ceiling', 'volume', 'five', 'seven'];
  const tallies = names.map(() => new Tally());
  for (let i = 0; i < darts; i += 1) {
    const at = { x: west + random() * wide, y: south + random() * deep };
    const hit = inside(corners, at) ? 1 : 0;
    const { height, factor } = heights(at);
    [hit, hit * factor, hit * height, height >= 5 ? hit : 0, height >= 7 ? hit : 0].forEach((value, k) =>
      tallies[k]?.add(value),
    );
  }
  const { floor, ceiling, volume, headroom } = measure;
  const exact = [floor.net, ceiling.net, volume, headroom.fiveFeet, headroom.sevenFeet];
  const room = names.flatMap((what, k) => tallies[k]?.against(what, exact[k] ?? 0, wide * deep) ?? []);
  const walls = measure.walls.flatMap((wall) => {
    const tally = new Tally();
    for (let i = 0; i < darts / 4; i += 1) {
      const t = random();
      const at = {
        x: feet(wall.from.x) * (1 - t) + feet(wall.to.x) * t,
        y: feet(wall.from.y) * (1 - t) + feet(wall.to.y) * t,
      };
      tally.add(heights(at).height);
    }
    return tally.against(wall.id, wall.gross, feet(wall.run));
  });
  return [...room, ...walls].map(({ what, sigma }) => ({ what: `${whose} ${what}`, sigma }));
}

class Tally {
  private count = 0;
  private sum = 0;
  private squares = 0;

  add(value: number): void {
    this.count += 1;
    this.sum += value;
    this.squares += value * value;
  }

  /** Standard errors between the mean times `scale` and the exact value; none where every dart said the same. */
  against(what: string, exact: number, scale: number): { what: string; sigma: number }[] {
    const mean = this.sum / this.count;
    const error = Math.sqrt(Math.max(0, this.squares / this.count - mean * mean) / this.count) * scale;
    if (error > 1e-5) return [{ what, sigma: (exact - mean * scale) / error }];
    expect(exact, what).toBeCloseTo(mean * scale, 5);
    return [];
  }
}

/** A ceiling, and its heights worked from the record's words. */
function randomCeiling(
  random: () => number,
  corners: readonly Spot[],
): { form: CeilingForm; cut?: Length; heights: Heights } {
  const rise = 1 + Math.floor(random() * 12);
  const plateFeet = 3 + Math.floor(random() * 6);
  const plate = len(`${plateFeet}'`);
  const pitch = { rise, run: 12 };
  const slope = rise / 12;
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [west, east, south, north] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const cutFeet = random() < 0.4 ? plateFeet + 1 + Math.floor(random() * 3) : undefined;
  const under =
    (up: (at: Spot) => number): Heights =>
    (at) => {
      const sloped = plateFeet + slope * up(at);
      if (cutFeet !== undefined && sloped > cutFeet) return { height: cutFeet, factor: 1 };
      return { height: sloped, factor: Math.sqrt(1 + slope * slope) };
    };
  const cut = cutFeet === undefined ? {} : { cut: len(`${cutFeet}'`) };
  switch (Math.floor(random() * 4)) {
    case 0: {
      const low = Math.max(...corners.map(({ x, y }) => (-x + y) * Math.SQRT1_2));
      return {
        form: { form: 'shed', low: headings['north-west'], plate, pitch },
        ...cut,
        heights: under(({ x, y }) => low - (-x + y) * Math.SQRT1_2),
      };
    }
    case 1:
      return {
        form: { form: 'gable', ridge: headings.east, plate, pitch },
        ...cut,
        heights: under(({ y }) => Math.min(y - south, north - y)),
      };
    case 2:
      return {
        form: { form: 'gable', ridge: headings.south, plate, pitch },
        ...cut,
        heights: under(({ x }) => Math.min(x - west, east - x)),
      };
    default: {
      // Over a convex plan a hip starts at each wall; these stars are taken as they come.
      const up = isConvex(corners)
        ? (at: Spot) =>
            Math.min(...corners.map((corner, i) => toWall(at, corner, corners[(i + 1) % corners.length] as Spot)))
        : ({ x, y }: Spot) => Math.min(y - south, north - y, x - west, east - x);
      return { form: { form: 'hip', plate, pitch }, ...cut, heights: under(up) };
    }
  }
}

function toWall(at: Spot, from: Spot, to: Spot): number {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return ((to.y - from.y) * (at.x - from.x) - (to.x - from.x) * (at.y - from.y)) / length;
}

function isConvex(corners: readonly Spot[]): boolean {
  return corners.every((corner, i) => {
    const [next, after] = [corners[(i + 1) % corners.length] as Spot, corners[(i + 2) % corners.length] as Spot];
    return toWall(after, corner, next) >= -1e-9;
  });
}

/** Winding by angle: another way than the source's. */
function inside(corners: readonly Spot[], { x, y }: Spot): boolean {
  let turned = 0;
  corners.forEach((corner, i) => {
    const next = corners[(i + 1) % corners.length] as Spot;
    const [ax, ay, bx, by] = [corner.x - x, corner.y - y, next.x - x, next.y - y];
    turned += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  });
  return Math.abs(turned) > Math.PI;
}

function recorded(corners: readonly Spot[]): OutlineCorner[] {
  return corners.map(({ x, y }, i) => ({
    at: { x: (Math.round(x * 12) * 25_400_000) as Length, y: (Math.round(y * 12) * 25_400_000) as Length },
    wall: `w${i}`,
  }));
}
