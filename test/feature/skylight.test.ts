import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { headings } from '../../src/base/geometry/index.js';
import type { CeilingForm, FeatureMeasure } from '../../src/core/model/index.js';
import { feet, type Length } from '../../src/base/units/index.js';
import { layPlaces, resolvePlaces, takeOff } from '../../src/core/takeoff/index.js';
import { measured, problemsOf, regionArea, told } from '../measure/measured.js';
import { box, flat, len, pitch, size, walk } from '../measure/room-record.js';
import { category, option, selection } from '../takeoff/room.js';

const sky = {
  kind: 'skylight',
  id: 'sky',
  name: 'Skylight',
  x: `4'`,
  y: `3'`,
  width: `2'`,
  length: `4'`,
  depth: `1'`,
};
const gable = (slope: string): CeilingForm => ({
  form: 'gable',
  ridge: headings.east,
  plate: len(`8'`),
  pitch: pitch(slope),
});
/** 24' east-west by 20' north-south: slopes of 10' in plan each. */
const under = (ceiling: CeilingForm, ...features: Record<string, unknown>[]) =>
  measured({ shape: size(`24'`, `20'`), ceiling, features });
const only = ({ features: [feature] }: ReturnType<typeof under>): FeatureMeasure => {
  if (!feature) throw new Error('no skylight');
  return feature;
};
const faces = (feature: FeatureMeasure): Record<string, number> =>
  Object.fromEntries(feature.faces.map(({ id, net }) => [id.replace('sky/', ''), Math.round(net * 1e6) / 1e6]));
const root2 = Math.SQRT2;

describe('a skylight of 2\'-0" by 4\'-0" in a slope of 12:12', () => {
  test('takes 8 sq ft of the slope, not of the plan', () => {
    const { ceiling } = under(gable('12/12'), sky);
    expect(ceiling.gross).toBeCloseTo(24 * 20 * root2, 6);
    expect(ceiling.net).toBeCloseTo(24 * 20 * root2 - 8, 6);
    expect(ceiling.deductions).toEqual([{ what: 'Skylight', of: 'sky', kind: 'opening', area: expect.closeTo(8, 6) }]);
    expect(regionArea(ceiling.regions)).toBeCloseTo(24 * 20 * root2 - 8, 5);
    expect(ceiling.planArea).toBeCloseTo(480 - 8 / root2, 6);
  });

  test('a square shaft has its perimeter times its depth of faces, and both edges are that long', () => {
    const feature = only(under(gable('12/12'), sky));
    expect(faces(feature)).toEqual({ head: 2, foot: 2, left: 4, right: 4 });
    expect(feature.runs.map(({ id, length }) => [id, feet(length)])).toEqual([
      ['sky/edge', 12],
      ['sky/frame', 12],
    ]);
    expect(feature.counts).toEqual([{ id: 'sky/skylights', name: 'Skylights', count: 1 }]);
  });

  test('a plumb foot and a level head each open the ceiling by a foot, for a shaft of one', () => {
    const measure = under(gable('12/12'), { ...sky, head: 'level', foot: 'plumb' });
    // The ceiling's opening is 1 + 4 + 1 long; both sides slant at 45°, √2 long; the jambs are trapezoids of 4 and 6.
    expect(measure.ceiling.net).toBeCloseTo(480 * root2 - 12, 6);
    const feature = only(measure);
    expect(feature.faces.map(({ net }) => net)).toEqual(
      [2 * root2, 2 * root2, 5, 5].map((area) => expect.closeTo(area, 9)),
    );
    expect(feature.runs.map(({ length }) => feet(length))).toEqual([16, 12]);
    expect(feature.facts.map(({ text }) => text)).toEqual([
      `2'-0" × 4'-0" up the slope`,
      `1'-0" deep, head level, foot plumb`,
      `2'-0" × 6'-0"`,
    ]);
  });

  test('its lower left corner is where the record says, seen up the slope', () => {
    const south = only(under(gable('12/12'), sky)).opensCeiling ?? [];
    expect(south.map(({ x, y }) => [feet(x), Math.round(feet(y) * 1e4) / 1e4])).toEqual([
      [4, 3],
      [6, 3],
      [6, 5.8284],
      [4, 5.8284],
    ]);
    // On the north slope up is south, and left is east.
    const north = only(under(gable('12/12'), { ...sky, y: `17'` })).opensCeiling ?? [];
    expect(north.map(({ x, y }) => [feet(x), Math.round(feet(y) * 1e4) / 1e4])).toEqual([
      [4, 17],
      [2, 17],
      [2, 14.1716],
      [4, 14.1716],
    ]);
  });
});

describe('other slopes', () => {
  // 3:4 rises 0.75: over 8" a plumb foot goes 6" down and is 10" long, a level head 10 2/3" up and is 13 1/3" long.
  test('9:12 with 8" of depth', () => {
    const feature = only(under(gable('9/12'), { ...sky, depth: `8"`, head: 'level', foot: 'plumb' }));
    const [head, foot, left] = feature.faces.map(({ net }) => net);
    expect(head).toBeCloseTo((2 * 40) / 36, 9);
    expect(foot).toBeCloseTo((2 * 10) / 12, 9);
    expect(left).toBeCloseTo(((4 + 4 + 6 / 12 + 32 / 36) / 2) * (8 / 12), 9);
  });

  test('plumb on both sides is a parallelogram: the hole is as long as the skylight, further down', () => {
    const measure = under(gable('9/12'), { ...sky, head: 'plumb', foot: 'plumb' });
    expect(measure.ceiling.deductions[0]?.area).toBeCloseTo(8, 6);
    expect(only(measure).faces.map(({ net }) => net)).toEqual([2.5, 2.5, 4, 4].map((area) => expect.closeTo(area, 9)));
  });

  test('a flat ceiling: length runs north', () => {
    const measure = under(flat(`9'`), sky);
    expect(measure.ceiling.net).toBe(480 - 8);
    expect(faces(only(measure))).toEqual({ head: 2, foot: 2, left: 4, right: 4 });
  });

  test('in any pitch and place the slope loses width × length of the hole, and the faces are those of the closed form', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 18 }),
        fc.integer({ min: 6, max: 36 }),
        fc.integer({ min: 6, max: 36 }),
        fc.integer({ min: 1, max: 12 }),
        fc.boolean(),
        (rise, wide, long, deep, isPlumb) => {
          const measure = under(gable(`${rise}/12`), {
            ...sky,
            ...{ width: `${wide}"`, length: `${long}"`, depth: `${deep}"`, foot: isPlumb ? 'plumb' : 'square' },
          });
          const slope = rise / 12;
          const [w, l, d] = [wide / 12, long / 12, deep / 12];
          const grown = isPlumb ? d * slope : 0;
          expect(measure.ceiling.gross - measure.ceiling.net).toBeCloseTo(w * (l + grown), 6);
          const all = only(measure).faces.reduce((sum, { net }) => sum + net, 0);
          expect(all).toBeCloseTo(w * d + w * (isPlumb ? d * Math.hypot(1, slope) : d) + d * (2 * l + grown), 6);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('the faces drawn are as large as they say', () => {
    const { faces: all } = only(under(gable('9/12'), { ...sky, head: 'level', foot: 'plumb' }));
    for (const { net, regions } of all) expect(regionArea(regions)).toBeCloseTo(net, 6);
  });
});

describe('what is taken off', () => {
  const measure = under(gable('12/12'), sky);
  const netOf = (at: string, by = 'area', rule = {}): number => {
    const chosen = selection(at);
    const { places } = resolvePlaces(chosen, measure);
    const input = { selection: chosen, category: category(by, rule), measure };
    return takeOff(input, places, option([{}])).takeoffs[0]?.net ?? NaN;
  };

  test('it is an opening of the ceiling: a rule that leaves small ones in leaves it in, whatever hides a surface', () => {
    expect(netOf('ceiling')).toBeCloseTo(480 * root2 - 8, 6);
    expect(netOf('ceiling', 'area', { hiddenBy: [] })).toBeCloseTo(480 * root2 - 8, 6);
    expect(netOf('ceiling', 'area', { openings: { rule: 'over', area: 10 } })).toBeCloseTo(480 * root2, 6);
  });

  test('its shaft, its edges and itself are places', () => {
    expect(netOf('sky')).toBeCloseTo(12, 6);
    expect(netOf('sky/head')).toBeCloseTo(2, 6);
    expect(netOf('sky/frame', 'run')).toBeCloseTo(12, 6);
    expect(netOf('sky', 'each')).toBe(1);
  });

  test('boards are laid around it', () => {
    const board = option([{}], {
      face: { text: '', value: { kind: 'length', length: len(`6"`) } },
      stock: { text: '', value: { kind: 'lengths', lengths: [8, 12, 16].map((count) => len(`${count}'`)) } },
    });
    const { places } = resolvePlaces(selection('ceiling'), measure);
    const layout = layPlaces(places, board, category('area', { lay: 'boards' }).measure, measure, undefined);
    expect(layout?.surface.covered).toBeCloseTo(480 * root2 - 8, 3);
  });
});

describe('where it cannot be', () => {
  const problems = (ceiling: CeilingForm, ...features: Record<string, unknown>[]) =>
    told(problemsOf({ shape: size(`24'`, `20'`), ceiling, features }));

  test('outside of the ceiling', () => {
    expect(problems(gable('12/12'), { ...sky, x: `23'` })).toEqual([
      'skylight-outside-ceiling at features.0.x: 2.8 sq ft of the 5.7 sq ft that Skylight takes of the plan lie outside the ceiling',
    ]);
  });

  test('across a ridge, also where only the opened shaft reaches over it', () => {
    const across = 'skylight-across-planes at features.0.x: Skylight runs over an edge of its plane';
    expect(problems(gable('12/12'), { ...sky, y: `8'` })).toEqual([expect.stringContaining(across)]);
    // 7'-1" and 4/√2 are 9'-11": inside, and with a level head of 1'-0" in 12:12 it is 10'-7".
    expect(problems(gable('12/12'), { ...sky, y: `7'-1"` })).toEqual([]);
    expect(problems(gable('12/12'), { ...sky, y: `7'-1"`, head: 'level' })).toEqual([expect.stringContaining(across)]);
  });

  test('where another is, or what reaches the ceiling', () => {
    const other = { ...sky, id: 'other', name: 'Other', x: `5'` };
    expect(problems(gable('12/12'), sky, other)).toEqual([
      'skylight-overlap at features.1.x: Other and Skylight take the same 2.83 sq ft of the ceiling, in plan',
    ]);
    expect(problems(gable('12/12'), sky, { ...other, x: `6'` })).toEqual([]);
  });

  test('a shaft that meets no ceiling', () => {
    expect(problems(flat(`9'`), { ...sky, head: 'level' })).toEqual([
      'skylight-shaft at features.0.head: Skylight has a shaft with a level head, which never meets the flat ceiling',
    ]);
    expect(problems(gable('12/12'), { ...sky, depth: `4'`, head: 'plumb' })).toEqual([
      'skylight-shaft at features.0.depth: the shaft of Skylight, head plumb and foot square, closes before it comes down to the ceiling',
    ]);
  });

  test('over a hole that goes through', () => {
    const voids = [{ name: 'Well', corners: box(`3'`, `2'`, `4'`, `6'`), isOpenAbove: true }];
    const found = told(problemsOf({ shape: size(`24'`, `20'`), ceiling: gable('12/12'), features: [sky], voids }));
    expect(found).toEqual([expect.stringContaining('skylight-outside-ceiling')]);
  });
});

test('a metric record comes to the same: 600 mm by 1.20 m at 45°, 300 mm deep', () => {
  const feature = only(
    under(gable('12/12'), {
      ...sky,
      x: '1.20 m',
      y: '900 mm',
      width: '600 mm',
      length: '1.20 m',
      depth: '300 mm',
      foot: 'plumb',
    }),
  );
  const squareFoot = 0.3048 ** 2;
  // Foot 0.6 × 0.3·√2; each jamb (1.2 + 1.5)/2 × 0.3 = 0.405 m².
  expect(feature.faces.map(({ net }) => net * squareFoot)).toEqual(
    [0.18, 0.18 * root2, 0.405, 0.405].map((area) => expect.closeTo(area, 9)),
  );
  expect(feature.runs[0]?.length).toBe(4_200_000_000 as Length);
});

test('where walls that lean leave no ceiling it is told, not left out', () => {
  const leans = { by: len(`10'`), at: len(`5'`) };
  const shape = walk(`north east 24'`, `east south 20'`, `south west 24'`, `west north 20'`);
  if (shape.by !== 'walk') throw new Error('no walk');
  const walls = shape.walls.map((one) => (/north|south/u.test(one.name) ? { ...one, leans } : one));
  expect(told(problemsOf({ shape: { ...shape, walls }, ceiling: flat(`9'`), features: [sky] }))).toEqual([
    'skylight-outside-ceiling at features.0.x: Skylight is in a room without a ceiling: walls that lean, or holes, take all of it',
  ]);
});
