import { direction, pointInFeet, pointOf } from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord, RunLine } from '../../model/index.js';
import { didYouMean, problemAt, type Outcome, type Problem } from '../../../base/problem/index.js';
import { feet, printLength, type Length } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import { stretchProblems, wallProblems } from '../place.js';
import { edgeStretch, type DropEdge } from './read.js';

/** One straight run of rail, and the fall below it. */
export function measure(data: DropEdge, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const { at, drop } = data;
  const problems = placeProblems(data, feature, space);
  const side = sideOf(data, space);
  if (!side || problems.length > 0) return { problems };
  const run = runOf(data, side.run);
  const value: FeatureMeasure = {
    kind: 'drop-edge',
    id: feature.id,
    name: feature.name,
    faces: [],
    runs: [{ id: `${feature.id}/rail`, name: 'Rail', length: run, pieces: [run], lines: [stretchOf(side, at, run)] }],
    counts: [],
    covers: [],
    drop,
    facts: [
      { label: 'Run', text: printLength(run) },
      { label: 'Drop', text: printLength(drop) },
    ],
  };
  return { value, problems };
}

/** A straight side, from its left end. */
type Side = RunLine & { readonly run: Length };

function runOf(data: DropEdge, side: Length): Length {
  const { from, to } = edgeStretch(data, side);
  return (to - from) as Length;
}

function stretchOf({ from, to }: RunLine, at: Length, run: Length): RunLine {
  const start = pointInFeet(from);
  const ahead = direction(start, pointInFeet(to));
  const place = (along: number) => pointOf({ x: start.x + ahead.x * along, y: start.y + ahead.y * along });
  return { from: place(feet(at)), to: place(feet(at) + feet(run)) };
}

function sideOf(data: DropEdge, { walls, voids }: RoomSpace): Side | undefined {
  if (data.wall !== undefined) return walls.find(({ name }) => name === data.wall);
  return voids.find(({ name }) => name === data.void)?.sides.find(({ name }) => name === data.side);
}

function placeProblems(data: DropEdge, feature: FeatureRecord, space: RoomSpace): readonly Problem[] {
  const { wall, at } = data;
  if ((wall === undefined) === (data.void === undefined)) {
    const message = `${feature.name} runs along ${wall === undefined ? 'no side' : 'a wall and along a hole'}`;
    const fix = 'write wall: with an open side of the room, or void: and side: with a hole in its floor';
    return [problemAt(space.origin, feature.path, 'edge-place', message, { fix })];
  }
  const run = runOf(data, sideOf(data, space)?.run ?? (0 as Length));
  if (wall !== undefined) return wallProblems(feature, space, { wall, at, width: run, key: 'run' });
  const hole = space.voids.find(({ name }) => name === data.void);
  if (!hole) {
    const names = space.voids.map(({ name }) => name);
    const message = `${feature.name} runs along a hole '${data.void ?? ''}', which the floor does not have`;
    const fix =
      names.length === 0 ? 'record it in voids' : (didYouMean(data.void ?? '', names) ?? `holes: ${names.join(', ')}`);
    return [problemAt(space.origin, [...feature.path, 'void'], 'edge-place', message, { fix })];
  }
  const side = hole.sides.find(({ name }) => name === data.side);
  const fix = `its sides: ${hole.sides.map(({ name }) => name).join(', ')}`;
  if (!side) {
    const message =
      data.side === undefined
        ? `${feature.name} does not say along which side of '${hole.name}' it runs`
        : `'${hole.name}' has no side '${data.side}'`;
    const path = data.side === undefined ? feature.path : [...feature.path, 'side'];
    return [problemAt(space.origin, path, 'edge-place', message, { fix })];
  }
  return stretchProblems(feature, space, {
    side: `side '${side.name}' of '${hole.name}'`,
    of: side.run,
    at,
    width: run,
    key: 'run',
  });
}
