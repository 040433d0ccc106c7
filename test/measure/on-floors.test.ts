import { describe, expect, test } from 'vitest';
import { faceMarks } from '../../src/core/feature/index.js';
import type { FeatureMeasure, RoomMeasure } from '../../src/core/model/index.js';
import { feet, type Length } from '../../src/base/units/index.js';
import { measured, problemsOf, told, wall } from './measured.js';
import { box, flat, len, pitch, size, type RoomText } from './room-record.js';

/** 20' × 14' under 9'. A dais 4' deep, up 7", lies along the north wall; a pit 4' deep, sunk 1'-2", along the south one. */
const floor = [
  { name: 'Dais', height: len(`7"`), over: box(`0'`, `10'`, `20'`, `4'`) },
  { name: 'Pit', height: len(`-1'-2"`), over: box(`0'`, `0'`, `20'`, `4'`) },
];
const withFeatures = (...features: Record<string, unknown>[]): RoomText => ({
  shape: size(`20'`, `14'`),
  ceiling: flat(`9'`),
  floor,
  features,
});
const inRoom = (...features: Record<string, unknown>[]): RoomMeasure => measured(withFeatures(...features));
const only = ({ features: [feature] }: RoomMeasure): FeatureMeasure => {
  if (!feature) throw new Error('no feature');
  return feature;
};
const problems = (feature: Record<string, unknown>): readonly string[] => told(problemsOf(withFeatures(feature)));
const inFeet = (length: Length | undefined): number => feet(length ?? (NaN as Length));

const bench = { kind: 'built-in', id: 'bench', name: 'Bench', at: `2'`, width: `4'`, depth: `2'`, height: `3'` };
const breast = { kind: 'chimney-breast', id: 'breast', name: 'Breast', at: `10'`, width: `5'`, depth: `2'` };
const pony = { kind: 'half-wall', id: 'pony', name: 'Half wall', go: 'east', run: `6'`, height: `3'`, thickness: `6"` };

describe('on a dais of 7"', () => {
  test('a built-in is as high as it is, and hides 3 feet of the wall above the dais', () => {
    const room = inRoom({ ...bench, wall: 'north' });
    const { faces, covers, floor: under } = only(room);
    expect(faces[0]?.net).toBeCloseTo(12, 9);
    expect(inFeet(under)).toBeCloseTo(7 / 12, 9);
    expect([covers[0]?.sill, covers[0]?.height]).toEqual([len(`7"`), len(`3'-7"`)]);
    expect(wall(room, 'north').net).toBeCloseTo(20 * (9 - 7 / 12) - 12, 9);
  });

  test('a breast rises from it to the ceiling: front, corners and what it hides are 8 feet and 5 inches high', () => {
    const room = inRoom({ ...breast, wall: 'north' });
    const { faces, runs } = only(room);
    expect(faces.map(({ net }) => net)).toEqual(
      [5, 2, 2].map((width) => expect.closeTo(width * (9 - 7 / 12), 6) as unknown),
    );
    expect(inFeet(runs[0]?.length)).toBeCloseTo(2 * (9 - 7 / 12), 6);
    expect(wall(room, 'north').net).toBeCloseTo(15 * (9 - 7 / 12), 6);
  });

  test('a breast of 5 feet ends 5 feet above it, and is drawn there', () => {
    const [mass] = faceMarks(only(inRoom({ ...breast, wall: 'north', height: `5'` })), 'north');
    if (mass?.role !== 'mass') throw new Error('no mass');
    const heights = mass.outlines.flatMap((outline) => outline.map(({ y }) => y));
    expect([Math.min(...heights), Math.max(...heights)]).toEqual([len(`7"`), len(`5'-7"`)]);
  });

  test('what would end above the ceiling there is told', () => {
    expect(problems({ ...bench, wall: 'north', height: `8'-5"` })).toEqual([]);
    expect(problems({ ...bench, wall: 'north', height: `8'-6"` })).toEqual([
      `feature-above-ceiling at features.0.height: Bench ends 9'-1" above the floor, but the ceiling there comes down to 9'-0"`,
    ]);
  });

  test('a niche begins at it or above', () => {
    const niche = { kind: 'niche', id: 'niche', name: 'Niche', at: `1'`, width: `1'`, height: `2'`, depth: `4"` };
    expect(problems({ ...niche, wall: 'north', sill: `7"` })).toEqual([]);
    expect(problems({ ...niche, wall: 'south', sill: `0"` })).toEqual([]);
    expect(problems({ ...niche, wall: 'north', sill: `4"` })).toEqual([
      `feature-below-floor at features.0.sill: Niche begins 4" above the room's floor, but the floor before it is at 7"`,
    ]);
  });
});

describe(`in a pit of 1'-2"`, () => {
  test('a built-in hides the wall from the bottom of the pit', () => {
    const { covers } = only(inRoom({ ...bench, wall: 'south' }));
    expect([covers[0]?.sill, covers[0]?.height]).toEqual([len(`-1'-2"`), len(`1'-10"`)]);
  });

  test('a breast is 10 feet and 2 inches high', () => {
    const [front] = only(inRoom({ ...breast, wall: 'south' })).faces;
    expect(front?.net).toBeCloseTo(5 * (9 + 14 / 12), 6);
  });

  test('a half wall stands on its bottom, as high as it is', () => {
    const { faces, floor: under } = only(inRoom({ ...pony, x: `2'`, y: `1'` }));
    expect(faces[0]?.net).toBeCloseTo(18, 9);
    expect(under).toBe(len(`-1'-2"`));
  });
});

describe('over an edge of the floor', () => {
  test('each is told which parts it stands on', () => {
    const across = 'feature-across-floors at features.0';
    const parts = `stands on parts of the floor at different heights: Dais at 7", Floor at 0"`;
    expect(problems({ ...bench, wall: 'north', depth: `5'` })).toEqual([`${across}: Bench ${parts}`]);
    expect(problems({ ...breast, wall: 'north', depth: `4'-6"` })).toEqual([`${across}: Breast ${parts}`]);
    expect(problems({ ...pony, x: `2'`, y: `9'-9"` })).toEqual([`${across}: Half wall ${parts}`]);
    expect(problems({ ...bench, wall: 'north', depth: `4'` })).toEqual([]);
  });

  test('on a ramp', () => {
    const ramp = { low: { x: 0, y: -1 }, pitch: pitch('1/12') };
    const sloped = [{ name: 'Ramp', height: len(`0"`), over: box(`0'`, `10'`, `20'`, `4'`), ramp }];
    expect(told(problemsOf({ ...withFeatures({ ...bench, wall: 'north' }), floor: sloped }))).toEqual([
      `feature-across-floors at features.0: Bench stands on the ramp 'Ramp'`,
    ]);
  });
});
