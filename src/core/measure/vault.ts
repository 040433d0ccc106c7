import {
  areaOf,
  between,
  bounds,
  cross,
  distance,
  edges,
  envelopeHeight,
  findCrossing,
  intersect,
  lengthOf,
  minus,
  patchContains,
  patchFrom,
  profileAlong,
  ringInFeet,
  straightened,
  subtract,
  type Patch,
  type Plane,
  type Profile,
  type Xy,
  slackAround,
} from '../../base/geometry/index.js';
import type { CeilingPart, Room } from '../model/index.js';
import { problemAt, type Outcome, type Problem } from '../../base/problem/index.js';
import { printLength, type Length } from '../../base/units/index.js';
import { planesOf } from './form.js';
import type { Plan } from './plan.js';
import { overlappingParts } from './fit.js';
import { crossingWords, printArea } from './tape.js';

/** A part of the ceiling over its part of the plan. */
export interface Vault {
  readonly name: string;
  /** Those of walls that lean are among them. */
  readonly planes: readonly Plane[];
  /** What it covers of the plan. */
  readonly patches: readonly Patch[];
  /** Its outline as recorded; absent when it covers the whole room. */
  readonly over?: Patch;
  /** From this height up its sides are open to another room. */
  readonly openAbove?: Length;
}

/** The parts of a room's ceiling, checked: planes in order, the parts over all of the room once. */
export function vaultsOf(room: Room, plan: Plan): Outcome<readonly Vault[]> {
  const problems = room.ceiling.flatMap((part) => [...formProblems(part, room), ...overProblems(part, room)]);
  if (problems.some(({ severity }) => severity === 'error')) return { problems };
  const vaults = room.ceiling.map((part) => vaultOf(part, plan));
  const covering = coverProblems(vaults, room, plan);
  return covering.length > 0 ? { problems: [...problems, ...covering] } : { value: vaults, problems };
}

function vaultOf(part: CeilingPart, plan: Plan): Vault {
  const over = part.over && patchFrom(ringInFeet(part.over));
  const patches = over ? intersect([plan.patch], over) : [plan.patch];
  const leaning = plan.sides.flatMap(({ plane }) => plane ?? []);
  const planes = patches.length === 0 ? [] : [...planesOf(part, patches), ...leaning];
  const { name, openAbove } = part;
  return { name, planes, patches, ...(over ? { over } : {}), ...(openAbove ? { openAbove: openAbove.height } : {}) };
}

/** Ceiling height along a straight line of the plan, with the steps between parts. */
export function topAlong(vaults: readonly Vault[], from: Xy, to: Xy): Profile {
  const [only, ...more] = vaults;
  if (!only || distance(from, to) === 0) return [];
  if (more.length === 0) return profileAlong(only.planes, from, to);
  const stops = [0, 1, ...vaults.flatMap((vault) => bordersOn(vault, from, to))].sort((a, b) => a - b);
  const length = distance(from, to);
  const points = stops.slice(1).flatMap((end, i) => {
    const start = stops[i] as number;
    if ((end - start) * length < tiny) return [];
    const middle = between(from, to, (start + end) / 2);
    const here = nearest(vaults, middle);
    const lowest = here.reduce((best, vault) =>
      envelopeHeight(vault.planes, middle) < envelopeHeight(best.planes, middle) ? vault : best,
    );
    return profileAlong(lowest.planes, between(from, to, start), between(from, to, end)).map(({ along, height }) => ({
      along: start * length + along,
      height,
    }));
  });
  return straightened(points);
}

/** Nearer than this, in feet, is the same place. */
const tiny = 1e-6;

/** Parts over a point, borders included; all of them when the point is under none. */
function nearest(vaults: readonly Vault[], point: Xy): readonly Vault[] {
  if (vaults.length < 2) return vaults;
  const over = vaults.filter(({ patches }) =>
    patches.some((patch) => patchContains(patch, point) || edges(patch.outline).some((edge) => isOn(edge, point))),
  );
  return over.length > 0 ? over : vaults.filter(({ planes }) => planes.length > 0);
}

function isOn([a, b]: readonly [Xy, Xy], point: Xy): boolean {
  const along = minus(b, a);
  const length = distance(a, b);
  const at = (minus(point, a).x * along.x + minus(point, a).y * along.y) / length;
  return at >= 0 && at <= length && Math.abs(cross(along, minus(point, a))) / length < tiny;
}

/** Shares of a line at which it may pass into or out of a part: where an edge that lies along it ends, others cross it. */
function bordersOn({ patches }: Vault, from: Xy, to: Xy): readonly number[] {
  const line = minus(to, from);
  const parallel = tiny * tiny * Math.hypot(line.x, line.y);
  return patches
    .flatMap(({ outline }) => edges(outline))
    .flatMap(([a, b]) => {
      const edge = minus(b, a);
      const turn = cross(line, edge);
      if (Math.abs(turn) < parallel) return [];
      const along = cross(minus(a, from), line) / turn;
      return along >= -tiny && along <= 1 + tiny ? [cross(minus(a, from), edge) / turn] : [];
    })
    .filter((t) => t > 0 && t < 1);
}

function formProblems({ form, cut, path }: CeilingPart, { origin }: Room): readonly Problem[] {
  if (form.form === 'flat' || form.form === 'planes') return [];
  if (cut === undefined || cut > form.plate) return [];
  const message = `the flat at ${printLength(cut)} cuts the ceiling at or below its plate at ${printLength(form.plate)}: no slope is left`;
  const fix = 'write a flat ceiling, or cut it higher';
  return [problemAt(origin, [...path, 'cut'], 'cut-below-plate', message, { fix, severity: 'warning' })];
}

/** Corners of a part go round it once. */
function overProblems({ over, name, path }: CeilingPart, { origin }: Room): readonly Problem[] {
  if (!over) return [];
  const ring = ringInFeet(over);
  const crossing = findCrossing(ring);
  if (!crossing) return [];
  const message = `the outline of ceiling part '${name}' crosses itself: ${crossingWords(ring, crossing, bounds(ring))}`;
  return [
    problemAt(origin, [...path, 'over'], 'ceiling-part-crosses', message, {
      fix: 'write its corners in order, all the way round',
    }),
  ];
}

function coverProblems(vaults: readonly Vault[], room: Room, { patch }: Plan): readonly Problem[] {
  const slack = slackAround(patch);
  const apart = 'let each place of the room lie under one part';
  const overlaps = overlappingParts('ceiling', vaults, () => slack).map(({ index, message }) =>
    problemAt(room.origin, partPath(room, index), 'ceiling-parts-overlap', message, { fix: apart }),
  );
  const bare = vaults.reduce<readonly Patch[]>(
    (rest, vault) => vault.patches.reduce<readonly Patch[]>(subtract, rest),
    [patch],
  );
  if (areaOf(bare) <= slack) return overlaps;
  const { west, east, south, north } = bounds(bare.flatMap(({ outline }) => outline));
  const origin = bounds(patch.outline);
  const span = (low: number, high: number): string => `${printLength(lengthOf(low))} to ${printLength(lengthOf(high))}`;
  const place = `x ${span(west - origin.west, east - origin.west)}, y ${span(south - origin.south, north - origin.south)}`;
  const message = `the ceiling parts leave ${printArea(areaOf(bare))} of ${printArea(areaOf([patch]))} uncovered, within ${place}`;
  const fix = 'extend a part, or add one there';
  return [...overlaps, problemAt(room.origin, ['ceiling'], 'ceiling-not-covered', message, { fix })];
}

function partPath(room: Room, index: number): readonly (string | number)[] {
  const path = room.ceiling[index]?.path ?? ['ceiling'];
  return [...path, 'over'];
}
