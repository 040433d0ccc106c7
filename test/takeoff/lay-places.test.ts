import { headings } from '../../src/base/geometry/index.js';
import { describe, expect, test } from 'vitest';
import type { CourseRun, Direction, RoomMeasure } from '../../src/core/model/index.js';
import { layPlaces, resolvePlaces, type LayoutSummary } from '../../src/core/takeoff/index.js';
import { fromFeet, fromInches, printLength } from '../../src/base/units/index.js';
import { measured } from '../measure/measured.js';
import { box, flat, len, opening, pitch, size } from '../measure/room-record.js';
import { category, option, selection } from './room.js';

interface Wanted {
  readonly lay?: 'boards' | 'sheets';
  readonly face?: number;
  readonly courses?: CourseRun;
  readonly hiddenBy?: readonly string[];
}

function laid(
  measure: RoomMeasure,
  at: string[],
  { lay = 'boards', face = 6, courses, hiddenBy }: Wanted = {},
): LayoutSummary {
  const product = option([{}], {
    face: { text: '', value: { kind: 'length', length: fromInches(face) } },
    stock: { text: '', value: { kind: 'lengths', lengths: [8, 10, 12, 16].map(fromFeet) } },
  });
  const { places } = resolvePlaces(selection(...at), measure);
  const layout = layPlaces(
    places,
    product,
    category('area', { lay, ...(hiddenBy && { hiddenBy }) }).measure,
    measure,
    courses,
  );
  if (!layout) throw new Error('nothing is laid out');
  return layout;
}

const ways = ({ surfaces }: LayoutSummary): string[] =>
  surfaces.map(({ name, run, courses, startsAt }) => `${name}: ${courses} ${run}, from ${startsAt}`);

/** 12' east-west by 10' north-south. */
const plain = measured({ shape: size(`12'`, `10'`), ceiling: flat(`8'`) });
const gable = (ridge: Direction): RoomMeasure =>
  measured({
    shape: size(`12'`, `10'`),
    ceiling: { form: 'gable', ridge, plate: len(`8'`), pitch: pitch('9/12') },
  });

describe('the way courses run', () => {
  test('along the longer side of a floor or a flat ceiling, or as recorded', () => {
    expect(ways(laid(plain, ['floor']))).toEqual(['Floor: 20 east-west, from the south side']);
    expect(ways(laid(plain, ['floor'], { courses: 'north-south' }))).toEqual([
      'Floor: 24 north-south, from the east side',
    ]);
    expect(ways(laid(plain, ['ceiling']))).toEqual(['Flat: 20 east-west, from the south side']);
  });

  // Half of 10' at 9/12 is 5 × 1.25 = 6'-3" up the slope: 12.5 courses of 6", which are 13. Of 12': 7'-6", 15 courses.
  test('level on slopes, or as the plan shows the recorded way', () => {
    expect(ways(laid(gable(headings.east), ['ceiling']))).toEqual([
      'South slope: 13 east-west, from the eave',
      'North slope: 13 east-west, from the eave',
    ]);
    expect(ways(laid(gable(headings.south), ['ceiling']))).toEqual([
      'West slope: 15 north-south, from the eave',
      'East slope: 15 north-south, from the eave',
    ]);
    expect(ways(laid(gable(headings.east), ['ceiling'], { courses: 'north-south' }))).toEqual([
      'South slope: 24 north-south, from the east side',
      'North slope: 24 north-south, from the east side',
    ]);
  });

  test('what is flat between slopes goes with the largest slope', () => {
    const cut = measured({
      shape: size(`12'`, `10'`),
      ceiling: {
        form: { form: 'gable', ridge: headings.south, plate: len(`8'`), pitch: pitch('9/12') },
        cut: len(`10'`),
      },
    });
    expect(laid(cut, ['ceiling']).surfaces.map(({ run }) => run)).toEqual([
      'north-south',
      'north-south',
      'north-south',
    ]);
  });

  test('on a slope that rises to the north-east a recorded way keeps its way on the plan', () => {
    const shed = measured({
      shape: size(`12'`, `10'`),
      ceiling: { form: 'shed', low: headings['south-west'], plate: len(`8'`), pitch: pitch('9/12') },
    });
    expect(laid(shed, ['ceiling']).surfaces[0]).toMatchObject({ direction: 0, run: 'level along the slope' });
    // East is half level and half up the slope, where it is 1.25 times as long: atan 1.25 = 51.34 degrees.
    const turned = laid(shed, ['ceiling'], { courses: 'east-west' }).surfaces[0];
    expect(turned?.direction).toBeCloseTo(51.3402, 3);
    expect(turned?.startsAt).toBe('the south side');
  });

  test('level on walls, sheets from the top; upright as recorded', () => {
    expect(ways(laid(plain, ['north']))).toEqual(['North wall: 16 horizontal, from the floor']);
    expect(ways(laid(plain, ['north'], { courses: 'vertical' }))).toEqual([
      'North wall: 24 vertical, from the right-hand end',
    ]);
    expect(ways(laid(plain, ['north'], { lay: 'sheets', face: 54 }))).toEqual([
      'North wall: 2 horizontal, from the ceiling',
    ]);
    // Under a rake there is no level top to hang from.
    expect(ways(laid(gable(headings.east), ['west'], { lay: 'sheets', face: 48 }))[0]).toMatch(/from the floor$/u);
  });
});

test('what is no wall is begun at its bottom or top, and may not reach the floor', () => {
  const measure = measured({
    shape: size(`12'`, `10'`),
    ceiling: flat(`8'`),
    features: [
      {
        ...{ kind: 'niche', id: 'niche', name: 'Niche', wall: 'north' },
        ...{ at: `2'`, width: `2'`, height: `2'`, sill: `3'`, depth: `6"` },
      },
    ],
  });
  expect(ways(laid(measure, ['niche/back']))).toEqual(['Niche, Back: 4 horizontal, from the bottom']);
  expect(ways(laid(measure, ['niche/back'], { lay: 'sheets', face: 48 }))[0]).toMatch(/from the top$/u);
});

test('sheets for walls and ceiling are bought together, each surface with courses of its own', () => {
  const layout = laid(plain, ['walls', 'ceiling'], { lay: 'sheets', face: 48 });
  expect(layout.surfaces.map(({ place, courses }) => `${place} ${courses}`)).toEqual([
    'north 2',
    'east 2',
    'south 2',
    'west 2',
    'ceiling 3',
  ]);
  // 4 walls: 8 courses, 2 × (24 + 20) = 88'. Ceiling 10' across: 4' + 4' + 2', and 2' of width is half: 12' + 12' + 6'.
  expect(printLength(layout.bound)).toBe(`118'-0"`);
  expect(layout.bought).toBeGreaterThanOrEqual(layout.bound);
});

test('an opening up to the ceiling parts a course, and courses run on behind it', () => {
  const measure = measured({
    shape: size(`12'`, `10'`),
    ceiling: flat(`8'`),
    openings: [opening('O01', 'open', 'north', `4'`, `4' x 8'`)],
  });
  const layout = laid(measure, ['north'], { lay: 'sheets', face: 48 });
  // Two courses on each side of 4': four pieces of 4', two sheets of 8'.
  expect(layout.stock).toEqual([{ length: fromFeet(8), count: 2 }]);
  expect(layout.cuts).toEqual([{ length: fromFeet(4), from: fromFeet(8), count: 4 }]);
  expect(layout.surfaces).toHaveLength(1);
});

test('a floor that a void parts is laid through', () => {
  const measure = measured({
    shape: size(`12'`, `10'`),
    ceiling: flat(`8'`),
    voids: [{ name: 'Well', corners: box(`4'`, `0'`, `2'`, `10'`) }],
  });
  const layout = laid(measure, ['floor'], { courses: 'east-west' });
  expect(layout.surfaces.map(({ courses }) => courses)).toEqual([20]);
  // 20 courses of 4' and 6'. A joint lies where pieces meet within one of them, not at the well.
  const joints = layout.surfaces[0]?.joints.flat() ?? [];
  expect(joints.filter((at) => at <= fromFeet(0) || (at >= fromFeet(4) && at <= fromFeet(6)))).toEqual([]);
});

test('a product without stock lengths, such as carpet, is not laid out', () => {
  const carpet = option([{}], { face: { text: '', value: { kind: 'length', length: fromFeet(12) } } });
  const { places } = resolvePlaces(selection('floor'), plain);
  expect(layPlaces(places, carpet, category('area', { lay: 'boards' }).measure, plain)).toBeUndefined();
});

describe('behind what is built later', () => {
  // Bookcases of 10 × 7'-6" on a wall of 12 × 8 leave a strip; 4 ft sheets of 12' cover the whole wall in two.
  const bookcase = {
    kind: 'built-in',
    id: 'books',
    name: 'Bookcases',
    wall: 'south',
    at: `1'`,
    width: `10'`,
    depth: `1'`,
    height: `7'-6"`,
  };
  const study = measured({ shape: size(`12'`, `10'`), ceiling: flat(`8'`), features: [bookcase] });

  test('sheets run through behind a bookcase that does not hide the wall', () => {
    const sheets = { lay: 'sheets', face: 48 } as const;
    expect(laid(study, ['south'], { ...sheets, hiddenBy: [] }).stock).toEqual([{ length: fromFeet(12), count: 2 }]);
    expect(laid(study, ['south'], sheets).cuts).not.toEqual(laid(study, ['south'], { ...sheets, hiddenBy: [] }).cuts);
  });

  test('boards go on under a built-in, and over a breast on a slope', () => {
    const area = ({ surfaces, face, cuts }: LayoutSummary) =>
      cuts.reduce((sum, cut) => sum + ((cut.width ?? face) / fromFeet(1)) * (cut.length / fromFeet(1)) * cut.count, 0) *
      surfaces.length;
    expect(area(laid(study, ['floor'], { hiddenBy: [] }))).toBeCloseTo(120, 1);
    expect(area(laid(study, ['floor']))).toBeCloseTo(110, 1);
    const breast = {
      kind: 'chimney-breast',
      id: 'breast',
      name: 'Breast',
      wall: 'south',
      at: `4'`,
      width: `4'`,
      depth: `2'`,
    };
    const hall = measured({
      shape: size(`12'`, `10'`),
      ceiling: { form: 'shed', low: headings.south, plate: len(`8'`), pitch: pitch('9/12') },
      features: [breast],
    });
    // 120 × 1.25 = 150 sq ft up the slope; the breast takes 8 × 1.25 of it.
    expect(hall.ceiling.net).toBeCloseTo(140, 6);
    expect(area(laid(hall, ['ceiling'], { hiddenBy: [] }))).toBeCloseTo(150, 1);
    expect(area(laid(hall, ['ceiling']))).toBeCloseTo(140, 1);
  });
});
