import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distance, type Xy } from '../../src/base/geometry/index.js';
import { fitOf, jointsOf, layRooms, layRoomsOf, type Laying } from '../../src/core/lay/index.js';
import { seeded } from '../geometry/random.js';
import { generatedHouse, type GeneratedHouse } from './generated-house.js';

const houses = fc.record({
  seed: fc.integer({ min: 1, max: 1e9 }),
  count: fc.integer({ min: 2, max: 24 }),
  degrees: fc.oneof(fc.constant(0), fc.double({ min: -180, max: 180, noNaN: true })),
});

describe('a rectangle cut into rooms', () => {
  test('comes back as it was, turned by any angle', () => {
    fc.assert(
      fc.property(houses, ({ seed, count, degrees }) => {
        const house = generatedHouse(seeded(seed), count, degrees);
        const laying = laid(house);
        expect(laying.groups.length).toBe(1);
        expect(furthestOff(laying, house)).toBeLessThan(0.05 / 304.8);
      }),
      { numRuns: 60 },
    );
  });

  test('has nothing against it: every wall is as thick as it was made, and every outside face in line', () => {
    fc.assert(
      fc.property(houses, ({ seed, count }) => {
        const fit = fitOf(laid(generatedHouse(seeded(seed), count)));
        for (const { gap, should } of fit.facing) expect(gap).toBeCloseTo(should, 4);
        for (const { gap } of fit.inLine) expect(gap).toBeCloseTo(0, 4);
      }),
      { numRuns: 30 },
    );
  });

  test('with tapes that are off by a little, stands no farther off than least squares promise', () => {
    const random = seeded(11);
    const offs = Array.from({ length: 40 }, () => {
      const house = generatedHouse(random, 14);
      const rooms = layRoomsOf(house.records, house.measures);
      const { joints } = jointsOf(rooms);
      const noisy = joints.map((joint) => ({
        ...joint,
        a: 'offset' in joint.a ? { ...joint.a, offset: joint.a.offset + gauss(random) * tape } : joint.a,
        b: 'offset' in joint.b ? { ...joint.b, offset: joint.b.offset + gauss(random) * tape } : joint.b,
      }));
      const laying = layRooms(rooms, noisy);
      return rooms.map(({ index, slug }) => {
        const off = distance(relative(laying, house, index, slug), relative(laying, house, 0, 'room-1'));
        return off / promised(laying, index);
      });
    }).flat();
    // Off by more than three of what is promised, in two directions: 1.1 % of them by Rayleigh's distribution, exp(-9 / 2).
    expect(offs.filter((off) => off > 3).length / offs.length).toBeLessThan(0.011 * 1.5);
    expect(Math.max(...offs)).toBeGreaterThan(0.5);
  });
});

const tape = 0.25 / 12;

function laid(house: GeneratedHouse): Laying {
  const rooms = layRoomsOf(house.records, house.measures);
  return layRooms(rooms, jointsOf(rooms).joints);
}

/** How far the worst room stands from where it should, against the first. */
function furthestOff(laying: Laying, house: GeneratedHouse): number {
  const first = relative(laying, house, 0, 'room-1');
  return Math.max(...laying.rooms.map(({ index, slug }) => distance(relative(laying, house, index, slug), first)));
}

function relative({ at }: Laying, { truth }: GeneratedHouse, index: number, slug: string): Xy {
  const [found, true_] = [at[index] as Xy, truth.get(slug) as Xy];
  return { x: found.x - true_.x, y: found.y - true_.y };
}

/** The greater standard deviation of a room's place, from the inverse of the normal matrix. */
function promised({ squares }: Laying, index: number): number {
  return Math.max(tape / 2, squares.deviation(2 * index), squares.deviation(2 * index + 1));
}

function gauss(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
