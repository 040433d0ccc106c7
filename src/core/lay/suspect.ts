import { cross } from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import { fitOf, type Fit } from './fit.js';
import type { End, Joint } from './joint.js';
import { jointsOf } from './joints.js';
import { withSideMoved, type LayRoom, type Side } from './laid-room.js';
import { layRooms, type Laying } from './lay-rooms.js';
import type { Shift } from './least-squares.js';
import { isUsual, type Pair } from './pair.js';
import { jointRows, placeRooms, type Row } from './place-rooms.js';

/** A tape that may be read or written wrong. */
export type Tape =
  | { readonly of: 'side'; readonly room: LayRoom; readonly side: Side }
  /** The place of an opening, in the room that records it or in the one that sees it. */
  | { readonly of: 'opening'; readonly room: LayRoom; readonly mark: string }
  /** How far from another room's corner its record says that a room stands. */
  | { readonly of: 'place'; readonly room: LayRoom; readonly way: 'x' | 'y' }
  /** The wall that an opening is in. */
  | { readonly of: 'wall'; readonly room: LayRoom; readonly mark: string; readonly wall: string };

/** A tape that, read otherwise, makes the house fit. */
export interface Suspect {
  readonly tape: Tape;
  /** What would have to be added to it, in feet: to an opening's place, or to a side outward. */
  readonly by: number;
  /** By how much the house would fit better, in squares of what tapes may miss. */
  readonly gain: number;
}

/** How many of those that explain as much are told by name. */
export const named = 3;

/** How far a tape is thought to be off at most, in feet, when nothing else is known; far over what is to be found. */
const prior = 30;

const nearParallel = 0.01;

/** Tapes that are tried in earnest, of those that promise most. */
const tried = 48;

/** Of what the most promising explains, the share that another must promise to be tried too. */
const worthTrying = 0.3;

/** A suspect must explain at least this, and no less than the best by more than that, in squares of what tapes may miss: by one wall more or less
 *  that happens to stand as walls do, nobody is cleared. */
const explains = { least: 3, within: 17 };

/** Whether one wrong tape would explain what does not fit, and which: the best first, each tried by laying the house out with it. Two that explain
 *  as much are both here; which of them it is, only the tape can tell. By how much, is worked out once more for those that are named. */
export function findSuspects(laying: Laying, fit: Fit): readonly Suspect[] {
  const promising = promisingTapes(laying, fit);
  const found = promising.flatMap(({ tape, by }) => {
    const changed = withTape(laying, tape, by);
    if (!changed) return [];
    const gain = fit.score - fitOf(changed).score;
    return gain > explains.least ? [{ tape, by, gain }] : [];
  });
  const best = Math.max(...found.map(({ gain }) => gain));
  const ranked = found.filter(({ gain }) => gain > best - explains.within).toSorted((a, b) => b.gain - a.gain);
  return ranked
    .filter((one, index) => ranked.findIndex((other) => isSameTape(one.tape, other.tape)) === index)
    .map((suspect, index) => (index < named ? refined(suspect, laying) : suspect));
}

/** By how much, once more, from where the house nearly fits: what is far off no longer pulls. */
function refined(suspect: Suspect, laying: Laying): Suspect {
  const { tape, by } = suspect;
  const again = withTape(laying, tape, by);
  if (!again) return suspect;
  const room = again.rooms[tape.room.index] as LayRoom;
  const there: Tape =
    tape.of === 'side' ? { ...tape, room, side: room.sides[tape.side.index] as Side } : { ...tape, room };
  const { value } = again.squares.explainedBy(shiftsOf(there, again.rows, again.rooms), again.x, prior);
  return withTape(laying, tape, by + value) ? { ...suspect, by: by + value } : suspect;
}

/** Two parallel sides of a room are the ends of one measure across it. */
export function isSameTape(one: Tape, other: Tape): boolean {
  if (one.room !== other.room) return false;
  if (one.of === 'side') return other.of === 'side' && Math.abs(cross(one.side.out, other.side.out)) < nearParallel;
  if (one.of === 'place') return other.of === 'place' && one.way === other.way;
  return one.of === other.of && one.mark === other.mark;
}

/** Tapes by what one unknown more for each would explain of everything that is near, also what is too far off to hold the rooms. */
function promisingTapes(
  { rooms, joints, groups }: Laying,
  { facing, inLine }: Fit,
): readonly { readonly tape: Tape; readonly by: number }[] {
  const { squares, x, rows } = placeRooms(rooms, groups, joints, [...facing, ...inLine].filter(isUsual).map(loosened));
  const ranked = tapesOf(rooms, joints)
    .map((tape) => ({ tape, ...squares.explainedBy(shiftsOf(tape, rows, rooms), x, prior) }))
    .filter(({ value }) => Math.abs(value) > 1e-3)
    .toSorted((a, b) => b.gain - a.gain);
  const least = (ranked[0]?.gain ?? 0) * worthTrying;
  return ranked
    .filter(({ gain }) => gain > least)
    .slice(0, tried)
    .map(({ tape, value }) => ({ tape, by: value }));
}

/** A pair that is far from what it should be may be meant so: it says less, the farther it is. */
function loosened(pair: Pair): Pair {
  return { ...pair, sigma: Math.hypot(pair.sigma, (pair.gap - pair.should) / 4) };
}

const ways = ['x', 'y'] as const;

function tapesOf(rooms: readonly LayRoom[], joints: readonly Joint[]): readonly Tape[] {
  const sides = rooms.flatMap((room) => room.sides.map((side): Tape => ({ of: 'side', room, side })));
  const openings = joints.flatMap(({ kind, name, a, b }) =>
    kind === 'opening'
      ? [a, b].map((end): Tape => ({ of: 'opening', room: rooms[end.room] as LayRoom, mark: name }))
      : [],
  );
  const places = joints.flatMap(({ kind, b }) =>
    kind === 'place' ? ways.map((way): Tape => ({ of: 'place', room: rooms[b.room] as LayRoom, way })) : [],
  );
  return [...sides, ...openings, ...places];
}

/** By how much each equation's right side would change with the tape one foot longer. */
function shiftsOf(tape: Tape, rows: readonly Row[], rooms: readonly LayRoom[]): readonly Shift[] {
  const unit = 0.01;
  const moved = tape.of === 'side' ? withSideMoved(tape.room, tape.side.index, unit) : tape.room;
  if (!moved) return [];
  const changed = tape.of === 'side' ? rooms.map((room) => (room.index === moved.index ? moved : room)) : rooms;
  return rows.flatMap((row, equation): readonly Shift[] => {
    if (row.a !== tape.room.index && row.b !== tape.room.index) return [];
    const by = (isWith(row, tape, changed, unit) - row.is) / unit;
    return Math.abs(by) < 1e-9 ? [] : [{ equation, by }];
  });
}

/** An equation's right side with a tape changed. */
function isWith(row: Row, tape: Tape, changed: readonly LayRoom[], unit: number): number {
  const { source } = row;
  if ('pair' in source) {
    const { a, b, way } = source.pair;
    if (tape.of !== 'side') return row.is;
    const end = a.room === tape.room.index ? a : b;
    const before = end.side.from;
    const after = ((changed[end.room] as LayRoom).sides[end.side.index] as Side).from;
    const off = way.x * (after.x - before.x) + way.y * (after.y - before.y);
    return row.is + (end === a ? off : -off);
  }
  const { joint, across } = source;
  return jointRows(withEndMoved(joint, tape, unit), changed)[across ? 1 : 0].is;
}

/** A joint with an opening, or a recorded place, farther along by so much. */
function withEndMoved(joint: Joint, tape: Tape, by: number): Joint {
  const moved = (end: End): End => {
    if (tape.of === 'opening' && joint.kind === 'opening' && joint.name === tape.mark)
      return end.room === tape.room.index && 'offset' in end ? { ...end, offset: end.offset + by } : end;
    // It is measured in the other room's coordinates.
    if (tape.of === 'place' && joint.kind === 'place' && joint.b.room === tape.room.index)
      return 'point' in end && end === joint.a
        ? { ...end, point: { ...end.point, [tape.way]: end.point[tape.way] + by } }
        : end;
    return end;
  };
  return { ...joint, a: moved(joint.a), b: moved(joint.b) };
}

/** The house laid out with one tape longer by so much; undefined where a room or an opening can't be so. */
export function withTape({ rooms, joints }: Laying, tape: Tape, by: number): Laying | undefined {
  if (tape.of === 'wall') return undefined;
  if (tape.of !== 'side') {
    const isSo = joints.every((joint) => [joint.a, joint.b].every((end) => isOnSide(end, joint, tape, by, rooms)));
    if (!isSo) return undefined;
    return layRooms(
      rooms,
      joints.map((joint) => withEndMoved(joint, tape, by)),
    );
  }
  const moved = withSideMoved(tape.room, tape.side.index, by);
  if (!moved || !hasRoomForOpenings(moved)) return undefined;
  const changed = rooms.map((room) => (room.index === moved.index ? moved : room));
  return layRooms(changed, measuredAgain(joints, moved, changed));
}

/** What a moved room's open sides say goes by how long they are now. */
function measuredAgain(joints: readonly Joint[], moved: LayRoom, rooms: readonly LayRoom[]): readonly Joint[] {
  const again = jointsOf(rooms).joints;
  return joints.map((joint) => {
    const { kind, name, a, b } = joint;
    if (a.room !== moved.index && b.room !== moved.index) return joint;
    const same = again.find(
      (one) => one.kind === kind && one.name === name && one.a.room === a.room && one.b.room === b.room,
    );
    return same ? { ...joint, sigma: same.sigma } : joint;
  });
}

/** What is measured again may come out so much smaller than it is worked out here, in feet. */
const play = 0.5 / 12;

/** Whether an opening is still in its wall when its place in the tape's room is another by so much. */
function isOnSide(end: End, { kind, name }: Joint, tape: Tape, by: number, rooms: readonly LayRoom[]): boolean {
  if (tape.of !== 'opening' || kind !== 'opening' || name !== tape.mark) return true;
  if (end.room !== tape.room.index || !('offset' in end)) return true;
  const opening = tape.room.measure.openings.find(({ mark }) => mark === name);
  const half = opening ? feet(opening.width) / 2 : 0;
  const { run, wall } = (rooms[end.room] as LayRoom).sides[end.side] as Side;
  const length = wall.arc ? feet(wall.run) : run;
  return end.offset + by > half - play && end.offset + by < length - half + play;
}

function hasRoomForOpenings({ sides, measure }: LayRoom): boolean {
  return measure.openings.every(({ wall: id, at, width }) => {
    const side = sides.find(({ wall }) => wall.id === id);
    return !side || side.wall.arc !== undefined || feet(at) + feet(width) < side.run + play;
  });
}
