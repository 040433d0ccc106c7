import { lengthOf } from '../../base/geometry/index.js';
import { feet, joinWords, printArea, printLength, type Area } from '../../base/units/index.js';
import { problemAt, type Path, type Problem } from '../../base/problem/index.js';
import { wallPath } from '../model/index.js';
import { fitOf, thinnest, type Fit } from './fit.js';
import { jointRows, missOf } from './place-rooms.js';
import { playAlong, type Joint, type Misfit } from './joint.js';
import type { LayRoom, Side } from './laid-room.js';
import { thicknessPlay, type Laying } from './lay-rooms.js';
import { loopOf, type Loop } from './loop.js';
import type { Overlap } from './overlap.js';
import { isUsual, type Pair } from './pair.js';
import { findSuspects, type Suspect } from './suspect.js';
import { wallSuspects } from './wrong-wall.js';

/** What a joint may miss before it is told: 1/2", in feet. Common practice, no source. */
const leastMiss = 0.5 / 12;

/** What walls may be off before it is told, and beyond which they are another thing, in feet. Common practice, no source. */
const odd = { least: 0.75 / 12, most: { facing: 12 / 12, 'in-line': 8 / 12 } };

/** Walls that are named at most. */
const named = 3;

/** What does not fit of a house as laid out, and which tapes may be wrong. */
export function layingProblems(
  laying: Laying,
  misfits: readonly Misfit[],
  overlaps: readonly Overlap[],
): readonly Problem[] {
  const fit = fitOf(laying);
  const disagreeing = [
    ...misfits.map((misfit) => misfitProblem(misfit, laying)),
    ...overlaps.map(overlapProblem),
    ...missProblems(laying),
    ...fit.facing.filter(isUsual).flatMap((pair) => facingProblem(pair, laying)),
    ...fit.inLine.flatMap((pair) => inLineProblem(pair, laying)),
  ];
  return [...disagreeing, ...suspectProblems(laying, fit, disagreeing), ...apartProblems(laying)];
}

function misfitProblem(misfit: Misfit, laying: Laying): Problem {
  switch (misfit.kind) {
    case 'not-facing':
      return notFacing(misfit, laying);
    case 'open-one-sided': {
      const { room, side, other } = misfit;
      const message = `${theWall(side, room)} is open to ${other.record.name}, and no side of ${other.record.name} that faces it is open to ${room.record.name}`;
      const fix = `in ${other.record.origin.file}, record the side that is open to ${room.slug}, or the opening in its wall`;
      return problemAt(room.record.origin, sidePath(side, room), 'open-side-one-sided', message, {
        fix,
        severity: 'warning',
      });
    }
    case 'open-lengths': {
      const { room, side, what, lengths } = misfit;
      const [own, others] = lengths.map(inText) as [string, string];
      const message = `${theWall(side, room)} is ${own} long, and ${what}, which it is open to, ${others}`;
      const fix = 'both are one opening: measure it again, and mend the record that is wrong';
      return problemAt(room.record.origin, sidePath(side, room), 'open-sides-differ', message, {
        fix,
        severity: 'warning',
      });
    }
  }
}

function notFacing(misfit: Extract<Misfit, { readonly kind: 'not-facing' }>, laying: Laying): Problem {
  const { opening, seen, room, other } = misfit;
  const message = `${opening.mark} is in the ${opening.wall} wall of ${room.record.name} and in the ${seen.wall} wall of ${other.record.name}, which do not face each other`;
  const likely = wallSuspects(laying, misfit)
    .slice(0, named)
    .flatMap(({ tape }) => (tape.of === 'wall' ? [`the ${tape.wall} wall of ${tape.room.record.name}`] : []));
  const fix =
    likely.length === 0
      ? 'no other wall of the two would face it: one of the rooms is turned, or its walls are named otherwise'
      : `it may be in ${joinWords(likely, 'or in')}: look at the house, and mend the record that is wrong`;
  return problemAt(other.record.origin, [...seen.record.path, 'wall'], 'rooms-not-facing', message, { fix });
}

function overlapProblem({ a, b, area, depth }: Overlap): Problem {
  const message = `${b.record.name} stands ${inText(depth)} in ${a.record.name}, over ${printArea(area as Area)}, as doors and open sides place them`;
  const fix =
    'one of the tapes that lead from the one to the other is wrong: measure both rooms again, and where their doors are';
  return problemAt(b.record.origin, shapePath(b), 'rooms-overlap', message, { fix });
}

/** Loops that do not close, each told once, at the joint that misses most. */
function missProblems(laying: Laying): readonly Problem[] {
  const { joints, rooms, at } = laying;
  const told = new Set<Joint>();
  return joints
    .map((joint) => ({ joint, miss: Math.hypot(...jointRows(joint, rooms).map((row) => missOf(row, at))) }))
    .filter(({ miss }) => miss > leastMiss)
    .toSorted((a, b) => b.miss - a.miss)
    .flatMap(({ joint, miss }): readonly Problem[] => {
      if (told.has(joint)) return [];
      const loop = loopOf(joint, joints, rooms);
      for (const one of loop?.joints ?? [joint]) told.add(one);
      const { room, path } = placeOf(joint, laying);
      const message = loop ? misclosure(joint, loop, laying) : alone(joint, miss);
      const fix = 'one of the tapes around it is wrong';
      return [problemAt(room.record.origin, path, 'rooms-misclose', message, { fix, severity: 'warning' })];
    });
}

/** As a surveyor says of a traverse: by how much, in what length, one part in how many. */
function misclosure({ name }: Joint, { rooms, length, miss }: Loop, laying: Laying): string {
  const names = rooms.map((index) => (laying.rooms[index] as LayRoom).record.name);
  const off = Math.hypot(miss.x, miss.y);
  const around = `${joinWords(names)}, back through ${name}`;
  const ways = [
    ...(Math.abs(miss.x) > playAlong ? [`${inText(Math.abs(miss.x))} east-west`] : []),
    ...(Math.abs(miss.y) > playAlong ? [`${inText(Math.abs(miss.y))} north-south`] : []),
  ];
  const by = ways.length > 0 ? joinWords(ways) : inText(off);
  return `around ${around}, the tapes miss where they began by ${by}, in ${inText(length)}: 1 in ${Math.round(length / off)}`;
}

function alone({ name }: Joint, miss: number): string {
  return `where ${name} says that its rooms stand is ${inText(miss)} from where the walls beside them say`;
}

function facingProblem(pair: Pair, laying: Laying): readonly Problem[] {
  const { a, b, gap, should, overlap } = pair;
  const off = Math.abs(gap - should);
  if (off < odd.least || off > odd.most.facing) return [];
  const [one, other] = [roomAt(laying, a.room), roomAt(laying, b.room)];
  const walls = `${theWall(a.side, one)} and ${theWall(b.side, other)}`;
  const over = `over ${inText(overlap)}`;
  const origin = other.record.origin;
  const path = sidePath(b.side, other);
  const usual = `a wall there is ${inText(should)}`;
  if (gap < thinnest && gap < should - thicknessPlay) {
    const stand =
      gap < -thicknessPlay ? `reach ${inText(-gap)} into each other` : `stand ${inText(Math.max(0, gap))} apart`;
    const message = `${walls} ${stand} ${over}: ${usual}`;
    const fix = 'one of the two stands farther off than its tape says; measure both rooms again';
    return [problemAt(origin, path, 'wall-thin', message, { fix, severity: 'warning' })];
  }
  const message = `${walls} stand ${inText(gap)} apart ${over}: ${usual}`;
  const fix = `if that is meant, name the wall's type under wall-types, or the wall under jogs`;
  return [problemAt(origin, path, 'wall-odd', message, { fix, severity: 'notice' })];
}

function inLineProblem({ a, b, gap }: Pair, laying: Laying): readonly Problem[] {
  const off = Math.abs(gap);
  if (off < odd.least || off > odd.most['in-line']) return [];
  const [one, other] = [roomAt(laying, a.room), roomAt(laying, b.room)];
  const message = `${theWall(b.side, other)} stands ${inText(off)} ${gap > 0 ? 'outside' : 'inside'} the line of ${theWall(a.side, one)}`;
  const fix = `if that is meant, write jogs: [${b.side.wall.id}]`;
  return [
    problemAt(other.record.origin, sidePath(b.side, other), 'walls-out-of-line', message, { fix, severity: 'notice' }),
  ];
}

/** Tapes that would explain it, each at its own line; who reads one reads which others are as likely. */
function suspectProblems(laying: Laying, fit: Fit, disagreeing: readonly Problem[]): readonly Problem[] {
  if (disagreeing.length === 0) return [];
  const suspects = findSuspects(laying, fit);
  const severity = disagreeing.every((problem) => problem.severity === 'notice') ? 'notice' : 'warning';
  return suspects.map((suspect) => {
    const { room, path, words } = describe(suspect);
    const others = suspects
      .filter((other) => other !== suspect)
      .map(describe)
      .map(
        (other) => `${other.what} (${other.room.record.origin.file}:${other.room.record.origin.at(other.path).line})`,
      );
    const fix =
      others.length === 0
        ? 'measure it again'
        : `measure it again; ${others.length === 1 ? 'as likely is' : 'as likely are'} ${joinWords(others)}`;
    return problemAt(room.record.origin, path, 'tape-suspect', `${words}: with that, the house fits`, {
      fix,
      severity,
    });
  });
}

interface Described {
  readonly room: LayRoom;
  readonly path: Path;
  /** The tape, and what it may be instead. */
  readonly what: string;
  readonly words: string;
}

function describe({ tape, by }: Suspect): Described {
  const { room } = tape;
  if (tape.of === 'side') {
    const what = theWall(tape.side, room);
    const words = `${what} may stand ${inText(Math.abs(by))} farther ${by > 0 ? 'out' : 'in'}`;
    return { room, path: sidePath(tape.side, room), what, words };
  }
  const opening = room.measure.openings.find(({ mark }) => mark === tape.mark);
  const path = [...(opening?.record.path ?? []), 'at'];
  const what = `${tape.mark} in ${room.record.name}`;
  const at = lengthOf((opening ? feet(opening.at) : 0) + by);
  return { room, path, what, words: `${what} may lie at ${printLength(at)}` };
}

function apartProblems({ rooms, groups }: Laying): readonly Problem[] {
  const [, ...apart] = groups;
  if (apart.length > 1 && groups.every(({ length }) => length === 1)) return allApart(rooms);
  return apart.flatMap((group): readonly Problem[] => {
    const [first, ...others] = group.map((index) => (rooms[index] as LayRoom).record);
    // A door that one of two rooms records, or a wall beside another, is told where it is written.
    if (!first || isSpokenFor(group, rooms)) return [];
    const names = joinWords([first, ...others].map(({ name }) => name));
    const message = `no door, open side or well joins ${names} to the rest of the house: drawn apart`;
    const fix = 'record the door between them, or where it stands with place: { from: ROOM, x: …, y: … }';
    return [problemAt(first.origin, ['name'], 'room-apart', message, { fix, severity: 'notice' })];
  });
}

/** Rooms of which none is joined to another, as a house begins, are told once. */
function allApart(rooms: readonly LayRoom[]): readonly Problem[] {
  const [first] = rooms;
  if (!first || rooms.some(({ index }) => isSpokenFor([index], rooms))) return [];
  const message = `no door, open side or well joins any of the ${rooms.length} rooms: each is drawn apart`;
  const fix = 'record the doors between them under openings, each with the room that it leads to';
  return [problemAt(first.record.origin, ['name'], 'room-apart', message, { fix, severity: 'notice' })];
}

function isSpokenFor(group: readonly number[], rooms: readonly LayRoom[]): boolean {
  const own = new Set(group.map((index) => (rooms[index] as LayRoom).slug));
  const named = ({ measure }: LayRoom): readonly string[] => [
    ...measure.openings.map(({ to }) => to),
    ...measure.walls.flatMap(({ beside = [] }) => beside),
  ];
  return rooms.some((room) =>
    own.has(room.slug)
      ? named(room).some((slug) => !own.has(slug) && rooms.some((other) => other.slug === slug))
      : named(room).some((slug) => own.has(slug)),
  );
}

function placeOf({ kind, name, a }: Joint, laying: Laying): { readonly room: LayRoom; readonly path: Path } {
  const room = roomAt(laying, a.room);
  const opening = room.measure.openings.find(({ mark, own }) => own && mark === name);
  if (kind === 'opening' && opening) return { room, path: [...opening.record.path, 'at'] };
  return { room, path: 'side' in a ? sidePath(room.sides[a.side] as Side, room) : shapePath(room) };
}

function roomAt({ rooms }: Pick<Laying, 'rooms'>, index: number): LayRoom {
  return rooms[index] as LayRoom;
}

function theWall({ wall }: Side, { record }: LayRoom): string {
  return `the ${wall.name.toLowerCase()} of ${record.name}`;
}

function sidePath({ wall }: Side, { record }: LayRoom): Path {
  return wallPath(record.shape, wall.id);
}

function shapePath({ record }: LayRoom): Path {
  return [{ size: 'size', walk: 'walls', outline: 'outline' }[record.shape.by]];
}

function inText(value: number): string {
  return printLength(lengthOf(value));
}
