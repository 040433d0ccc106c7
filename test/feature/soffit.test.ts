import { describe, expect, test } from 'vitest';
import { feet } from '../../src/base/units/index.js';
import { measured, problemsOf, told, wall } from '../measure/measured.js';
import type { WalkedWall } from '../../src/core/model/index.js';
import { box, flat, len, size, walk } from '../measure/room-record.js';

const soffit = {
  kind: 'soffit',
  id: 'duct',
  name: 'Soffit',
  wall: 'north',
  at: `0'`,
  length: `10'`,
  depth: `2'`,
  drop: `1'`,
};
/** 14' by 12', 9' high. */
const room = (more: Record<string, unknown> = {}) => ({
  shape: size(`14'`, `12'`),
  ceiling: flat(`9'`),
  features: [{ ...soffit, ...more }],
});
const facesIn = (more: Record<string, unknown> = {}): Record<string, number> =>
  Object.fromEntries((measured(room(more)).features[0]?.faces ?? []).map(({ id, net }) => [id, net]));

describe(`a soffit 10'-0" × 2'-0", 1'-0" deep, in a corner along a wall`, () => {
  test('has a bottom of 20 sq ft, a front of 10, an end of 2, and the other end against the wall', () => {
    expect(facesIn()).toEqual({ 'duct/bottom': 20, 'duct/front': 10, 'duct/right-end': 2 });
    expect(measured(room()).features[0]?.runs.map(({ length }) => feet(length))).toEqual([12]);
  });

  test('hides 20 sq ft of the ceiling, 10 of its wall under the ceiling, and 2 of the wall in the corner', () => {
    const measure = measured(room());
    expect(measure.ceiling.net).toBeCloseTo(168 - 20, 9);
    expect(wall(measure, 'north').net).toBeCloseTo(14 * 9 - 10, 9);
    expect(wall(measure, 'west').net).toBeCloseTo(12 * 9 - 2, 9);
    expect(wall(measure, 'east').net).toBeCloseTo(12 * 9, 9);
    expect(measure.floor.net).toBe(168);
    expect(wall(measure, 'north').deductions[0]).toMatchObject({ kind: 'feature', hidden: { by: 'soffit' } });
  });
});

test('clear of the corners it has two ends; from wall to wall none', () => {
  expect(facesIn({ at: `1'` })).toEqual({
    'duct/bottom': 20,
    'duct/front': 10,
    'duct/left-end': 2,
    'duct/right-end': 2,
  });
  expect(facesIn({ length: `14'` })).toEqual({ 'duct/bottom': 28, 'duct/front': 14 });
});

test('a skylight above it is told, whichever is recorded first', () => {
  const sky = { kind: 'skylight', id: 'sky', name: 'Sky', x: `2'`, y: `9'`, width: `2'`, length: `2'`, depth: `1'` };
  const both = (features: Record<string, unknown>[]) => told(problemsOf({ ...room(), features }));
  expect(both([sky, soffit])).toEqual([
    'skylight-overlap at features.1.at: Soffit and Sky take the same 2 sq ft of the ceiling, in plan',
  ]);
  expect(both([soffit, sky])).toEqual([
    'skylight-overlap at features.1.x: Sky and Soffit take the same 2 sq ft of the ceiling, in plan',
  ]);
});

test('what does not fit is told with its place', () => {
  expect(told(problemsOf(room({ length: `15'` })))).toEqual([
    expect.stringContaining('feature-wider-than-wall at features.0.length'),
  ]);
  expect(told(problemsOf(room({ depth: `13'` })))).toEqual([
    'feature-outside-room at features.0: 10 sq ft of the 130 sq ft that Soffit hangs over lie outside the room',
  ]);
  expect(told(problemsOf(room({ drop: `9'` })))).toEqual([
    `soffit-ceiling at features.0.drop: Soffit drops 9'-0" from a ceiling of 9'-0"`,
  ]);
});

/** The same room walked round, with something said of its walls. */
const walked = (said: Record<string, Partial<WalkedWall>>, more: Record<string, unknown> = {}) => {
  const shape = walk(`north east 14'`, `east south 12'`, `south west 14'`, `west north 12'`);
  if (shape.by !== 'walk') throw new Error('no walk');
  const walls = shape.walls.map((one) => ({ ...one, ...said[one.name] }));
  return { ...room({ length: `14'`, ...more }), shape: { ...shape, walls } };
};

test('beside an arc its end is seen: the wall bows away from the straight line between its ends', () => {
  const measure = measured(walked({ east: { arc: { bows: 'out', rise: len(`2'`) } } }));
  const faces = measure.features[0]?.faces.map(({ id, net }) => [id, net]);
  expect(faces).toEqual([
    ['duct/bottom', 28],
    ['duct/front', 14],
    ['duct/right-end', 2],
  ]);
  expect(wall(measure, 'east').deductions).toEqual([]);
});

test('where a hole or a wall that leans takes the ceiling it cannot hang', () => {
  // 6' in 12': at the ceiling of 9' the east wall stands 4'-6" in.
  const east = { leans: { by: len(`6'`), at: len(`12'`) } };
  expect(told(problemsOf(walked({ east })))).toEqual([
    'soffit-ceiling at features.0.at: Soffit hangs where there is no ceiling: a hole or a wall that leans takes 9 sq ft over it',
  ]);
  expect(problemsOf(walked({ east }, { length: `9'-6"` }))).toEqual([]);
  const hole = { name: 'Well', corners: box(`0'`, `10'`, `14'`, `2'`), isOpenAbove: true };
  expect(told(problemsOf({ ...room(), voids: [hole] }))).toEqual([
    'soffit-ceiling at features.0.at: Soffit hangs where there is no ceiling: a hole or a wall that leans takes 20 sq ft over it',
  ]);
});
