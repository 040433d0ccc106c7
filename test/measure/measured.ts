import { expect } from 'vitest';
import { measureRoom } from '../../src/core/measure/index.js';
import type { Region, Room, RoomMeasure, WallMeasure } from '../../src/core/model/index.js';
import type { Problem } from '../../src/base/problem/index.js';
import { feet } from '../../src/base/units/index.js';
import { pathOf, room, type RoomText } from './room-record.js';

/** The measure of a room that has no problems. */
export function measured(text: RoomText | Room, others: Room[] = []): RoomMeasure {
  const one = 'origin' in text ? text : room(text);
  const { value, problems } = measureRoom(one, { rooms: new Map(others.map((other) => [other.slug, other])) });
  expect(problems).toEqual([]);
  if (!value) throw new Error('not measured');
  return value;
}

export function problemsOf(text: RoomText | Room, others: Room[] = []): readonly Problem[] {
  const one = 'origin' in text ? text : room(text);
  return measureRoom(one, { rooms: new Map(others.map((other) => [other.slug, other])) }).problems;
}

/** `code at path: message`, one line for each problem. */
export function told(problems: readonly Problem[]): string[] {
  return problems.map((problem) => `${problem.code} at ${pathOf(problem)}: ${problem.message}`);
}

export function wall(measure: RoomMeasure, id: string): WallMeasure {
  const found = measure.walls.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`no wall ${id}`);
  return found;
}

/** A wall's top as `along height` in feet. */
export function top(measure: RoomMeasure, id: string): string[] {
  const round = (value: number): number => Math.round(value * 1e6) / 1e6;
  return wall(measure, id).top.map(({ along, height }) => `${round(feet(along))} ${round(feet(height))}`);
}

/** Area of regions in square feet by the shoelace formula, worked apart from the source's. */
export function regionArea(regions: readonly Region[]): number {
  const ring = (points: Region['outline']): number =>
    Math.abs(
      points.reduce((sum, { x, y }, i) => {
        const next = points[(i + 1) % points.length] ?? { x, y };
        return sum + feet(x) * feet(next.y) - feet(next.x) * feet(y);
      }, 0) / 2,
    );
  return regions.reduce(
    (sum, { outline, holes }) => sum + ring(outline) - holes.reduce((less, hole) => less + ring(hole), 0),
    0,
  );
}
