import { fromFeet, toRecordStep, writeLength, type Length } from '../../../base/units/index.js';
import { plainName, quotedText } from '../name.js';
import type { PlanWall, RoomPlan } from '../room/plan.js';
import type { Space } from '../room/space.js';
import { outward, type Wall } from '../room/wall.js';
import type { Hole } from './hole.js';
import { heightsOf, wallsThrough, type InWall } from './place.js';

/** An opening as records have it: in full in the first room, by its mark in the second. */
export interface DraftOpening {
  readonly hole: Hole;
  readonly mark: string;
  readonly own: InWall;
  readonly other?: InWall;
  readonly sill: number;
  readonly height: number;
}

/** What a model leaves open about a space. */
export interface Question {
  readonly space: Space;
  readonly asks: string;
}

export interface DraftOpenings {
  readonly openings: readonly DraftOpening[];
  readonly questions: readonly Question[];
  /** In no wall of a space that is read. */
  readonly nowhere: readonly Hole[];
}

const metre = 1 / 0.3048;
/** What one walks through may begin so far off the floor, in feet, by thresholds and floor finishes. */
const threshold = 0.15 * metre;

/** The holes of a model in the walls of its spaces. `markOf` gives each a mark of its own. */
export function draftOpenings(
  holes: readonly Hole[],
  walls: ReadonlyMap<Space, readonly Wall[]>,
  markOf: (hole: Hole) => string,
): DraftOpenings {
  const openings: DraftOpening[] = [];
  const questions: Question[] = [];
  const nowhere: Hole[] = [];
  for (const hole of holes) {
    const [own, other] = wallsThrough(hole, walls);
    if (!own) {
      nowhere.push(hole);
      continue;
    }
    const { space, wall } = own;
    const what = `${holeTitle(hole)} in its ${wall.name} wall`;
    if (!other && hole.isExternal !== true) {
      questions.push({ space, asks: `${what} is left out: the model does not say what it leads to` });
      continue;
    }
    const { sill, height } = overFloor(hole, space);
    if (hole.kind === 'door' && sill > 0) {
      const over = writeLength(toRecordStep(fromFeet(sill)));
      questions.push({ space, asks: `${what} is left out: it begins ${over} over the floor` });
      continue;
    }
    const under = space.shape.top - space.shape.height;
    if (sill + height > under + 0.001) {
      const cut = writeLength(toRecordStep(fromFeet(sill + height - under)));
      questions.push({ space, asks: `${what} reaches ${cut} over the ceiling, and is drafted to the ceiling` });
    }
    const mark = markOf(hole);
    openings.push({ hole, mark, own, ...(other && { other }), sill, height: Math.min(height, under - sill) });
  }
  return { openings, questions, nowhere };
}

/** `door #93 Door A`. */
export function holeTitle({ kind, entity, name }: Hole): string {
  return `${kind === 'open' ? 'opening' : kind} #${entity.id}${name === '' ? '' : ` ${name}`}`;
}

function overFloor(hole: Hole, { shape }: Space): { readonly sill: number; readonly height: number } {
  const [low, high] = heightsOf(hole);
  const sill = low - shape.height;
  const isWalked = hole.kind !== 'window' && sill < threshold;
  const from = isWalked || sill < 0.001 ? 0 : sill;
  return { sill: from, height: high - shape.height - from };
}

/** A mark of the model where it looks like one and nothing else has it; else the first of its letter that is free: D01, W01, O01. */
export function marker(holes: readonly Hole[], taken: ReadonlySet<string>): (hole: Hole) => string {
  const counts = new Map<string, number>();
  for (const { tag } of holes) counts.set(tag, (counts.get(tag) ?? 0) + 1);
  const used = new Set([...taken, ...holes.map(({ tag }) => tag)]);
  const letters = { door: 'D', window: 'W', open: 'O' } as const;
  const next = { door: 1, window: 1, open: 1 };
  return ({ kind, tag }) => {
    if (/^[A-Za-z]{1,3}[.-]?\d{1,4}[A-Za-z]?$/u.test(tag) && counts.get(tag) === 1 && !taken.has(tag)) return tag;
    for (;;) {
      const mark = `${letters[kind]}${String(next[kind]).padStart(2, '0')}`;
      next[kind] += 1;
      if (!used.has(mark)) return mark;
    }
  };
}

/** The opening's line in the record of a room that it is in. */
export function openingLine(opening: DraftOpening, space: Space, { walls }: RoomPlan): string | undefined {
  const side = opening.own.space === space ? opening.own : opening.other;
  const planned = walls.find(({ wall }) => wall === side?.wall);
  if (!side || !planned) return undefined;
  const width = Math.min(toRecordStep(fromFeet(opening.own.to - opening.own.from)), planned.run) as Length;
  const at = `wall: ${side.wall.name}, at: ${writeLength(placeAlong(side, planned, width))}`;
  if (side !== opening.own) return `  - { mark: ${opening.mark}, recorded-in: ${opening.own.space.slug}, ${at} }`;
  const { hole, mark, other, sill, height } = opening;
  const keys = [
    `mark: ${mark}`,
    `kind: ${hole.kind}`,
    at,
    `width: ${writeLength(width)}`,
    `height: ${writeLength(toRecordStep(fromFeet(height)))}`,
    ...(sill > 0 ? [`sill: ${writeLength(toRecordStep(fromFeet(sill)))}`] : []),
    `to: ${other?.space.slug ?? 'outside'}`,
    ...swingKeys(opening),
    `note: ${quotedText(noteOf(hole))}`,
  ];
  return `  - { ${keys.join(', ')} }`;
}

/** From the wall's left end as the record has it, inside the wall. */
function placeAlong({ from }: InWall, planned: PlanWall, width: Length): Length {
  const at = toRecordStep(fromFeet(from));
  return Math.max(0, Math.min(at, planned.run - width)) as Length;
}

/** By its GlobalId it is found in the model again. */
function noteOf({ entity, name }: Hole): string {
  return plainName(`${typeof entity.args[0] === 'string' ? entity.args[0] : `#${entity.id}`} ${name}`);
}

/** A door whose hinges and way are not known. */
export function isUnswung(opening: DraftOpening): boolean {
  const { kind, swing } = opening.hole;
  if (kind !== 'door' || (swing?.operation ?? 'swing') !== 'swing') return false;
  return swingKeys(opening).length === 0;
}

/** A door's own y is the way that it swings; its hinges are told as seen that way. */
function swingKeys({ hole, own, other }: DraftOpening): readonly string[] {
  const { operation, hinge } = hole.swing ?? {};
  if (operation === undefined) return [];
  const out = outward(own.wall);
  const along = out.x * hole.ahead.x + out.y * hole.ahead.y;
  if (operation !== 'swing') return [`operation: ${operation}`];
  if (hinge === undefined || Math.abs(along) < 0.9) return [];
  const beyond = other?.space.slug ?? 'outside';
  const flipped = hinge === 'left' ? 'right' : 'left';
  return [`hinge: ${along > 0 ? hinge : flipped}`, `swing: ${along > 0 ? beyond : own.space.slug}`];
}
