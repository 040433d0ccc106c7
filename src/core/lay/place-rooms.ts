import type { Xy } from '../../base/geometry/index.js';
import type { LayRoom } from './laid-room.js';
import { pointOfEnd, type Joint } from './joint.js';
import { LeastSquares, type Equation } from './least-squares.js';
import type { Pair } from './pair.js';

/** What each unknown may stand off by itself in feet, so that rooms that only few equations hold stay where they were. */
const loose = 1e5;
const fixed = 1e-4;

/** Two equations of a joint, or one of a pair of walls. */
export interface Row extends Equation {
  /** Indices of the rooms. */
  readonly a: number;
  readonly b: number;
  /** The line that they are compared along. */
  readonly way: Xy;
  readonly source: { readonly joint: Joint; readonly across: boolean } | { readonly pair: Pair };
}

export interface Placing {
  /** Of each room, by index: add it to the room's own coordinates. */
  readonly at: readonly Xy[];
  readonly rows: readonly Row[];
  readonly squares: LeastSquares;
  readonly x: Float64Array;
}

/** Places rooms by least squares on what joints and pairs of walls say. The first room of each of `groups` stays at 0. */
export function placeRooms(
  rooms: readonly LayRoom[],
  groups: readonly (readonly number[])[],
  joints: readonly Joint[],
  pairs: readonly Pair[],
): Placing {
  const rows = [...joints.flatMap((joint) => jointRows(joint, rooms)), ...pairs.map(pairRow)];
  const firsts = new Set(groups.map(([first]) => first));
  const ties = rooms.flatMap(({ index }): readonly Equation[] => {
    const sigma = firsts.has(index) ? fixed : loose;
    return [
      { of: [[2 * index, 1]], is: 0, sigma },
      { of: [[2 * index + 1, 1]], is: 0, sigma },
    ];
  });
  const squares = new LeastSquares(2 * rooms.length, [...rows, ...ties]);
  const x = squares.solution();
  const at = rooms.map(({ index }) => ({ x: x[2 * index] as number, y: x[2 * index + 1] as number }));
  return { at, rows, squares, x };
}

/** By how much the rooms as placed miss what an equation says, in feet. */
export function missOf({ a, b, way, is }: Row, at: readonly Xy[]): number {
  const [from, to] = [at[a] as Xy, at[b] as Xy];
  return way.x * (to.x - from.x) + way.y * (to.y - from.y) - is;
}

export function jointRows(joint: Joint, rooms: readonly LayRoom[]): readonly [along: Row, across: Row] {
  const { a, b, along, out, thickness, sigma } = joint;
  const [from, to] = [pointOfEnd(a, rooms), pointOfEnd(b, rooms)];
  const off = (way: Xy): number => way.x * (from.x - to.x) + way.y * (from.y - to.y);
  return [
    row(a.room, b.room, along, off(along), sigma.along, { joint, across: false }),
    row(a.room, b.room, out, off(out) + thickness, sigma.across, { joint, across: true }),
  ];
}

function pairRow(pair: Pair): Row {
  const { a, b, way, is, sigma } = pair;
  return row(a.room, b.room, way, is, sigma, { pair });
}

function row(a: number, b: number, way: Xy, is: number, sigma: number, source: Row['source']): Row {
  const of = [
    [2 * a, -way.x],
    [2 * a + 1, -way.y],
    [2 * b, way.x],
    [2 * b + 1, way.y],
  ] as const;
  return { a, b, way, of, is, sigma, source };
}

/** Rooms that joints hold together, each group in the order of the rooms; the greatest first. */
export function groupsOf(rooms: readonly LayRoom[], joints: readonly Joint[]): readonly (readonly number[])[] {
  const root = rooms.map(({ index }) => index);
  const find = (index: number): number => {
    let here = index;
    while (root[here] !== here) here = root[here] as number;
    return here;
  };
  for (const { a, b } of joints) {
    const [one, other] = [find(a.room), find(b.room)];
    root[Math.max(one, other)] = Math.min(one, other);
  }
  const groups = new Map<number, number[]>();
  for (const { index } of rooms) groups.set(find(index), [...(groups.get(find(index)) ?? []), index]);
  return [...groups.values()].toSorted((a, b) => b.length - a.length || (a[0] as number) - (b[0] as number));
}
