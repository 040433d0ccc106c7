import { describe, expect, test } from 'vitest';
import { hingesFor } from '../../src/core/takeoff/arithmetic/index.js';
import { besideOf } from '../../src/core/takeoff/beside.js';
import type { OpeningMeasure, Point, RoomMeasure } from '../../src/core/model/index.js';
import { hingesOf, resolvePlaces, takeOff } from '../../src/core/takeoff/index.js';
import { feet, fromFeet, fromInches } from '../../src/base/units/index.js';
import { category, option, room, selection } from './room.js';

describe('hinges of a leaf', () => {
  test.each([
    [48, 2],
    [60, 2],
    [60.0625, 3],
    [80, 3],
    [90, 3],
    [90.0625, 4],
    [96, 4],
    [120, 4],
    [120.0625, 5],
  ])('%d" high: %d', (height, count) => {
    expect(hingesFor(fromInches(height))).toBe(count);
  });

  test('only where a leaf swings: a cased opening has none', () => {
    const of = (kind: OpeningMeasure['kind'], operation: OpeningMeasure['operation']) =>
      hingesOf({ kind, operation, height: fromInches(96) });
    expect([of('door', 'swing'), of('door', 'double'), of('door', 'pocket'), of('door', 'sliding')]).toEqual([
      4, 8, 0, 0,
    ]);
    expect([of('cased', 'fixed'), of('open', 'fixed'), of('window', 'swing')]).toEqual([0, 0, 0]);
  });

  test('are counted in the room that records the door', () => {
    const { places } = resolvePlaces(selection('doors'), room);
    // D01 is 7' high: three. D02 is recorded in the hall.
    expect(besideOf(places, room).hinges).toBe(3);
  });
});

/** An L, walked clockwise from its north-west corner, in feet; the corner at 8, 6 turns away from the room. */
const corners = [
  [0, 10],
  [8, 10],
  [8, 6],
  [14, 6],
  [14, 0],
  [0, 0],
] as const;
const names = ['north', 'inner-east', 'inner-north', 'east', 'south', 'west'];

function walled(around: readonly (readonly [number, number])[]): RoomMeasure {
  const base = room.walls[0]!;
  const walls = around.map(([x, y], index) => {
    const [toX, toY] = around[(index + 1) % around.length] ?? [0, 0];
    const run = fromFeet(Math.hypot(toX - x, toY - y));
    const id = names[index] ?? '';
    const top = [
      { along: fromFeet(0), height: fromFeet(9) },
      { along: run, height: fromFeet(9) },
    ];
    const from = { x: fromFeet(x), y: fromFeet(y) };
    const to = { x: fromFeet(toX), y: fromFeet(toY) };
    return { ...base, id, name: id, deductions: [], run, top, from, to };
  });
  return { ...room, walls, features: [], openings: [] };
}

function ell(openings: readonly Partial<OpeningMeasure>[] = [], open: readonly string[] = []): RoomMeasure {
  const measure = walled(corners);
  const walls = measure.walls.map((wall) => ({ ...wall, ...(open.includes(wall.id) && { openTo: 'hall' }) }));
  const first = room.openings[1]!;
  return { ...measure, walls, openings: openings.map((more) => ({ ...first, wall: 'south', ...more })) };
}

const bead = (measure: RoomMeasure, ...at: string[]): number =>
  besideOf(resolvePlaces(selection(...at), measure).places, measure)['outside-corners'];

describe('outside corners', () => {
  test('by hand: an L of nine feet has one, nine feet long', () => {
    expect(bead(ell(), 'walls')).toBeCloseTo(9, 9);
  });

  test('is counted once, with the wall that ends there', () => {
    expect([bead(ell(), 'inner-east'), bead(ell(), 'inner-north'), bead(ell(), 'north')]).toEqual([9, 0, 0]);
  });

  test('is none where a side is open, nor on a ceiling', () => {
    expect(bead(ell([], ['inner-north']), 'walls')).toBe(0);
    expect(bead(ell(), 'ceiling')).toBe(0);
  });

  // 2 × 7' + 3' = 17' around an open passage of 3' × 7', on this side.
  test('are the edges of an open passage, not of what is cased or has a leaf', () => {
    expect(bead(ell([{ kind: 'open' }]), 'walls')).toBeCloseTo(9 + 17, 9);
    for (const kind of ['cased', 'door', 'window'] as const) expect(bead(ell([{ kind }]), 'walls')).toBeCloseTo(9, 9);
  });

  // Where ceilings of two heights meet above it: 9' on one of its walls, 7' 6" on the other.
  test.each(['inner-east', 'inner-north'])('is as high as the lower of its walls, %s', (low) => {
    const measure = ell();
    const walls = measure.walls.map((wall) =>
      wall.id === low ? { ...wall, top: wall.top.map((point) => ({ ...point, height: fromFeet(7.5) })) } : wall,
    );
    expect(bead({ ...measure, walls }, 'walls')).toBeCloseTo(7.5, 9);
  });

  test.each([0, 30, 45, 137, 200, 291])('is the same one however the room is turned, by %d°', (degrees) => {
    const measure = ell();
    const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const turned = ({ x, y }: Point): Point => {
      const [east, north] = [feet(x) + 31, feet(y) - 17];
      return { x: fromFeet(cos * east - sin * north), y: fromFeet(sin * east + cos * north) };
    };
    const walls = measure.walls.map((wall) => ({ ...wall, from: turned(wall.from), to: turned(wall.to) }));
    const each = walls.map(({ id }) => bead({ ...measure, walls }, id));
    expect(each).toEqual([0, 9, 0, 0, 0, 0]);
  });

  // A corner cut off in two steps: the walk turns right everywhere.
  const cut = [
    [0, 0],
    [5, 10],
    [10, 15],
    [20, 15],
    [20, 0],
  ] as const;
  // The same with its slope broken inwards, at 6, 8: the walk turns left there alone.
  const dented = [
    [0, 0],
    [6, 8],
    [10, 15],
    [20, 15],
    [20, 0],
  ] as const;

  test('by hand: none in a room that bulges, one where it is dented, at angles that are not right', () => {
    expect(bead(walled(cut), 'walls')).toBe(0);
    expect(bead(walled(dented), 'walls')).toBeCloseTo(9, 9);
    expect(bead(walled(dented), 'north')).toBeCloseTo(9, 9);
  });

  // Two heads of 4' and two sides of 5': what has a sill has an edge below it too.
  test('are all four edges of a pass-through with a sill', () => {
    const through = { kind: 'open', width: fromFeet(4), height: fromFeet(5), sill: fromFeet(3) } as const;
    expect(bead(ell([through]), 'walls')).toBeCloseTo(9 + 2 * 4 + 2 * 5, 9);
    expect(bead(ell([{ ...through, sill: fromFeet(0) }]), 'walls')).toBeCloseTo(9 + 4 + 2 * 5, 9);
  });

  test('carry the bead of a take-off', () => {
    const rule = {
      what: 'Corner bead',
      usage: { amount: 1, unit: 'lin ft', per: 1, of: 'lin ft' },
      goesWith: 'outside-corners',
      when: [],
      waste: { amount: 10, scale: 2 },
      source: 'common practice',
    } as const;
    const at = selection('walls');
    const { places } = resolvePlaces(at, ell());
    const board = category('area', { supplies: [rule] });
    const { takeoffs } = takeOff({ selection: at, category: board, measure: ell() }, places, option([{}]));
    expect(takeoffs[0]?.supplies?.map(({ required }) => required)).toEqual([expect.closeTo(9.9, 9)]);
  });
});

describe('casing', () => {
  const around = (more: Partial<OpeningMeasure>): number => {
    const measure = ell([more]);
    const at = selection('openings');
    const trim = option([{ unit: 'lin ft' }], {
      face: { text: '3 1/2"', value: { kind: 'length', length: fromInches(3.5) } },
    });
    const { takeoffs } = takeOff(
      { selection: at, category: category('run'), measure },
      resolvePlaces(at, measure).places,
      trim,
    );
    return takeoffs[0]?.net ?? NaN;
  };

  // Two legs of 7' and a head of 3' that runs 3 1/2" past each.
  test('by hand: two legs and a head for a side of a door or a cased opening', () => {
    expect(around({})).toBeCloseTo(14 + 3 + 7 / 12, 9);
    expect(around({ kind: 'cased' })).toBeCloseTo(14 + 3 + 7 / 12, 9);
  });

  test('is none around a door that is flush in the wall, or an open passage', () => {
    expect(around({ door: { flush: true } })).toBe(0);
    expect(around({ kind: 'open' })).toBe(0);
  });
});
