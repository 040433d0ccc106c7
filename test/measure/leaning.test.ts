import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Shape, WallLean } from '../../src/core/model/index.js';
import { feet, fromFeet } from '../../src/base/units/index.js';
import { measured, problemsOf, regionArea, told, top, wall } from './measured.js';
import { flat, len, opening, walk } from './room-record.js';

function leaning(shape: Shape, leans: Record<string, WallLean>): Shape {
  if (shape.by !== 'walk') throw new Error('only walks');
  return {
    ...shape,
    walls: shape.walls.map((one) => ({ ...one, ...(leans[one.name] && { leans: leans[one.name] }) })),
  };
}

const lean = (by: string, at: string): WallLean => ({ by: len(by), at: len(at) });
const square = walk(`north east 12'`, `east south 10'`, `south west 12'`, `west north 10'`);

describe(`a room 12' × 10' × 8' whose north wall leans in by 2' at 8'`, () => {
  const shape = leaning(square, { north: lean(`2'`, `8'`) });
  const measure = measured({ shape, ceiling: flat(`8'`) });

  test('its face is sqrt(2² + 8²) high, and lies over 24 sq ft of the plan', () => {
    expect(wall(measure, 'north').gross).toBeCloseTo(12 * Math.sqrt(68), 9);
    expect(regionArea(wall(measure, 'north').regions)).toBeCloseTo(12 * Math.sqrt(68), 6);
    expect(regionArea(wall(measure, 'north').lean?.plan ?? [])).toBeCloseTo(24, 6);
    const height = Math.round(Math.sqrt(68) * 1e6) / 1e6;
    expect(top(measure, 'north')).toEqual([`0 ${height}`, `12 ${height}`]);
  });

  test('takes of the ceiling, of its neighbours and of the air, and nothing of the floor', () => {
    expect(measure.ceiling.net).toBeCloseTo(96, 9);
    expect(measure.ceiling.facets).toHaveLength(1);
    expect(wall(measure, 'east').gross).toBeCloseTo(80 - 8, 9);
    expect(top(measure, 'east')).toEqual(['0 0', '2 8', '10 8']);
    expect(measure.volume).toBeCloseTo(960 - 12 * 8, 9);
    expect(measure.floor.net).toBe(120);
    expect([feet(measure.lowest), feet(measure.highest)]).toEqual([8, 8]);
    // 5' of height is 1'-3" from the wall's foot, 7' 1'-9".
    expect([measure.headroom.fiveFeet, measure.headroom.sevenFeet]).toEqual([105, 99]);
  });

  test('a window lies in its plane', () => {
    const openings = [opening('W1', 'window', 'north', `2'`, `3' x 4'`, { sill: len(`3'`) })];
    const net = wall(measured({ shape, ceiling: flat(`8'`), openings }), 'north').net;
    expect(net).toBeCloseTo(12 * Math.sqrt(68) - 12, 9);
    // The face is 8.246' high: a head at 8'-3" is over it.
    const high = [opening('W1', 'window', 'north', `2'`, `3' x 4'`, { sill: len(`4'-3"`) })];
    expect(told(problemsOf({ shape, ceiling: flat(`8'`), openings: high }))[0]).toMatch(/^opening-above-ceiling/u);
  });
});

test(`two walls that lean until they meet are a tent: half the air of the box, and no ceiling`, () => {
  const shape = leaning(square, { north: lean(`5'`, `12'`), south: lean(`5'`, `12'`) });
  const measure = measured({ shape, ceiling: flat(`20'`) });
  expect(measure.volume).toBeCloseTo((12 * 10 * 12) / 2, 9);
  expect(measure.ceiling.net).toBe(0);
  expect(wall(measure, 'north').gross).toBeCloseTo(12 * 13, 9);
  expect(wall(measure, 'east').gross).toBeCloseTo(60, 9);
});

test('four walls that lean make a truncated pyramid', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 6, max: 14 }), (inches, height) => {
      const each = { by: fromFeet(inches / 12), at: fromFeet(height) };
      const shape = leaning(square, { north: each, east: each, south: each, west: each });
      const measure = measured({ shape, ceiling: flat(`${height}'`) });
      const less = inches / 6;
      const [base, lid] = [120, (12 - less) * (10 - less)];
      const middle = (12 - less / 2) * (10 - less / 2);
      // The prismoid's volume: (base + 4 middle + lid) height / 6.
      expect(measure.volume).toBeCloseTo(((base + 4 * middle + lid) * height) / 6, 6);
      expect(measure.ceiling.net).toBeCloseTo(lid, 6);
      const slant = Math.hypot(height, inches / 12);
      expect(wall(measure, 'north').gross).toBeCloseTo(((12 + 12 - less) / 2) * slant, 6);
    }),
    { numRuns: 60 },
  );
});

describe('a wall that leans', () => {
  test('is straight', () => {
    const shape = leaning(square, { north: lean(`2'`, `8'`) });
    if (shape.by !== 'walk') throw new Error('no walk');
    const walls = shape.walls.map((one) =>
      one.name === 'north' ? { ...one, arc: { bows: 'out', rise: len(`1'`) } as const } : one,
    );
    expect(told(problemsOf({ shape: { ...shape, walls }, ceiling: flat(`8'`) }))).toEqual([
      `wall-leans at walls.0.leans: wall 'north' is an arc and leans: what it encloses is not measured`,
    ]);
  });

  test('has all of the room before it', () => {
    const el = walk(`a east 20'`, `b south 8'`, `c west 8'`, `d south 6'`, `e west 12'`, `f north 14'`);
    const told1 = told(problemsOf({ shape: leaning(el, { c: lean(`1'`, `8'`) }), ceiling: flat(`8'`) }));
    expect(told1).toEqual([
      `wall-leans at walls.2.leans: wall 'c' leans into the room, but part of the room lies behind its line`,
    ]);
  });

  test('has nothing standing against it', () => {
    const sizes = { at: `3'`, width: `2'`, height: `3'`, sill: `4'`, depth: `4"` };
    const niche = { kind: 'niche', id: 'shelf', name: 'Shelf niche', wall: 'north', ...sizes };
    const shape = leaning(square, { north: lean(`2'`, `8'`) });
    expect(told(problemsOf({ shape, ceiling: flat(`8'`), features: [niche] }))).toEqual([
      `feature-on-lean at features.0.wall: Shelf niche is on wall 'north', which leans: what stands against one is not measured`,
    ]);
  });
});
