import { headings } from '../../src/base/geometry/index.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CeilingForm, OwnOpening } from '../../src/core/model/index.js';
import { drawCeilingPlan, drawPlan, printPalette } from '../../src/draw/index.js';
import { ft, measured, size } from './fixtures.js';
import { collisions, outside, struckThrough, unfinite } from './reading.js';
import { drawWalls } from './walls.js';

const base = {
  number: '214',
  name: 'A room with a rather long name',
  palette: printPalette,
  id: 'r',
  neighbours: new Map([['hall', 'Upper hall and landing']]),
};

const inches = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: low, max: high }).map((count) => count / 12);

const ceiling: fc.Arbitrary<CeilingForm> = fc.oneof(
  inches(84, 168).map((feet): CeilingForm => ({ form: 'flat', height: ft(feet) })),
  fc
    .tuple(
      inches(90, 120),
      fc.integer({ min: 1, max: 14 }),
      fc.constantFrom(...(['north', 'east', 'south', 'west'] as const).map((way) => headings[way])),
    )
    .map(([plate, rise, low]): CeilingForm => ({ form: 'shed', low, plate: ft(plate), pitch: { rise, run: 12 } })),
  fc
    .tuple(inches(90, 120), fc.integer({ min: 1, max: 14 }), fc.constantFrom(headings.south, headings.east))
    .map(([plate, rise, ridge]): CeilingForm => ({ form: 'gable', ridge, plate: ft(plate), pitch: { rise, run: 12 } })),
  fc
    .tuple(inches(90, 120), fc.integer({ min: 1, max: 12 }))
    .map(([plate, rise]): CeilingForm => ({ form: 'hip', plate: ft(plate), pitch: { rise, run: 12 } })),
);

interface Slot {
  readonly gap: number;
  readonly width: number;
  readonly isWindow: boolean;
  readonly operation: OwnOpening['operation'];
  readonly isRight: boolean;
  readonly isInward: boolean;
}

const slot: fc.Arbitrary<Slot> = fc.record({
  gap: inches(2, 40),
  width: inches(18, 84),
  isWindow: fc.boolean(),
  operation: fc.constantFrom<OwnOpening['operation']>('swing', 'pocket', 'sliding', 'double'),
  isRight: fc.boolean(),
  isInward: fc.boolean(),
});

/** Puts as many of the openings on the wall as it takes, left to right. */
function openingsOn(wall: string, run: number, slots: readonly Slot[]): Partial<OwnOpening>[] {
  const placed: Partial<OwnOpening>[] = [];
  let at = 0;
  slots.forEach(({ gap, width, isWindow, operation, isRight, isInward }, index) => {
    at += gap;
    if (at + width > run) return;
    const mark = `${isWindow ? 'W' : 'D'}${wall.slice(0, 1).toUpperCase()}${index}`;
    placed.push({
      mark,
      wall,
      at: ft(at),
      width: ft(width),
      to: isWindow ? 'outside' : 'hall',
      ...(isWindow
        ? { kind: 'window', height: ft(3), sill: ft(3) }
        : {
            kind: 'door',
            height: ft(80 / 12),
            operation,
            hinge: isRight ? 'right' : 'left',
            swing: isInward ? 'random' : 'hall',
          }),
    });
    at += width;
  });
  return placed;
}

describe('drawings of random rooms', () => {
  it('keep text apart, stay in their frame and are finite', () => {
    const room = fc.record({
      eastWest: inches(40, 480),
      northSouth: inches(40, 480),
      ceiling,
      north: fc.array(slot, { maxLength: 4 }),
      east: fc.array(slot, { maxLength: 3 }),
      south: fc.array(slot, { maxLength: 4 }),
      west: fc.array(slot, { maxLength: 3 }),
      open: fc.constantFrom([], [{ wall: 'west', to: 'hall' }]),
    });
    fc.assert(
      fc.property(room, (sketch) => {
        const isOpen = sketch.open.length > 0;
        const measure = measured({
          slug: 'random',
          shape: size(sketch.eastWest, sketch.northSouth, sketch.open),
          ceiling: sketch.ceiling,
          openings: [
            ...openingsOn('north', sketch.eastWest, sketch.north),
            ...openingsOn('east', sketch.northSouth, sketch.east),
            ...openingsOn('south', sketch.eastWest, sketch.south),
            ...(isOpen ? [] : openingsOn('west', sketch.northSouth, sketch.west)),
          ],
        });
        const drawings = [drawPlan(measure, base), ...drawWalls(measure, base), drawCeilingPlan(measure, base)];
        for (const { svg, title } of drawings) {
          expect({
            title,
            collisions: collisions(svg),
            struck: struckThrough(svg),
            outside: outside(svg),
            unfinite: unfinite(svg),
          }).toEqual({ title, collisions: [], struck: [], outside: [], unfinite: [] });
        }
      }),
      { seed: 1907, numRuns: Number(process.env['DRAW_RUNS'] ?? 60) },
    );
  });
});
