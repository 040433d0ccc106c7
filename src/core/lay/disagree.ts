import { joinWords, printArea, type Area } from '../../base/units/index.js';
import { problemAt, type Path, type Problem } from '../../base/problem/index.js';
import { thinnest, type Fit } from './fit.js';
import { jointRows, missOf } from './place-rooms.js';
import { playAlong, type Joint, type Misfit } from './joint.js';
import { jointsOf } from './joints.js';
import type { LayRoom, Side } from './laid-room.js';
import { thicknessPlay, type Laying } from './lay-rooms.js';
import { loopOf, type Loop } from './loop.js';
import { overlapsOf, type Overlap } from './overlap.js';
import { isUsual, type Pair } from './pair.js';
import { placedOf } from './placed.js';
import { inText, roomAt, shapePath, sidePath, theWall } from './words.js';
import { wallSuspects } from './wrong-wall.js';

/** What a joint may miss before it is told: 1/2", in feet. Common practice, no source. */
const leastMiss = 0.5 / 12;

/** What walls may be off before it is told, and beyond which they are another thing, in feet. Common practice, no source. */
const odd = { least: 0.75 / 12, most: { facing: 12 / 12, 'in-line': 8 / 12 } };

/** Walls that are named at most. */
const named = 3;

/** What one wrong tape can explain: rooms in each other, ways that do not close, walls that stand odd. */
export function disagreementsOf(laying: Laying, { facing, inLine }: Fit): readonly Problem[] {
  const misfits = jointsOf(laying.rooms).misfits.filter(isOfTapes);
  const overlaps = laying.groups.flatMap((group) => overlapsOf(placedOf(laying, group)));
  return [
    ...misfits.map((misfit) => misfitProblem(misfit, laying)),
    ...overlaps.map(overlapProblem),
    ...missProblems(laying),
    ...facing.filter(isUsual).flatMap((pair) => facingProblem(pair, laying)),
    ...inLineProblems(inLine, laying),
  ];
}

/** Whether a tape may be wrong where rooms can't stand as they say, not a word. */
export function isOfTapes({ kind }: Misfit): boolean {
  return kind === 'open-lengths';
}

export function misfitProblem(misfit: Misfit, laying: Laying): Problem {
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
    case 'well-one-sided': {
      const { room, side, other } = misfit;
      const message = `${theWall(side, room)} is open to ${other.record.name}, on another level, and no part of that one's ceiling is open to ${room.record.name}`;
      const fix = `in ${other.record.origin.file}, record the part of the ceiling that is open: open-above: { height: …, to: ${room.slug} }`;
      return problemAt(room.record.origin, sidePath(side, room), 'open-side-one-sided', message, {
        fix,
        severity: 'warning',
      });
    }
    case 'well-unseen': {
      const { room, part, other } = misfit;
      const message = `${part.name} of ${room.record.name} is open above to ${other.record.name}, and no side of ${other.record.name} is open to ${room.record.name}`;
      const fix = `in ${other.record.origin.file}, record the sides that are open to ${room.slug}`;
      return problemAt(room.record.origin, [...part.path, 'open-above', 'to'], 'open-side-one-sided', message, {
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

/** Loops that do not close, each told once, at the joint that misses most. A joint that another loop pulls at misses too: its own loop closes, and is
 *  not told. */
function missProblems(laying: Laying): readonly Problem[] {
  const { joints, rooms, at } = laying;
  const told = new Set<Joint>();
  const missing = joints
    .map((joint) => ({ joint, miss: Math.hypot(...jointRows(joint, rooms).map((row) => missOf(row, at))) }))
    .filter(({ miss }) => miss > leastMiss)
    .toSorted((a, b) => b.miss - a.miss);
  const loops = missing.flatMap(({ joint }): readonly Problem[] => {
    if (told.has(joint)) return [];
    const loop = loopOf(joint, joints, rooms);
    if (!loop || Math.hypot(loop.miss.x, loop.miss.y) < leastMiss) return [];
    for (const one of loop.joints) told.add(one);
    return [missProblem(joint, misclosure(joint, loop, laying), laying)];
  });
  const [worst] = missing;
  // What no loop says, the walls do.
  return loops.length > 0 || !worst ? loops : [missProblem(worst.joint, alone(worst.joint, worst.miss), laying)];
}

function missProblem(joint: Joint, message: string, laying: Laying): Problem {
  const { room, path } = placeOf(joint, laying);
  const fix = 'one of the tapes around it is wrong';
  return problemAt(room.record.origin, path, 'rooms-misclose', message, { fix, severity: 'warning' });
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
  return `${name} puts its rooms ${inText(miss)} from where the walls beside them do`;
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

/** A wall that is as far out of line of several is told once. */
function inLineProblems(pairs: readonly Pair[], laying: Laying): readonly Problem[] {
  const found = new Map<string, { readonly pair: Pair; readonly stands: string; readonly lines: string[] }>();
  for (const pair of pairs) {
    const { a, b, gap } = pair;
    const off = Math.abs(gap);
    if (off < odd.least || off > odd.most['in-line']) continue;
    const stands = `${inText(off)} ${gap > 0 ? 'outside' : 'inside'}`;
    const key = `${b.room}/${b.side.index}/${stands}`;
    const one = found.get(key) ?? { pair, stands, lines: [] };
    one.lines.push(theWall(a.side, roomAt(laying, a.room)));
    found.set(key, one);
  }
  return [...found.values()].map(({ pair: { b }, stands, lines }) => {
    const room = roomAt(laying, b.room);
    const message = `${theWall(b.side, room)} stands ${stands} the line of ${joinWords(lines)}`;
    const fix = `if that is meant, write jogs: [${b.side.wall.id}]`;
    const path = sidePath(b.side, room);
    return problemAt(room.record.origin, path, 'walls-out-of-line', message, { fix, severity: 'notice' });
  });
}

function placeOf({ kind, name, a, b }: Joint, laying: Laying): { readonly room: LayRoom; readonly path: Path } {
  if (kind === 'place') return { room: roomAt(laying, b.room), path: ['place'] };
  const room = roomAt(laying, a.room);
  const opening = room.measure.openings.find(({ mark, own }) => own && mark === name);
  if (kind === 'opening' && opening) return { room, path: [...opening.record.path, 'at'] };
  return { room, path: 'side' in a ? sidePath(room.sides[a.side] as Side, room) : shapePath(room) };
}
