import { describe, expect, test } from 'vitest';
import { ceilingOf, faceted, indexed, type GivenSpace, type Triple } from './model-text.js';

/** Ceilings as their faces make them, worked by hand; in metres. */

/** A house's end under a gable: 4 m east to west, 6 m north to south, plates at 2 m, the ridge at 3.5 m over x = 2. */
const gable: readonly Triple[] = [
  [0, 0, 0],
  [4, 0, 0],
  [4, 6, 0],
  [0, 6, 0],
  [0, 0, 2],
  [4, 0, 2],
  [4, 6, 2],
  [0, 6, 2],
  [2, 0, 3.5],
  [2, 6, 3.5],
];
const gableFaces = [
  [3, 2, 1, 0],
  [0, 1, 5, 8, 4],
  [2, 3, 7, 9, 6],
  [1, 2, 6, 5],
  [3, 0, 4, 7],
  [4, 8, 9, 7],
  [8, 5, 6, 9],
];
const gableText = 'ceiling: { form: gable, ridge: north-south, plate: 2.00 m, pitch: 36.8699° }';

describe('a gable', () => {
  const triangles = gableFaces.flatMap((face) =>
    face.slice(2).map((_, index) => [face[0], face[index + 1], face[index + 2]] as number[]),
  );
  test.each<[string, GivenSpace['body']]>([
    ['by its faces', faceted(gable, gableFaces)],
    [
      'by faces that are turned as they come',
      faceted(
        gable,
        gableFaces.map((face, index) => (index % 2 === 0 ? face : face.toReversed())),
      ),
    ],
    [
      'by faces that all look in',
      faceted(
        gable,
        gableFaces.map((face) => face.toReversed()),
      ),
    ],
    ['by triangles', indexed(gable, triangles, 'triangles')],
    ['by polygons', indexed(gable, gableFaces, 'polygons')],
  ])('%s', (_, body) => {
    expect(ceilingOf(body)).toBe(gableText);
  });

  test('cut level at 3 m', () => {
    const places: readonly Triple[] = [
      ...gable.slice(0, 8),
      [4 / 3, 0, 3],
      [8 / 3, 0, 3],
      [8 / 3, 6, 3],
      [4 / 3, 6, 3],
    ];
    const faces = [
      [3, 2, 1, 0],
      [0, 1, 5, 9, 8, 4],
      [2, 3, 7, 11, 10, 6],
      [1, 2, 6, 5],
      [3, 0, 4, 7],
      [4, 8, 11, 7],
      [9, 5, 6, 10],
      [8, 9, 10, 11],
    ];
    expect(ceilingOf(faceted(places, faces))).toBe(gableText.replace(' }', ', cut: 3.00 m }'));
  });

  test('with plates at two heights is told by its planes', () => {
    const places = gable.map(([x, y, z], index): Triple => (index === 5 || index === 6 ? [x, y, 2.5] : [x, y, z]));
    expect(ceilingOf(faceted(places, gableFaces))).toBe(
      'ceiling: { form: planes, planes: [[{ x: 0 mm, y: 0 mm, height: 2.00 m }, { x: 4.00 m, y: 0 mm, height: 5.00 m }, { x: 0 mm, y: 6.00 m, height: 2.00 m }], [{ x: 0 mm, y: 0 mm, height: 4.50 m }, { x: 4.00 m, y: 0 mm, height: 2.50 m }, { x: 0 mm, y: 6.00 m, height: 4.50 m }]] }',
    );
  });

  test('whose slope comes down to the floor has no plate', () => {
    const places: readonly Triple[] = [
      [0, 0, 0],
      [4, 0, 0],
      [4, 6, 0],
      [0, 6, 0],
      [4, 0, 3],
      [4, 6, 3],
    ];
    const faces = [
      [3, 2, 1, 0],
      [0, 1, 4],
      [2, 3, 5],
      [1, 2, 5, 4],
      [3, 0, 4, 5],
    ];
    expect(ceilingOf(faceted(places, faces))).toMatch(/^ceiling: \{ form: planes, /u);
  });
});

describe('a ceiling in parts', () => {
  // 4 by 3 m: 2.4 m high over the west 1 m, 3 m over the rest.
  const places: readonly Triple[] = [
    [0, 0, 0],
    [1, 0, 0],
    [4, 0, 0],
    [4, 3, 0],
    [1, 3, 0],
    [0, 3, 0],
    [0, 0, 2.4],
    [1, 0, 2.4],
    [1, 3, 2.4],
    [0, 3, 2.4],
    [1, 0, 3],
    [4, 0, 3],
    [4, 3, 3],
    [1, 3, 3],
  ];
  const faces = [
    [5, 4, 3, 2, 1, 0],
    [0, 1, 7, 6],
    [1, 2, 11, 10, 7],
    [2, 3, 12, 11],
    [3, 4, 8, 13, 12],
    [4, 5, 9, 8],
    [5, 0, 6, 9],
    [6, 7, 8, 9],
    [10, 11, 12, 13],
    [7, 10, 13, 8],
  ];

  test('at two heights', () => {
    expect(ceilingOf(faceted(places, faces))).toBe(`ceiling:
  - { name: Flat, form: flat, height: 3.00 m, over: { x: 1.00 m, y: 0 mm, width: 3.00 m, depth: 3.00 m } }
  - { name: Flat-2, form: flat, height: 2.40 m, over: { x: 0 mm, y: 0 mm, width: 1.00 m, depth: 3.00 m } }`);
  });
});
