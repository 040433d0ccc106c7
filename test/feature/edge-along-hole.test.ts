import { describe, expect, test } from 'vitest';
import { measured, problemsOf, told } from '../measure/measured.js';
import { box, flat, len, size, type RoomText } from '../measure/room-record.js';

describe('drop edge along a hole in the floor', () => {
  const voids = [{ name: 'Well', corners: box(`4'`, `3'`, `6'`, `8'`), sides: ['south', 'east', 'north', 'west'] }];
  const loft = (edge: Record<string, string>): RoomText => ({
    shape: size(`20'`, `16'`),
    ceiling: flat(`8'`),
    voids,
    features: [{ kind: 'drop-edge', id: 'rail', name: 'Well rail', drop: `9'-6"`, ...edge }],
  });

  test('takes all of the side, or a stretch of it', () => {
    const run = (edge: Record<string, string>) => measured(loft(edge)).features[0]?.runs[0]?.length;
    expect(run({ void: 'Well', side: 'east' })).toBe(len(`8'`));
    expect(run({ void: 'Well', side: 'south', at: `1'` })).toBe(len(`5'`));
    expect(run({ void: 'Well', side: 'south', at: `1'`, run: `2'-6"` })).toBe(len(`2'-6"`));
  });

  test.each([
    [{}, `edge-place at features.0: Well rail runs along no side`],
    [
      { void: 'Well', side: 'east', wall: 'north' },
      `edge-place at features.0: Well rail runs along a wall and along a hole`,
    ],
    [
      { void: 'Wall', side: 'east' },
      `edge-place at features.0.void: Well rail runs along a hole 'Wall', which the floor does not have`,
    ],
    [{ void: 'Well' }, `edge-place at features.0: Well rail does not say along which side of 'Well' it runs`],
    [{ void: 'Well', side: 'est' }, `edge-place at features.0.side: 'Well' has no side 'est'`],
    [
      { void: 'Well', side: 'east', run: `9'` },
      `feature-wider-than-wall at features.0.run: Well rail is 9'-0" wide, wider than its side 'east' of 'Well' of 8'-0"`,
    ],
    [
      { void: 'Well', side: 'east', at: `9'` },
      `feature-past-wall at features.0.at: Well rail runs 1'-0" past the right end of side 'east' of 'Well'`,
    ],
  ])('%j is refused', (edge, message) => {
    expect(told(problemsOf(loft(edge)))).toEqual([message]);
  });
});
