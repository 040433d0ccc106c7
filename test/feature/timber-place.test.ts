import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { headings } from '../../src/base/geometry/index.js';
import { feet } from '../../src/base/units/index.js';
import { featureFindings } from '../../src/core/records/read-features.js';
import {
  featureKinds,
  timberOf,
  timberPieces,
  timbersOutside,
  type Timber,
  type TimberOutside,
  type TimberPiece,
} from '../../src/core/feature/index.js';
import type { RoomMeasure } from '../../src/core/model/index.js';
import { demoBook } from '../demo-house.js';
import { measured, problemsOf, told } from '../measure/measured.js';
import { flat, len, pitch, size, walk, type RoomText } from '../measure/room-record.js';

const shape = size(`24'`, `22'`);
const level = { shape, ceiling: flat(`9'`) };
const gable = {
  shape,
  ceiling: { form: 'gable', ridge: headings.north, plate: len(`14'`), pitch: pitch('8/12') },
} satisfies RoomText;

const section = { width: `7 1/2"`, depth: `9 1/2"` };
const written = (more: Record<string, unknown>) => ({
  kind: 'timber',
  id: 't',
  name: 'Beams',
  count: 1,
  length: `24'`,
  ...section,
  ...more,
});

function of(room: RoomText, more: Record<string, unknown>): { readonly timber: Timber; readonly measure: RoomMeasure } {
  const measure = measured({ ...room, features: [written(more)] });
  const timber = measure.features.map(timberOf)[0];
  if (!timber) throw new Error('no timber');
  return { timber, measure };
}

const round = (value: number): number => Math.round(value * 1e4) / 1e4;
const ends = (pieces: readonly TimberPiece[]) => pieces.map(({ from, to }) => [from.map(round), to.map(round)]);

function placed(room: RoomText, more: Record<string, unknown>) {
  const { timber, measure } = of(room, more);
  return ends(timberPieces(timber, measure));
}

describe('where pieces are', () => {
  test('no place, no pieces', () => {
    expect(placed(level, {})).toEqual([]);
  });

  test('level beams: the middle of the section, at each station', () => {
    const place = { count: 3, run: 'east-west', at: `4'`, spacing: `6'`, underside: `8'` };
    // 8' and half of 9 1/2" is 8.3958'.
    expect(placed(level, place)).toEqual([
      [
        [0, 4, 8.3958],
        [24, 4, 8.3958],
      ],
      [
        [0, 10, 8.3958],
        [24, 10, 8.3958],
      ],
      [
        [0, 16, 8.3958],
        [24, 16, 8.3958],
      ],
    ]);
    expect(placed(level, { run: 'north-south', at: `3'`, from: `1'`, length: `20'`, underside: `8'` })).toEqual([
      [
        [3, 1, 8.3958],
        [3, 21, 8.3958],
      ],
    ]);
  });

  test('posts stand north of the corner by `at` and east of it by `from`', () => {
    const post = { count: 2, length: `6'`, run: 'upright', at: `4'`, spacing: `6'`, from: `12'`, underside: `2'` };
    expect(placed(gable, post)).toEqual([
      [
        [12, 4, 2],
        [12, 4, 8],
      ],
      [
        [12, 10, 2],
        [12, 10, 8],
      ],
    ]);
  });

  test('a room is measured from the south-west corner of its plan, wherever its own coordinates begin', () => {
    const walls = walk(`north east 24'`, `east south 22'`, `south west 24'`, `west north 22'`);
    const { timber, measure } = of({ ...level, shape: walls }, { run: 'east-west', at: `4'`, underside: `8'` });
    const [piece] = timberPieces(timber, measure);
    const [west, south] = [
      Math.min(...measure.plan.map(({ x }) => feet(x))),
      Math.min(...measure.plan.map(({ y }) => feet(y))),
    ];
    expect(piece?.from.map(round)).toEqual([round(west), round(south + 4), 8.3958]);
  });

  test('rafters: one under each slope at each station, plumb under it by half of the depth', () => {
    // 8/12 is 1.20185 of plan on the slope: 14'-5" reaches 11.99542' of 12, and 4 3/4" square is 5.7088" plumb, 0.47573'.
    const pieces = placed(gable, {
      count: 4,
      length: `14'-5"`,
      run: 'east-west',
      at: `4'`,
      spacing: `6'`,
      follows: 'ceiling',
    });
    expect(pieces).toHaveLength(4);
    expect(pieces[0]).toEqual([
      [0, 4, 13.5243],
      [11.9954, 4, 21.5212],
    ]);
    expect(pieces[1]).toEqual([
      [12.0046, 4, 21.5212],
      [24, 4, 13.5243],
    ]);
    expect(pieces[3]?.[0]?.[1]).toBe(10);
  });

  test('rafters begin so far from the low end in plan', () => {
    const [west, east] = placed(gable, {
      count: 2,
      length: `12'`,
      from: `1'`,
      run: 'east-west',
      at: `4'`,
      follows: 'ceiling',
    });
    expect(west?.[0]?.[0]).toBe(1);
    expect(east?.[1]?.[0]).toBe(23);
  });

  test('a skylight in a slope leaves it one slope', () => {
    const sky = { kind: 'skylight', id: 's', name: 'Sky', x: `3'`, y: `3'`, width: `2'`, length: `3'`, depth: `1'` };
    const rafters = written({ count: 2, length: `14'-5"`, run: 'east-west', at: `4'`, follows: 'ceiling' });
    const measure = measured({ ...gable, features: [sky, rafters] });
    const timber = measure.features.map(timberOf).find((one) => one !== undefined);
    expect(timber && ends(timberPieces(timber, measure)).map(([, to]) => to?.[0])).toEqual([11.9954, 24]);
  });

  test('every point of a rafter’s axis is half of its depth from the slope, square to it', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const { timber, measure } = of(gable, { count: 2, length: `14'`, run: 'east-west', at: `9'`, follows: 'ceiling' });
    fc.assert(
      fc.property(share, fc.integer({ min: 0, max: 1 }), (t, side) => {
        const { from, to } = timberPieces(timber, measure)[side] as TimberPiece;
        const [x, z] = [from[0] + (to[0] - from[0]) * t, from[2] + (to[2] - from[2]) * t];
        const ceiling = 14 + (2 / 3) * Math.min(x, 24 - x);
        expect(((ceiling - z) * 3) / Math.sqrt(13)).toBeCloseTo(4.75 / 12, 6);
      }),
    );
  });
});

describe('what a place must say', () => {
  const problems = (room: RoomText, more: Record<string, unknown>) =>
    told(problemsOf({ ...room, features: [written(more)] }));

  test.each([
    [{ run: 'east-west', at: `4'` }, 'timber-height at features.0.run: Beams is placed, but at no height'],
    [
      { run: 'east-west', at: `4'`, underside: `8'`, follows: 'ceiling' },
      'timber-height at features.0.underside: Beams lies at a height of its own and right under the ceiling: one of the two',
    ],
    [
      { run: 'upright', at: `4'`, follows: 'ceiling' },
      'timber-height at features.0.follows: Beams is upright, so it lies under no slope',
    ],
    [
      { count: 2, run: 'east-west', at: `4'`, underside: `8'` },
      'timber-stations at features.0.at: Beams stands at more than one station, and how far apart they are is not said',
    ],
    [
      { count: 4, run: 'east-west', at: `4'`, follows: 'ceiling' },
      'timber-stations at features.0.at: Beams stands at more than one station, and how far apart they are is not said',
    ],
    [
      { count: 5, run: 'east-west', at: `4'`, spacing: `6'`, follows: 'ceiling' },
      'timber-stations at features.0.count: Beams is 5 pieces, which is no whole number of stations: the ceiling has 2 slopes over station 3',
    ],
    [
      { count: 2, run: 'north-south', at: `4'`, spacing: `6'`, follows: 'ceiling' },
      'timber-stations at features.0.follows: Beams follows the ceiling, which has no slope along the line of station 1',
    ],
    [
      { run: 'east-west', at: `40'`, underside: `8'` },
      `feature-outside-room at features.0.at: Beams stands 40'-0" out at station 1, and the room is 22'-0" from south to north`,
    ],
    [
      { count: 5, run: 'east-west', at: `4'`, spacing: `6'`, underside: `8'` },
      `feature-outside-room at features.0.spacing: Beams stands 28'-0" out at station 5, and the room is 22'-0" from south to north`,
    ],
    [
      { run: 'east-west', at: `4'`, from: `24'`, underside: `8'` },
      `feature-outside-room at features.0.from: Beams begins 24'-0" out, and the room is 24'-0" that way`,
    ],
    [
      { run: 'upright', at: `4'`, underside: `80'` },
      `feature-outside-room at features.0.underside: Beams lies 80'-0" up, and the ceiling is at most 22'-0" high`,
    ],
  ])('%o', (more, message) => {
    expect(problems(gable, more)).toEqual([message]);
  });

  test.each([
    ['run', 'at'],
    ['at', 'run'],
    ['spacing', 'run'],
    ['from', 'run'],
    ['underside', 'run'],
    ['follows', 'run'],
  ])('%s goes with %s', (key, needed) => {
    const value = { run: 'east-west', follows: 'ceiling' }[key] ?? `4'`;
    const found = featureFindings({ features: [written({ [key]: value })] }, featureKinds);
    expect(found.map(({ code, message }) => [code, message])).toEqual([
      ['key-missing', `this entry of 'features' lacks '${needed}'`],
    ]);
  });

  test('two rafters of one station need no spacing, and one beam none', () => {
    expect(problems(gable, { count: 2, run: 'east-west', at: `4'`, follows: 'ceiling' })).toEqual([]);
    expect(problems(level, { run: 'east-west', at: `4'`, underside: `8'` })).toEqual([]);
  });
});

describe('pieces that leave their room', () => {
  const outside = (room: RoomText, more: Record<string, unknown>): readonly TimberOutside[] => {
    const { timber, measure } = of(room, more);
    return timbersOutside(timber, measure);
  };
  const said = (found: readonly TimberOutside[]) =>
    found.map(({ piece, through, by, x, y }) => [piece, through, ...[by, x, y].map((length) => round(feet(length)))]);

  test('through a level ceiling, by what is over it', () => {
    const beam = (underside: string) => outside(level, { run: 'east-west', at: `4'`, underside });
    expect(beam(`8'-2 1/2"`)).toEqual([]);
    expect(said(beam(`8'-3 1/2"`))).toEqual([[1, 'ceiling', round(1 / 12), 0, 4]]);
  });

  test('a chord whose top is over the plate goes through the slope at both walls', () => {
    const chord = { depth: `11 1/2"`, run: 'east-west', at: `4'` };
    const raised = { ...chord, underside: `13'-7"` };
    expect(said(outside(gable, raised))).toEqual([[1, 'ceiling', round(6.5 / 12), 0, 4]]);
    expect(outside(gable, { ...chord, underside: `13'-0 1/2"` })).toEqual([]);
  });

  test('past a wall by more than what is added at that end', () => {
    const beam = (more: Record<string, unknown>) =>
      said(outside(level, { run: 'east-west', at: `4'`, underside: `8'`, 'end-allowances': [`2"`, `6"`], ...more }));
    expect(beam({ length: `24'-6"` })).toEqual([]);
    expect(beam({ length: `24'-7"` })).toEqual([[1, 'wall', round(1 / 12), 24, 4]]);
    expect(beam({ from: `0"`, at: `21'-9"` })).toEqual([[1, 'wall', 24, 0, 21.75]]);
  });

  test('a beam that crosses a corner which is cut out', () => {
    const walls = walk(
      `north east 18'`,
      `east south 12'`,
      `a west 4'`,
      `b south 6'`,
      `south west 14'`,
      `west north 18'`,
    );
    const beam = { length: `18'`, run: 'east-west', underside: `8'` };
    const room = { ...level, shape: walls };
    expect(said(outside(room, { ...beam, at: `3'` })).map(([, through, by]) => [through, by])).toEqual([['wall', 4]]);
    expect(outside(room, { ...beam, at: `12'` })).toEqual([]);
  });

  test('a rafter past the ridge, and a post through the slope', () => {
    const rafter = { count: 2, run: 'east-west', at: `4'`, follows: 'ceiling', length: `15'` };
    expect(said(outside(gable, rafter)).map(([piece, through]) => [piece, through])).toEqual([
      [1, 'slope'],
      [2, 'slope'],
    ]);
    const post = { length: `8'`, run: 'upright', at: `4'`, underside: `13'` };
    expect(outside(gable, { ...post, from: `12'` })).toEqual([]);
    // At 9' the ceiling is at 20', and at the post's west side, 4 3/4" on, at 19.7361'.
    expect(said(outside(gable, { ...post, from: `9'` }))).toEqual([[1, 'ceiling', round(21 - 19.736111), 8.6042, 4]]);
  });
});

test('the demo’s timbers are placed, and lie in their rooms', async () => {
  const book = await demoBook('2026-04-20');
  const found = book.rooms.flatMap(({ slug, measure }) =>
    measure.features.flatMap((feature) => {
      const timber = timberOf(feature);
      return timber
        ? [[`${slug}/${feature.id}`, timberPieces(timber, measure).length, timbersOutside(timber, measure).length]]
        : [];
    }),
  );
  expect(found).toEqual([
    ['great-room/chords', 3, 0],
    ['great-room/rafters', 6, 0],
    ['great-room/king-posts', 3, 0],
    ['kitchen/beams', 3, 0],
  ]);
});
