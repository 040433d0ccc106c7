import { furthestJoint, type JointRule } from './joint.js';
import { mayJoin, type Offcut, type Span, type Task } from './task.js';

/** A board of this length from the shop, or an off-cut. */
export type Source = number | Offcut;

/** Pieces that fill a span, or begin to, as a chain back to the end at which filling begins. */
export interface Filling {
  readonly source: Source;
  readonly start: number;
  readonly end: number;
  readonly before: Filling | undefined;
  /** Sums over the chain: length bought, pieces, and what is left over after cuts. */
  readonly bought: number;
  readonly pieces: number;
  readonly left: number;
}

export interface Filled {
  readonly filling: Filling;
  /** Filling begins at the far end. */
  readonly mirrored: boolean;
}

/** A span is tried with at most so many pieces beyond the fewest that could fill it. */
const piecesBeyondFewest = 1;

/** Ways to fill a span: an off-cut or none to begin with, then whole boards, then a board or an off-cut cut to length;
 *  from either end. Where a whole board would end at a forbidden place it is cut shorter. Of ways that buy and leave the
 *  same, one with fewest pieces. */
export function fillingsOf(
  task: Task,
  span: Span,
  offcuts: readonly Offcut[],
  beside: readonly number[],
): readonly Filled[] {
  const length = span.end - span.start;
  const wide = distinct(offcuts.filter((offcut) => offcut.width >= span.width));
  const ways = new Ways();
  if (!mayJoin(task, length)) addFinals(ways, task, wide, length, undefined, false);
  else {
    for (const mirrored of [false, true])
      addJoined(ways, task, jointRule(task, span, beside, mirrored), wide, mirrored);
  }
  return ways.all();
}

/** Ways found so far, one for each pair of lengths bought and left. */
class Ways {
  private readonly found: Filled[] = [];
  private readonly places = new Map<number, Map<number, number>>();

  /** Adds the chain `before` ended by a piece of `source`, unless a way that buys and leaves the same has no more pieces. */
  add(source: Source, end: number, before: Filling | undefined, kerf: number, mirrored: boolean): void {
    const sums = extendedSums(source, end, before, kerf);
    let byLeft = this.places.get(sums.bought);
    if (!byLeft) this.places.set(sums.bought, (byLeft = new Map<number, number>()));
    const place = byLeft.get(sums.left) ?? this.found.length;
    const rival = this.found[place];
    if (rival && rival.filling.pieces <= sums.pieces) return;
    byLeft.set(sums.left, place);
    this.found[place] = { filling: { source, start: before?.end ?? 0, end, before, ...sums }, mirrored };
  }

  all(): readonly Filled[] {
    return this.found;
  }
}

function jointRule(task: Task, span: Span, beside: readonly number[], mirrored: boolean): JointRule {
  const from = (place: number): number => (mirrored ? span.end - place : place - span.start);
  const { leastPiece, stagger, framing } = task;
  const base = { length: span.end - span.start, leastPiece, stagger, beside: beside.map(from) };
  return framing === undefined ? base : { ...base, framing: { spacing: framing, phase: from(span.framingAt) } };
}

function addJoined(ways: Ways, task: Task, rule: JointRule, offcuts: readonly Offcut[], mirrored: boolean): void {
  addOnward(ways, task, rule, offcuts, undefined, mirrored);
  for (const offcut of offcuts) {
    if (offcut.length >= rule.length) continue;
    const first = linked(task, rule, offcut, undefined);
    const rest = offcuts.filter((other) => other !== offcut);
    if (first) addOnward(ways, task, rule, rest, first, mirrored);
  }
}

/** Goes on from the joint at the end of `begun` with whole boards, and ends from each joint that they reach. The first
 *  chain to reach a joint has fewest pieces; others are dropped. */
function addOnward(
  ways: Ways,
  task: Task,
  rule: JointRule,
  offcuts: readonly Offcut[],
  begun: Filling | undefined,
  mirrored: boolean,
): void {
  const reached = new Set<number>();
  const rest = rule.length - (begun?.end ?? 0);
  let rounds = Math.ceil(rest / (task.stock[0] ?? rest)) + piecesBeyondFewest;
  let chains: readonly (Filling | undefined)[] = [begun];
  for (; chains.length > 0 && rounds > 0; rounds -= 1) {
    const longer: Filling[] = [];
    for (const chain of chains) {
      addFinals(ways, task, offcuts, rule.length, chain, mirrored);
      for (const board of task.stock) {
        if (board >= rule.length - (chain?.end ?? 0)) continue;
        const next = linked(task, rule, board, chain);
        if (!next || reached.has(next.end)) continue;
        reached.add(next.end);
        longer.push(next);
      }
    }
    chains = longer;
  }
}

/** Adds every way to reach the end of the span with one piece more. */
function addFinals(
  ways: Ways,
  { stock, kerf }: Task,
  offcuts: readonly Offcut[],
  end: number,
  before: Filling | undefined,
  mirrored: boolean,
): void {
  const need = end - (before?.end ?? 0);
  for (const offcut of offcuts) if (offcut.length >= need) ways.add(offcut, end, before, kerf, mirrored);
  for (const board of stock) if (board >= need) ways.add(board, end, before, kerf, mirrored);
}

/** The chain with a piece of `source` more, which ends at the furthest joint. */
function linked(task: Task, rule: JointRule, source: Source, before: Filling | undefined): Filling | undefined {
  const start = before?.end ?? 0;
  const end = furthestJoint(rule, start, lengthOf(source));
  return end === undefined
    ? undefined
    : { source, start, end, before, ...extendedSums(source, end, before, task.kerf) };
}

/** Sums over the chain `before` with a piece of `source` more. */
function extendedSums(
  source: Source,
  end: number,
  before: Filling | undefined,
  kerf: number,
): Pick<Filling, 'bought' | 'pieces' | 'left'> {
  return {
    bought: (before?.bought ?? 0) + (typeof source === 'number' ? source : 0),
    pieces: (before?.pieces ?? 0) + 1,
    left: (before?.left ?? 0) + afterCut(lengthOf(source), end - (before?.end ?? 0), kerf),
  };
}

/** Length left after a piece is cut off; the cut itself takes the kerf, or what there is. */
export function afterCut(length: number, piece: number, kerf: number): number {
  return Math.max(0, length - piece - kerf);
}

function lengthOf(source: Source): number {
  return typeof source === 'number' ? source : source.length;
}

function distinct(offcuts: readonly Offcut[]): readonly Offcut[] {
  return offcuts.filter((offcut, i) => {
    const before = offcuts[i - 1];
    return !before || before.length !== offcut.length || before.width !== offcut.width;
  });
}
