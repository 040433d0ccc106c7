import { headings, nearestHeading } from '../../src/base/geometry/index.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type {
  Bearing,
  CeilingForm,
  Direction,
  OutlineCorner,
  OwnOpening,
  Point,
  RoomMeasure,
} from '../../src/core/model/index.js';
import { feet, type Length } from '../../src/base/units/index.js';
import { seeded, star } from '../geometry/random.js';
import { measured } from './measured.js';
import { flat, len, opening, pitch, size, type RoomText } from './room-record.js';

const inch = 25_400_000;

/** A random concave outline whose corners are whole inches, walls named by their place in the first walk. */
const outlines = fc.integer({ min: 1, max: 1e9 }).map((seed) =>
  [...star(seeded(seed))].reverse().map(({ x, y }, i): OutlineCorner => ({
    at: { x: (Math.round(x * 12) * inch) as Length, y: (Math.round(y * 12) * inch) as Length },
    wall: `w${i}`,
  })),
);

const pitches = fc.integer({ min: 1, max: 14 }).map((rise) => ({ rise, run: 12 }));
const bearings: Bearing[] = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'];
const plate = len(`8'`);
const forms: fc.Arbitrary<CeilingForm> = fc.oneof(
  fc.constant<CeilingForm>({ form: 'flat', height: plate }),
  fc
    .tuple(fc.constantFrom(...bearings.map((bearing) => headings[bearing])), pitches)
    .map(([low, slope]): CeilingForm => ({ form: 'shed', low, plate, pitch: slope })),
  fc
    .tuple(fc.constantFrom(...bearings.map((bearing) => headings[bearing])), pitches)
    .map(([ridge, slope]): CeilingForm => ({ form: 'gable', ridge, plate, pitch: slope })),
  pitches.map((slope): CeilingForm => ({ form: 'hip', plate, pitch: slope })),
);
const cuts = fc.option(
  fc.integer({ min: 100, max: 160 }).map((inches) => (inches * inch) as Length),
  { nil: undefined },
);

interface Case {
  corners: OutlineCorner[];
  form: CeilingForm;
  cut: Length | undefined;
}

const cases: fc.Arbitrary<Case> = fc.record({ corners: outlines, form: forms, cut: cuts });

describe('no quantity changes', () => {
  test('when the walk starts at another wall', () => {
    fc.assert(
      fc.property(cases, fc.nat(), ({ corners, form, cut }, start) => {
        const at = start % corners.length;
        same(
          figures({ corners, form, cut }),
          figures({ corners: [...corners.slice(at), ...corners.slice(0, at)], form, cut }),
        );
      }),
      { numRuns: 120 },
    );
  });

  test('when the walk goes the other way round', () => {
    fc.assert(
      fc.property(cases, ({ corners, form, cut }) => {
        // Corner i of the turned walk starts the wall that ended there.
        const turned = corners
          .map(({ at }, i) => ({ at, wall: corners[(i + corners.length - 1) % corners.length]?.wall ?? '' }))
          .reverse();
        same(figures({ corners, form, cut }), figures({ corners: turned, form, cut }));
      }),
      { numRuns: 120 },
    );
  });

  test('when the room is turned by a quarter', () => {
    const quarter = ({ x, y }: Point): Point => ({ x: -y as Length, y: x });
    fc.assert(
      fc.property(cases, ({ corners, form, cut }) => {
        const turned = corners.map(({ at, wall }) => ({ at: quarter(at), wall }));
        same(figures({ corners, form, cut }), figures({ corners: turned, form: turnedForm(form, (i) => i + 6), cut }));
      }),
      { numRuns: 120 },
    );
  });

  test('when the room is mirrored east to west', () => {
    fc.assert(
      fc.property(cases, ({ corners, form, cut }) => {
        const mirrored = corners.map(({ at, wall }) => ({ at: { x: -at.x as Length, y: at.y }, wall }));
        const other = turnedForm(form, (i) => 8 - i);
        same(figures({ corners, form, cut }), figures({ corners: mirrored, form: other, cut }));
      }),
      { numRuns: 120 },
    );
  });

  test('when the room stands elsewhere', () => {
    fc.assert(
      fc.property(cases, fc.integer({ min: -4000, max: 4000 }), ({ corners, form, cut }, inches) => {
        const moved = corners.map(({ at, wall }) => ({
          at: { x: (at.x + inches * inch) as Length, y: (at.y - 7 * inches * inch) as Length },
          wall,
        }));
        same(figures({ corners, form, cut }), figures({ corners: moved, form, cut }));
      }),
      { numRuns: 120 },
    );
  });
});

describe('a room split in two adds up', () => {
  const half: fc.Arbitrary<[number, number]> = fc.tuple(
    fc.integer({ min: 40, max: 300 }),
    fc.integer({ min: 40, max: 300 }),
  );

  test('across the ridge of a gable, a shed along its level, under any cut', () => {
    const level = fc.oneof(
      pitches.map((slope): CeilingForm => ({ form: 'gable', ridge: headings.east, plate, pitch: slope })),
      pitches.map((slope): CeilingForm => ({ form: 'shed', low: headings.north, plate, pitch: slope })),
    );
    fc.assert(
      fc.property(half, fc.integer({ min: 60, max: 300 }), level, cuts, ([left, right], depth, form, cut) => {
        const ceiling = cut === undefined ? { form } : { form, cut };
        const whole = sums({ shape: size(`${left + right}"`, `${depth}"`), ceiling });
        const west = sums({ shape: size(`${left}"`, `${depth}"`, { east: 'b' }), ceiling });
        const east = sums({ shape: size(`${right}"`, `${depth}"`, { west: 'a' }), ceiling });
        whole.forEach((value, i) => expect((west[i] ?? 0) + (east[i] ?? 0)).toBeCloseTo(value, 7));
      }),
      { numRuns: 150 },
    );
  });

  test('along the ridge of a gable into two sheds', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 40, max: 300 }),
        fc.integer({ min: 40, max: 300 }),
        pitches,
        (width, depth, slope) => {
          const shed = (low: Direction): CeilingForm => ({ form: 'shed', low, plate, pitch: slope });
          const whole = sums({
            shape: size(`${width}"`, `${2 * depth}"`),
            ceiling: { form: 'gable', ridge: headings.east, plate, pitch: slope },
          });
          const south = sums({ shape: size(`${width}"`, `${depth}"`, { north: 'b' }), ceiling: shed(headings.south) });
          const north = sums({ shape: size(`${width}"`, `${depth}"`, { south: 'a' }), ceiling: shed(headings.north) });
          whole.forEach((value, i) => expect((south[i] ?? 0) + (north[i] ?? 0)).toBeCloseTo(value, 7));
        },
      ),
      { numRuns: 100 },
    );
  });
});

test('openings: net + deductions = gross, and regions show the net', () => {
  const measure = measured({
    shape: size(`20'`, `15'`),
    ceiling: { form: 'gable', ridge: headings.south, plate: len(`8'`), pitch: pitch('9/12') },
    openings: [
      opening('D1', 'door', 'south', `3'`, `3' x 8'`),
      opening('W1', 'window', 'south', `8'`, `4' x 11'`, { sill: len(`1'`) } satisfies Partial<OwnOpening>),
    ],
  });
  for (const { gross, net, deductions } of measure.walls) {
    expect(net + deductions.reduce((sum, { area }) => sum + area, 0)).toBeCloseTo(gross, 9);
  }
  expect(
    measured({ shape: size(`9'`, `9'`), ceiling: flat(`8'`) }).walls.every(({ gross, net }) => gross === net),
  ).toBe(true);
});

function turned(way: Direction, to: (index: number) => number): Direction {
  return headings[bearings[to(bearings.indexOf(nearestHeading(way))) % 8] ?? 'north'];
}

function turnedForm(form: CeilingForm, to: (index: number) => number): CeilingForm {
  if (form.form === 'shed') return { ...form, low: turned(form.low, to) };
  if (form.form === 'gable') return { ...form, ridge: turned(form.ridge, to) };
  return form;
}

function measureCase({ corners, form, cut }: Case): RoomMeasure {
  const ceiling = cut === undefined ? { form } : { form, cut };
  return measured({ shape: { by: 'outline', corners }, ceiling });
}

/** Every quantity of a room, walls by name and facets by size. */
function figures(one: Case): number[] {
  const measure = measureCase(one);
  const walls = [...measure.walls].sort((a, b) => (a.id < b.id ? -1 : 1));
  return [
    feet(measure.perimeter),
    measure.floor.net,
    measure.ceiling.net,
    measure.ceiling.planArea,
    measure.volume,
    feet(measure.lowest),
    feet(measure.highest),
    measure.headroom.fiveFeet,
    measure.headroom.sevenFeet,
    ...walls.flatMap(({ gross, run }) => [gross, feet(run)]),
    ...measure.ceiling.facets.map(({ area }) => area).sort((a, b) => a - b),
  ];
}

function same(one: number[], other: number[]): void {
  expect(other).toHaveLength(one.length);
  one.forEach((value, i) => expect(other[i]).toBeCloseTo(value, 5));
}

/** Quantities that add up; walls of the split, where the rooms are open to one another, are none. */
function sums(text: Pick<RoomText, 'shape' | 'ceiling'>): number[] {
  const measure = measured(text);
  const walls = measure.walls.reduce((sum, { net }) => sum + net, 0);
  const { floor, ceiling, volume, wallRun, headroom } = measure;
  return [
    floor.net,
    ceiling.net,
    ceiling.planArea,
    volume,
    feet(wallRun),
    walls,
    headroom.fiveFeet,
    headroom.sevenFeet,
  ];
}
