import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ceilingOf,
  draftHall,
  drafted,
  extruded,
  faceted,
  leftOut,
  metricHouse,
  modelText,
  type GivenSpace,
  type Triple,
} from './model-text.js';

/** Kinds of bodies, each against figures worked by hand; in metres, so that records are in metres. */

describe('what no record holds', () => {
  test('a floor in two heights', () => {
    const step = extruded(
      [
        [0, 0],
        [3, 0],
        [3, 2.5],
        [2, 2.5],
        [2, 2.8],
        [0, 2.8],
      ],
      4,
    );
    const lying: GivenSpace['body'] = (add) => {
      const solid = step(add);
      const [origin, z, x] = [
        add('IFCCARTESIANPOINT', '(0.,4.,0.)'),
        add('IFCDIRECTION', '(0.,-1.,0.)'),
        add('IFCDIRECTION', '(1.,0.,0.)'),
      ];
      const target = add('IFCCARTESIANTRANSFORMATIONOPERATOR3D', `${x},$,${origin},$,${z}`);
      const map = add(
        'IFCREPRESENTATIONMAP',
        `${add('IFCAXIS2PLACEMENT3D', `${add('IFCCARTESIANPOINT', '(0.,0.,0.)')},$,$`)},${add('IFCSHAPEREPRESENTATION', `$,'Body','SweptSolid',(${solid})`)}`,
      );
      return add('IFCMAPPEDITEM', `${map},${target}`);
    };
    expect(leftOut(draftHall(lying))).toEqual([]);
    expect(draftHall(lying).files.get('content/rooms/hall.md')).toContain('size: 3.00 m x 4.00 m');
  });

  test('walls that lean out', () => {
    const places: readonly Triple[] = [
      [0, 0, 0],
      [3, 0, 0],
      [3, 3, 0],
      [0, 3, 0],
      [-1, 0, 3],
      [4, 0, 3],
      [4, 3, 3],
      [-1, 3, 3],
    ];
    const faces = [
      [3, 2, 1, 0],
      [0, 1, 5, 4],
      [1, 2, 6, 5],
      [2, 3, 7, 6],
      [3, 0, 4, 7],
      [4, 5, 6, 7],
    ];
    expect(leftOut(draftHall(faceted(places, faces)))).toEqual([
      '#28 1 Hall: its ceiling is 166.7 % of its floor: its floor is not level, or a wall of it leans'.replace(
        '#28',
        /#\d+/u.exec(leftOut(draftHall(faceted(places, faces)))[0] ?? '')?.[0] ?? '',
      ),
    ]);
  });

  test('two rooms apart in one space', () => {
    const two: GivenSpace['body'] = (add) =>
      `${extruded(
        [
          [0, 0],
          [2, 0],
          [2, 2],
          [0, 2],
        ],
        2,
      )(add)},${extruded(
        [
          [3, 0],
          [5, 0],
          [5, 2],
          [3, 2],
        ],
        2,
      )(add)}`;
    expect(leftOut(draftHall(two))[0]).toContain('its floor is in several parts');
  });
});

test('a hole through a room is a void up to the ceiling, and asked about', () => {
  const one = draftHall(
    extruded(
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [0, 4],
      ],
      2.5,
      [
        [
          [1, 1],
          [2, 1],
          [2, 1.5],
          [1, 1.5],
        ],
      ],
    ),
  );
  expect(leftOut(one)).toEqual([]);
  expect(one.files.get('content/rooms/hall.md')).toContain(
    'voids:\n  - { name: Hole 1, x: 1.00 m, y: 1.00 m, width: 1.00 m, depth: 500 mm, ceiling: open }',
  );
  expect(one.spaces[0]?.asks).toEqual(['its floor has 1 hole, drafted up to the ceiling: shaft, column or well?']);
});

test('two solids that touch are one room', () => {
  const two: GivenSpace['body'] = (add) =>
    `${extruded(
      [
        [0, 0],
        [2, 0],
        [2, 2],
        [0, 2],
      ],
      2.5,
    )(add)},${extruded(
      [
        [2, 0],
        [5, 0],
        [5, 2],
        [2, 2],
      ],
      2.5,
    )(add)}`;
  expect(draftHall(two).files.get('content/rooms/hall.md')).toContain('size: 5.00 m x 2.00 m\nceiling: flat 2.50 m');
});

test('odd angles are an outline', () => {
  const text = draftHall(
    extruded(
      [
        [0, 0],
        [5, 0],
        [4, 3],
        [0, 3],
      ],
      2.5,
    ),
  ).files.get('content/rooms/hall.md');
  expect(text).toContain(`outline:
  - { x: 0 mm, y: 3.00 m, wall: north }
  - { x: 4.00 m, y: 3.00 m, wall: east }
  - { x: 5.00 m, y: 0 mm, wall: south }
  - { x: 0 mm, y: 0 mm, wall: west }
`);
});

test.each(['MILLI', 'CENTI', 'DECI', undefined])('units of length: %s metres', (prefix) => {
  const times = { MILLI: 1000, CENTI: 100, DECI: 10 }[prefix ?? ''] ?? 1;
  const body = extruded(
    [
      [0, 0],
      [4 * times, 0],
      [4 * times, 3 * times],
      [0, 3 * times],
    ],
    2.5 * times,
  );
  const text = modelText({ ...(prefix && { prefix }), spaces: [{ number: '1', name: 'Hall', body }] });
  expect(drafted(text, { locale: metricHouse }).files.get('content/rooms/hall.md')).toContain('size: 4.00 m x 3.00 m');
});

test('a half-space cuts the same wherever it begins on its plane', () => {
  fc.assert(
    fc.property(fc.integer({ min: -30, max: 30 }), fc.integer({ min: -30, max: 30 }), (x, y) => {
      const cut: GivenSpace['body'] = (add) => {
        const solid = extruded(
          [
            [0, 0],
            [4, 0],
            [4, 3],
            [0, 3],
          ],
          9,
        )(add);
        const height = 2 + (x - 0) / 2;
        const place = add('IFCCARTESIANPOINT', `(${x}.,${y}.,${height.toFixed(1)})`);
        const axes = add('IFCAXIS2PLACEMENT3D', `${place},${add('IFCDIRECTION', '(-1.,0.,2.)')},$`);
        const half = add('IFCHALFSPACESOLID', `${add('IFCPLANE', axes)},.F.`);
        return add('IFCBOOLEANCLIPPINGRESULT', `.DIFFERENCE.,${solid},${half}`);
      };
      expect(ceilingOf(cut)).toBe('ceiling: { form: shed, low: west, plate: 2.00 m, pitch: 26.5651° }');
    }),
    { numRuns: 12 },
  );
});

test('what a half-space leaves whole, and what it takes all of', () => {
  const cut = (agreement: string): string => {
    const body: GivenSpace['body'] = (add) => {
      const solid = extruded(
        [
          [0, 0],
          [4, 0],
          [4, 3],
          [0, 3],
        ],
        2.5,
      )(add);
      const axes = add('IFCAXIS2PLACEMENT3D', `${add('IFCCARTESIANPOINT', '(0.,0.,2.5)')},$,$`);
      const half = add('IFCHALFSPACESOLID', `${add('IFCPLANE', axes)},.${agreement}.`);
      return add('IFCBOOLEANRESULT', `.DIFFERENCE.,${solid},${half}`);
    };
    const one = draftHall(body);
    return leftOut(one)[0]?.replace(/^.*?: /u, '') ?? one.files.get('content/rooms/hall.md')?.split('\n')[6] ?? '';
  };
  expect(cut('F')).toBe('ceiling: flat 2.50 m');
  expect(cut('T')).toBe('its body encloses nothing');
});
