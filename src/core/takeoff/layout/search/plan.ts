import { lay, type Strategy } from './lay.js';
import { packed } from './pack.js';
import { isBetter, type Plan, type Task } from './task.js';

const inch = 25_400_000;

/** The search goes on while more than this share is bought beyond the bound. */
const nearEnough = 0.01;

/** Surfaces of so few spans are searched for fewer pieces even when no less can be bought. */
const small = 20;

/** Tried in this order. Small surfaces, where one board more is much, are searched more widely: the work stays about the
 *  same. For sheets it is less: they come in few lengths, and three times the work finds nothing on the demo house. */
function strategies(task: Task): readonly Strategy[] {
  const [widest, work] = task.reuseRips ? [12, 140] : [40, 300];
  const beam = Math.min(widest, Math.max(4, Math.round(work / fewestPieces(task))));
  const branches = beam > 12 ? 6 : 4;
  return [
    { beam: 1, branches: 1, doubt: 0.05, piece: inch / 2 },
    { beam, branches, doubt: 0.05, piece: inch / 2 },
    { beam, branches, doubt: 0.2, piece: inch / 8 },
  ];
}

/** The best plan that the strategies find: least bought, then fewest pieces. `bound` is a length that none can go under. */
export function makePlan(task: Task, bound: number): Plan {
  const enough = bound * (1 + nearEnough);
  let best: Plan | undefined;
  for (const strategy of strategies(task)) {
    const laid = lay(task, strategy);
    const plan = mayPack(task) && laid.bought > enough ? packed(laid, task) : laid;
    if (!best || isBetter(plan, best)) best = plan;
    const fewerPieces = strategy.beam === 1 && task.spans.length <= small && best.pieces.length > fewestPieces(task);
    if (best.bought <= enough && !fewerPieces) return best;
  }
  if (!best) return { boards: [], pieces: [], offcuts: [], bought: 0 };
  return best;
}

function fewestPieces({ spans, stock }: Task): number {
  const longest = stock[0] ?? 1;
  return spans.reduce((sum, { start, end }) => sum + Math.ceil((end - start) / longest), 0);
}

/** Pieces of ripped courses share a board only where strips are used; the search keeps account of that, packing does not. */
function mayPack(task: Task): boolean {
  return task.reuseOffcuts && (!task.reuseRips || task.spans.every((span) => span.width === task.face));
}
