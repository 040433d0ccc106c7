import { pointInFeet, type Xy } from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import type { OpeningMeasure } from '../model/index.js';
import {
  between,
  isFacing,
  joinOpen,
  playAlong,
  pointOnSide,
  tapeSigma,
  twoTapes,
  type Joint,
  type Misfit,
} from './joint.js';
import type { LayRoom, Side } from './laid-room.js';
import { joinWell, looksInto } from './well.js';

/** Every pair of rooms that shares an opening, an open side or a well, or whose record says where it stands. */
export function jointsOf(rooms: readonly LayRoom[]): {
  readonly joints: readonly Joint[];
  readonly misfits: readonly Misfit[];
} {
  const bySlug = new Map(rooms.map((room) => [room.slug, room]));
  const joints: Joint[] = [];
  const misfits: Misfit[] = [];
  for (const room of rooms) {
    for (const opening of room.measure.openings) {
      const other = opening.own ? bySlug.get(opening.to) : undefined;
      if (other) joinOpening(room, other, opening, joints, misfits);
    }
    for (const side of room.sides) {
      const other = bySlug.get(side.wall.openTo ?? '');
      if (other?.level === room.level) joinOpenSides(room, side, other, joints, misfits);
    }
    for (const below of rooms.filter(({ level }) => level !== room.level)) {
      const open = room.sides.filter(({ wall }) => wall.openTo === below.slug);
      if (open.length > 0) joinWell(room, open, below, joints, misfits);
    }
    for (const part of room.record.ceiling) {
      const other = bySlug.get(part.openAbove?.to ?? '');
      if (other && other !== room && !looksInto(other, room)) misfits.push({ kind: 'well-unseen', room, part, other });
    }
    const placed = joinPlace(room, bySlug);
    if (placed) joints.push(placed);
  }
  return { joints, misfits };
}

function joinOpening(room: LayRoom, other: LayRoom, opening: OpeningMeasure, joints: Joint[], misfits: Misfit[]): void {
  const side = room.sides.find(({ wall }) => wall.id === opening.wall);
  if (!side) return;
  const offset = feet(opening.at) + feet(opening.width) / 2;
  const a = { room: room.index, side: side.index, offset };
  const { along, out } = pointOnSide(side, offset);
  const seen = other.measure.openings.find(({ mark, own }) => mark === opening.mark && !own);
  if (!seen) {
    const facing = other.sides.find(({ wall, out: theirs }) => wall.openTo === room.slug && isFacing(out, theirs));
    if (!facing) return;
    const b = { room: other.index, side: facing.index, isMiddle: true } as const;
    const lengths = [facing.run, feet(opening.width)] as const;
    const told = { room: other, side: facing, other: room, what: opening.mark, lengths };
    joinOpen({ kind: 'opening', name: opening.mark, a, b, along, out }, told, joints, misfits);
    return;
  }
  const theirs = other.sides.find(({ wall }) => wall.id === seen.wall);
  if (!theirs) return;
  const there = feet(seen.at) + feet(seen.width) / 2;
  const b = { room: other.index, side: theirs.index, offset: there };
  if (!isFacing(out, pointOnSide(theirs, there).out)) {
    const would = {
      room: sidesFacing(room, theirs, feet(opening.width)),
      other: sidesFacing(other, side, feet(opening.width)),
    };
    misfits.push({ kind: 'not-facing', opening, seen, room, other, would });
    return;
  }
  const thickness = between(side, theirs);
  joints.push({ kind: 'opening', name: opening.mark, a, b, along, out, thickness, sigma: twoTapes });
}

function sidesFacing({ sides }: LayRoom, { out }: Side, width: number): readonly string[] {
  return sides
    .filter((side) => side.wall.openTo === undefined && isFacing(side.out, out) && side.run > width - playAlong)
    .map(({ wall }) => wall.id);
}

function joinOpenSides(room: LayRoom, side: Side, other: LayRoom, joints: Joint[], misfits: Misfit[]): void {
  const theirs = other.sides
    .filter(({ wall, out }) => wall.openTo === room.slug && isFacing(out, side.out))
    .toSorted((a, b) => Math.abs(a.run - side.run) - Math.abs(b.run - side.run))[0];
  if (!theirs) {
    const isSeen = other.measure.openings.some(({ to, own }) => own && to === room.slug);
    if (!isSeen) misfits.push({ kind: 'open-one-sided', room, side, other });
    return;
  }
  // Once for the two.
  if (room.index > other.index) return;
  const joint = {
    kind: 'open-side',
    name: `${side.wall.id} | ${theirs.wall.id}`,
    a: { room: room.index, side: side.index, isMiddle: true },
    b: { room: other.index, side: theirs.index, isMiddle: true },
    along: side.along,
    out: side.out,
  } as const;
  const lengths = [side.run, theirs.run] as const;
  joinOpen(joint, { room, side, other, what: theirs.wall.id, lengths }, joints, misfits);
}

/** A room whose record says where it stands in another's coordinates. */
function joinPlace(room: LayRoom, bySlug: ReadonlyMap<string, LayRoom>): Joint | undefined {
  const { place } = room.record;
  const other = place && bySlug.get(place.from);
  if (!other) return undefined;
  return {
    kind: 'place',
    name: `the place of ${room.record.name}`,
    a: { room: other.index, point: pointInFeet(place.at) },
    b: { room: room.index, point: southWestOf(room) },
    along: { x: 1, y: 0 },
    out: { x: 0, y: 1 },
    thickness: 0,
    sigma: { along: tapeSigma, across: tapeSigma },
  };
}

function southWestOf({ outline }: LayRoom): Xy {
  return { x: Math.min(...outline.map(({ x }) => x)), y: Math.min(...outline.map(({ y }) => y)) };
}
