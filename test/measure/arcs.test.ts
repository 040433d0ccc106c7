import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arcBetween, arcLength, arcPoints, signedArea } from '../../src/base/geometry/index.js';
import type { Shape, WallArc } from '../../src/core/model/index.js';
import { feet } from '../../src/base/units/index.js';
import { measured, problemsOf, regionArea, told, top, wall } from './measured.js';
import { flat, len, opening, outline, pitch, point, room, walk } from './room-record.js';

/** A shape with some of its walls as arcs. */
function bowed(shape: Shape, arcs: Record<string, WallArc>): Shape {
  if (shape.by === 'walk')
    return { ...shape, walls: shape.walls.map((one) => ({ ...one, ...(arcs[one.name] && { arc: arcs[one.name] }) })) };
  if (shape.by === 'outline')
    return {
      ...shape,
      corners: shape.corners.map((one) => ({ ...one, ...(arcs[one.wall] && { arc: arcs[one.wall] }) })),
    };
  return shape;
}

const out = (rise: string): WallArc => ({ bows: 'out', rise: len(rise) });
const into = (rise: string): WallArc => ({ bows: 'in', rise: len(rise) });
const square = walk(`north east 12'`, `east south 10'`, `south west 12'`, `west north 10'`);

describe('arcs, against their closed forms', () => {
  test('pieces keep the area of the segment, r² (θ − sin θ) / 2, and the length r θ', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 0.02, max: 1.4, noNaN: true }),
        (chord, share) => {
          const rise = (share * chord) / 2;
          const [from, to] = [
            { x: 0, y: 0 },
            { x: chord, y: 0 },
          ];
          const arc = arcBetween(from, to, rise);
          const radius = (chord * chord) / (8 * rise) + rise / 2;
          // A chord stands across its arc by half the angle; past a half circle the arc is the greater one.
          const half = Math.asin(Math.min(1, chord / 2 / radius));
          const angle = rise > radius ? 2 * Math.PI - 2 * half : 2 * half;
          expect(arc.radius).toBeCloseTo(radius, 9);
          expect(arcLength(arc)).toBeCloseTo(radius * angle, 6);
          const pieces = arcPoints(from, to, arc);
          const segment = (radius * radius * (angle - Math.sin(angle))) / 2;
          expect(Math.abs(signedArea(pieces))).toBeCloseTo(segment, 6);
          // No piece leaves the arc by more than a tape tells.
          for (const { x, y } of pieces)
            expect(Math.abs(Math.hypot(x - arc.center.x, y - arc.center.y) - radius)).toBeLessThan(1 / 192);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('a round tower of two half circles: π r² of floor, 2 π r of wall', () => {
    const shape = bowed(outline([`0'`, `6'`], [`12'`, `6'`]), { w1: out(`6'`), w2: out(`6'`) });
    const measure = measured({ shape, ceiling: flat(`9'`) });
    expect(measure.floor.net).toBeCloseTo(Math.PI * 36, 6);
    expect(feet(measure.wallRun)).toBeCloseTo(Math.PI * 12, 6);
    expect(measure.volume).toBeCloseTo(Math.PI * 36 * 9, 5);
    expect(wall(measure, 'w1').gross).toBeCloseTo(Math.PI * 6 * 9, 6);
    expect(top(measure, 'w1')).toHaveLength(2);
  });
});

describe(`a room 12' × 10' whose north wall is an arc`, () => {
  // Rise 2 over a chord of 12: r = 144 / 16 + 1 = 10, half angle asin 0.6 = 0.6435011: arc 12.870022, segment
  // 100 × (1.2870022 − 0.96) / 2 = 16.350111.
  const [length, segment] = [20 * Math.asin(0.6), 50 * (2 * Math.asin(0.6) - 0.96)];

  test.each([
    ['out', out(`2'`), 120 + segment],
    ['in', into(`2'`), 120 - segment],
    ['out by its radius', { bows: 'out', radius: len(`10'`) } as const, 120 + segment],
  ])('bowing %s', (_, north, floor) => {
    const measure = measured({ shape: bowed(square, { north }), ceiling: flat(`9'`) });
    expect(measure.floor.net).toBeCloseTo(floor, 6);
    expect(feet(wall(measure, 'north').run)).toBeCloseTo(length, 6);
    expect(wall(measure, 'north').gross).toBeCloseTo(length * 9, 5);
    expect(regionArea(wall(measure, 'north').regions)).toBeCloseTo(length * 9, 5);
    expect(feet(wall(measure, 'east').run)).toBe(10);
    expect(measure.volume).toBeCloseTo(floor * 9, 5);
    expect(feet(wall(measure, 'north').arc?.radius ?? len(`0'`))).toBeCloseTo(10, 6);
  });

  test('is the same room when its corners are written the other way round', () => {
    const corners = [point(`0'`, `0'`), point(`12'`, `0'`), point(`12'`, `10'`), point(`0'`, `10'`)];
    const names = ['south', 'east', 'north', 'west'];
    const arc = out(`2'`);
    const shape: Shape = {
      by: 'outline',
      corners: corners.map((at, i) => ({ at, wall: names[i] ?? '', ...(names[i] === 'north' && { arc }) })),
    };
    const measure = measured({ shape, ceiling: flat(`9'`) });
    expect(measure.floor.net).toBeCloseTo(120 + segment, 6);
    const { line } = wall(measure, 'north').arc ?? { line: [] };
    expect([line[0], line.at(-1)].map((end) => feet(end?.at.x ?? len(`0'`)))).toEqual([0, 12]);
    expect(line.map(({ along }) => along)).toEqual(line.map(({ along }) => along).toSorted((a, b) => a - b));
  });

  test('a window lies on the unfolded wall, and may stand past the end of the straight way', () => {
    const openings = [opening('W1', 'window', 'north', `10'-6"`, `2' x 4'`, { sill: len(`3'`) })];
    const measure = measured({ shape: bowed(square, { north: out(`2'`) }), ceiling: flat(`9'`), openings });
    expect(wall(measure, 'north').net).toBeCloseTo(length * 9 - 8, 5);
  });

  test('under a slope its top is no straight line: 12 panes of it sum up to the integral', () => {
    // Shed 6/12 rising to the north from 8' at the south: height 8 + y / 2, and on the arc y = 2 + sqrt(100 − (x − 6)²).
    const ceiling = { form: 'shed', low: { x: 0, y: -1 }, plate: len(`8'`), pitch: pitch('6/12') } as const;
    const measure = measured({ shape: bowed(square, { north: out(`2'`) }), ceiling });
    // ∫ (8 + (2 + 10 cos t) / 2) 10 dt over ±asin 0.6 = 90 × 2 asin 0.6 + 50 × 2 × 0.6.
    expect(wall(measure, 'north').gross).toBeCloseTo(90 * 2 * Math.asin(0.6) + 60, 1);
    expect(measure.volume).toBeCloseTo(volumeByStrips(), 1);
  });

  /** Midpoints of 20,000 strips. */
  function volumeByStrips(): number {
    const count = 20_000;
    return Array.from({ length: count }, (_, i) => {
      const x = ((i + 0.5) * 12) / count;
      const north = 2 + Math.sqrt(100 - (x - 6) ** 2);
      return ((8 * north + (north * north) / 4) * 12) / count;
    }).reduce((sum, part) => sum + part, 0);
  }
});

describe('what an arc cannot be', () => {
  test('its radius does not reach', () => {
    const shape = bowed(square, { north: { bows: 'out', radius: len(`5'-6"`) } });
    expect(told(problemsOf({ shape, ceiling: flat(`9'`) }))).toEqual([
      `arc-too-tight at walls.0.arc.radius: an arc of 5'-6" does not reach from end to end of wall 'north', which is 12'-0"`,
    ]);
  });

  test('it bows into another wall', () => {
    const shape = bowed(square, { north: into(`11'`) });
    // 11' is more than half of 12': the greater arc, which leaves by the west wall before it comes to the south one.
    expect(told(problemsOf({ shape, ceiling: flat(`9'`) }))).toEqual([
      `walls-cross at walls.3: walls 'north' and 'west' meet or cross 8'-2" from the start of 'north'`,
    ]);
  });

  test('a niche in it is not measured', () => {
    const sizes = { at: `3'`, width: `2'`, height: `3'`, sill: `4'`, depth: `4"` };
    const niche = { kind: 'niche', id: 'shelf', name: 'Shelf niche', wall: 'north', ...sizes };
    const text = { shape: bowed(square, { north: out(`2'`) }), ceiling: flat(`9'`), features: [niche] };
    expect(told(problemsOf(room(text)))).toEqual([
      `feature-on-arc at features.0.wall: Shelf niche is on wall 'north', which is an arc: what stands against one is not measured`,
    ]);
  });
});
