import { describe, expect, test } from 'vitest';
import type { Stand } from '../../src/core/caution/index.js';
import { len, opening, room, seenBy, wall } from './house.js';

/** Ten feet by ten, with a north and an east wall. */
const walls = [
  wall('north'),
  wall('east', { from: { x: len(`10'`), y: len(`10'`) }, to: { x: len(`10'`), y: len('0"') } }),
];

const inNorth = (hinge: 'left' | 'right', more = {}) =>
  opening({ mark: 'D1', at: len(`7'`), hinge, swing: 'room', ...more });
const inEast = (more = {}) =>
  opening({ mark: 'D2', wall: 'east', at: len(`1'`), hinge: 'right', swing: 'room', ...more });

const seen = (...openings: ReturnType<typeof opening>[]) =>
  seenBy('swing-meets', room({ measure: { walls, openings } })).map((one) => one.seen);

describe('two leaves at a corner', () => {
  test('that swing through each other are told once', () => {
    // D1 turns about x = 9'-6", D2 about y = 6'-6": both come to the corner's square of x from 7'-6", y from 6'-6" to 9'.
    expect(seen(inNorth('right'), inEast())).toEqual([
      `The leaf of D1, 2'-6" wide, swings through the swing of D2 in room.`,
    ]);
  });

  test('of which one swings the other way, slides, or has no recorded hinge, are free of each other', () => {
    expect(seen(inNorth('right', { swing: 'beside' }), inEast())).toEqual([]);
    expect(seen(inNorth('right'), inEast({ operation: 'pocket' }))).toEqual([]);
    expect(seen(inNorth('right'), inEast({ hinge: undefined }))).toEqual([]);
  });

  test('of which one is a pair of half the width are told where a half comes so far', () => {
    // Each half is 1'-3": that about x = 9'-6" reaches down to y = 8'-9", and D2 about y = 6'-6" reaches up to 9' at the wall only.
    expect(seen(inNorth('right', { operation: 'double' }), inEast())).toEqual([
      `The leaf of D1, 1'-3" wide, swings through the swing of D2 in room.`,
    ]);
    expect(seen(inNorth('right', { operation: 'double' }), inEast({ at: len(`2'`) }))).toEqual([]);
  });
});

test('a leaf reaches into a room that no wall parts from its own, where both are laid out', () => {
  // The other room begins 10' to the east; its bench stands against the line between them, 1' deep and 3' long.
  const footprint = [
    { x: len('0"'), y: len(`7'`) },
    { x: len(`1'`), y: len(`7'`) },
    { x: len(`1'`), y: len(`10'`) },
    { x: len('0"'), y: len(`10'`) },
  ];
  const bench = {
    kind: 'built-in',
    id: 'bench',
    name: 'Bench',
    faces: [],
    runs: [],
    counts: [],
    covers: [],
    facts: [],
    footprint,
  };
  const own = room({
    slug: 'own',
    measure: {
      walls: [
        wall('north', { run: len(`12'`), to: { x: len(`12'`), y: len(`10'`) } }),
        wall('east', { openTo: 'other' }),
      ],
      openings: [opening({ at: len(`9'`), hinge: 'left', swing: 'own' })],
    },
  });
  const other = room({ slug: 'other', measure: { features: [bench] } });
  const stands = (x: string): ReadonlyMap<string, Stand> =>
    new Map([
      ['own', { group: 0, at: { x: len('0"'), y: len('0"') } }],
      ['other', { group: 0, at: { x: len(x), y: len('0"') } }],
    ]);
  const at = (x: string) => seenBy('swing-meets', [own, other], { stands: stands(x) }).map((one) => one.seen);
  // The leaf turns about x = 9' and reaches to 11'-6".
  expect(at(`10'`)).toEqual([`The leaf of D1, 2'-6" wide, reaches 1'-6" over Bench in own.`]);
  expect(at(`11'-6"`)).toEqual([]);
  expect(seenBy('swing-meets', [own, other])).toEqual([]);
});
