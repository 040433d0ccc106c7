import { cross } from '../../base/geometry/index.js';
import { fitOf, type Fit } from './fit.js';
import type { End, Joint } from './joint.js';
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

/** How many are told at most. */
const told = 3;

/** How far a tape is thought to be off at most, in feet, when nothing else is known; far over what is to be found. */
const prior = 30;

const nearParallel = 0.01;

/** Tapes that are tried in earnest, of those that promise most. */
const tried = 48;

/** Of what the most promising explains, the share that another must promise to be tried too. */
const worthTrying = 0.3;

/** A suspect must explain at least this, and no less than the best by more than that, in squares of what tapes may miss. */
const explains = { least: 3, within: 12 };

/** Whether one wrong tape would explain what does not fit, and which: the best first, each tried by laying the house out with it. Two that explain
 *  as much are both here; which of them it is, only the tape can tell. */
export function findSuspects(laying: Laying, fit: Fit): readonly Suspect[] {
  const promising = promisingTapes(laying, fit);
  const found = promising.flatMap(({ tape, by }) => {
    const changed = withTape(laying, tape, by);
    if (!changed) return [];
    const gain = fit.score - fitOf(layRooms(changed.rooms, changed.joints)).score;
    return gain > explains.least ? [{ tape, by, gain }] : [];
  });
  const best = Math.max(...found.map(({ gain }) => gain));
  const ranked = found.filter(({ gain }) => gain > best - explains.within).toSorted((a, b) => b.gain - a.gain);
  return ranked
    .filter((one, index) => ranked.findIndex((other) => isSameTape(one.tape, other.tape)) === index)
    .slice(0, told)
    .map((suspect) => refined(suspect, laying));
}

/** By how much, once more, from where the house nearly fits: what is far off no longer pulls. */
function refined(suspect: Suspect, laying: Laying): Suspect {
  const { tape, by } = suspect;
  const changed = withTape(laying, tape, by);
  if (!changed) return suspect;
  const again = layRooms(changed.rooms, changed.joints);
  const room = again.rooms[tape.room.index] as LayRoom;
  const there: Tape =
    tape.of === 'side' ? { ...tape, room, side: room.sides[tape.side.index] as Side } : { ...tape, room };
  const { value } = again.squares.explainedBy(shiftsOf(there, again.rows, again.rooms), again.x, prior);
  return { ...suspect, by: by + value };
}

/** Two parallel sides of a room are the ends of one measure across it. */
function isSameTape(one: Tape, other: Tape): boolean {
  if (one.room !== other.room) return false;
  if (one.of === 'side') return other.of === 'side' && Math.abs(cross(one.side.out, other.side.out)) < nearParallel;
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

function tapesOf(rooms: readonly LayRoom[], joints: readonly Joint[]): readonly Tape[] {
  const sides = rooms.flatMap((room) => room.sides.map((side): Tape => ({ of: 'side', room, side })));
  const openings = joints.flatMap(({ kind, name, a, b }) =>
    kind === 'opening'
      ? [a, b].map((end): Tape => ({ of: 'opening', room: rooms[end.room] as LayRoom, mark: name }))
      : [],
  );
  return [...sides, ...openings];
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
  const shifted = tape.of === 'opening' ? withOpeningMoved(joint, tape, unit) : joint;
  return jointRows(shifted, changed)[across ? 1 : 0].is;
}

function withOpeningMoved(joint: Joint, { room, ...tape }: Tape, by: number): Joint {
  if (tape.of !== 'opening' || joint.kind !== 'opening' || joint.name !== tape.mark) return joint;
  const moved = (end: End): End =>
    end.room === room.index && 'offset' in end ? { ...end, offset: end.offset + by } : end;
  return { ...joint, a: moved(joint.a), b: moved(joint.b) };
}

/** The house with one tape longer by so much. */
function withTape(
  { rooms, joints }: Laying,
  tape: Tape,
  by: number,
): { readonly rooms: readonly LayRoom[]; readonly joints: readonly Joint[] } | undefined {
  if (tape.of === 'opening') return { rooms, joints: joints.map((joint) => withOpeningMoved(joint, tape, by)) };
  if (tape.of === 'wall') return undefined;
  const moved = withSideMoved(tape.room, tape.side.index, by);
  if (!moved) return undefined;
  return { rooms: rooms.map((room) => (room.index === moved.index ? moved : room)), joints };
}
