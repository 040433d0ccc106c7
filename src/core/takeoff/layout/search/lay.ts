import { fillingsOf, type Filled } from './fillings.js';
import { emptyState, jointsBeside, laidState, planOf, type State } from './state.js';
import type { Plan, Span, Task } from './task.js';
import { usefulnessOf } from './usefulness.js';

/** How a search judges half-finished layouts. */
export interface Strategy {
  /** Layouts carried along side by side, and ways tried to go on from each. */
  readonly beam: number;
  readonly branches: number;
  /** Share of the off-cuts in hand that is counted as lost already. */
  readonly doubt: number;
  /** Length that one piece fewer is worth. */
  readonly piece: number;
}

/** Fills the spans one after another, carrying the most promising layouts along. Deterministic. Where the rules leave no
 *  way to fill a span, they are loosened for it: stagger first, then framing, then the least piece. */
export function lay(task: Task, strategy: Strategy): Plan {
  const usefulness = usefulnessOf(task);
  const ahead = lengthsAhead(task);
  let states: readonly State[] = [emptyState];
  task.spans.forEach((span, index) => {
    const score = (state: State): number => scoreOf(state, task, ahead[index + 1] ?? 0, strategy);
    const isUseful = (length: number): boolean => usefulness.isUseful(index + 1, length, task.face);
    const next = states.flatMap((state) => {
      const fillings = mostPromising(waysToFill(task, span, state), strategy, isUseful);
      return fillings.map((filled) => laidState(task, usefulness, state, index, span, filled));
    });
    states = best(next, score, strategy.beam);
  });
  return states.map(planOf).reduce((least, plan) => (plan.bought < least.bought ? plan : least));
}

function waysToFill(task: Task, span: Span, state: State): readonly Filled[] {
  const beside = jointsBeside(state, span);
  for (const loosen of loosened) {
    const ways = fillingsOf({ ...task, ...loosen }, span, state.offcuts, beside);
    if (ways.length > 0) return ways;
  }
  return [];
}

/** Rules as they are, then without one after another. With none of them every span can be filled. */
const loosened: readonly Partial<Task>[] = [
  {},
  { stagger: 0 },
  { stagger: 0, framing: undefined },
  { stagger: 0, framing: undefined, leastPiece: 0 },
];

/** Length still to be covered from each span on, ripped courses by their share of the width where strips are used. */
function lengthsAhead(task: Task): readonly number[] {
  const ahead = new Array<number>(task.spans.length + 1).fill(0);
  for (let i = task.spans.length - 1; i >= 0; i -= 1) {
    const span = task.spans[i];
    if (!span) continue;
    const share = task.reuseRips ? span.width / task.face : 1;
    ahead[i] = (ahead[i + 1] ?? 0) + (span.end - span.start) * share;
  }
  return ahead;
}

/** Length lost, or likely to be: off-cuts in hand beyond what is left to cover are lost for certain. */
function scoreOf(state: State, task: Task, ahead: number, { doubt, piece }: Strategy): number {
  const inHand = state.offcuts.reduce((sum, offcut) => sum + (offcut.length * offcut.width) / task.face, 0);
  const spare = Math.max(0, inHand - ahead);
  return state.lost + spare + doubt * (inHand - spare) + piece * state.pieces;
}

/** A few ways to go on: those that lose least, then those that take most from the off-cuts in hand. */
function mostPromising(
  ways: readonly Filled[],
  { branches, doubt, piece }: Strategy,
  isUseful: (length: number) => boolean,
): readonly Filled[] {
  if (ways.length <= branches) return ways;
  const weigh = ({ filling: { left, bought, pieces } }: Filled): number =>
    (isUseful(left) ? 0 : left * (1 - doubt)) + doubt * bought + piece * pieces;
  return ways
    .map((way) => ({ way, weight: weigh(way) }))
    .sort((a, b) => a.weight - b.weight)
    .slice(0, branches)
    .map(({ way }) => way);
}

function best(states: readonly State[], score: (state: State) => number, count: number): readonly State[] {
  const seen = new Set<string>();
  return states
    .map((state) => ({ state, score: score(state) }))
    .sort((a, b) => a.score - b.score)
    .filter(({ state }) => {
      if (seen.size >= count) return false;
      const key = `${state.offcuts.map(({ length, width }) => `${length}x${width}`).join()};${state.joints.join()}`;
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    })
    .slice(0, count)
    .map(({ state }) => state);
}
