import { afterCut } from './fillings.js';
import type { LaidPiece, Offcut, Plan, Task } from './task.js';

/** How the next board is chosen: the least waste, or the least share of waste; from all lengths, or not the `skip` longest. */
interface Manner {
  readonly byShare: boolean;
  readonly skip: number;
}

/** Steps of the search for the best filling of one board. */
const patience = 200;

/** Cuts the pieces of a plan anew, where they lie as they are: board by board, each begun with the longest piece left and
 *  filled as full as can be. All pieces take the full width of a board. The best of several manners, or the plan itself
 *  when none buys less. */
export function packed(
  plan: Plan,
  { stock, kerf, face, spans }: Pick<Task, 'stock' | 'kerf' | 'face' | 'spans'>,
): Plan {
  const manners: readonly Manner[] = stock.flatMap((_, skip) => [
    { byShare: false, skip },
    { byShare: true, skip },
  ]);
  let best: Packing | undefined;
  for (const manner of manners) {
    best = packBy(plan.pieces, stock, kerf, manner, best ? sum(best.boards) : plan.bought) ?? best;
  }
  if (!best) return plan;
  return cutInOrder(plan.pieces, best, (piece) => spans[piece.span]?.width ?? face, { kerf, face });
}

/** Boards bought, and the board of each piece. */
interface Packing {
  readonly boards: readonly number[];
  readonly boardOf: readonly number[];
}

/** Undefined when it would not buy less than `than`. */
function packBy(
  pieces: readonly LaidPiece[],
  stock: readonly number[],
  kerf: number,
  { byShare, skip }: Manner,
  than: number,
): Packing | undefined {
  const left = pieces
    .map((piece, index) => ({ index, length: piece.end - piece.start }))
    .sort((a, b) => b.length - a.length);
  const boards: number[] = [];
  const boardOf = new Array<number>(pieces.length).fill(0);
  let bought = 0;
  let rest = sum(left.map((piece) => piece.length));
  while (left.length > 0) {
    if (bought + rest >= than) return undefined;
    const longest = left[0]?.length ?? 0;
    const long = stock.filter((length) => length >= longest);
    const fits = long.slice(Math.min(skip, long.length - 1));
    const all = shortestForAll(left, rest, stock, kerf);
    const choices = all ? [all] : fits.map((length) => fullest(left, length, kerf));
    const weigh = ({ length, over }: Filling): number => (byShare ? over / length : over);
    const choice = choices.reduce((a, b) => (weigh(b) < weigh(a) ? b : a));
    for (const at of [...choice.taken].sort((a, b) => b - a)) {
      const [piece] = left.splice(at, 1);
      if (!piece) continue;
      boardOf[piece.index] = boards.length;
      rest -= piece.length;
    }
    boards.push(choice.length);
    bought += choice.length;
  }
  return bought < than ? { boards, boardOf } : undefined;
}

/** Pieces one after another along each board, with what is left behind the last and beside those that are ripped. */
function cutInOrder(
  pieces: readonly LaidPiece[],
  { boards, boardOf }: Packing,
  widthOf: (piece: LaidPiece) => number,
  { kerf, face }: Pick<Task, 'kerf' | 'face'>,
): Plan {
  const used = boards.map(() => 0);
  const offcuts: Offcut[] = [];
  const cut = pieces.map((piece, i) => {
    const board = boardOf[i] ?? 0;
    const along = used[board] ?? 0;
    const length = piece.end - piece.start;
    const side = afterCut(face, widthOf(piece), kerf);
    if (side > 0) offcuts.push({ board, length, width: side, along, across: face - side });
    used[board] = along + length + kerf;
    return { ...piece, board, spot: { along, across: 0 } };
  });
  boards.forEach((length, board) => {
    const along = used[board] ?? 0;
    if (along < length) offcuts.push({ board, length: length - along, width: face, along, across: 0 });
  });
  return { boards, pieces: cut, offcuts, bought: sum(boards) };
}

function sum(lengths: readonly number[]): number {
  return lengths.reduce((total, length) => total + length, 0);
}

/** Pieces taken from a board, as places in the list of pieces left, and the length left over. */
interface Filling {
  readonly length: number;
  readonly taken: readonly number[];
  readonly over: number;
}

/** The shortest board that takes all pieces left, if any does. */
function shortestForAll(
  left: readonly { length: number }[],
  rest: number,
  stock: readonly number[],
  kerf: number,
): Filling | undefined {
  const needed = rest + kerf * (left.length - 1);
  const length = Math.min(...stock.filter((board) => board >= needed));
  return Number.isFinite(length) ? { length, taken: left.map((_, i) => i), over: length - needed } : undefined;
}

function fullest(left: readonly { length: number }[], length: number, kerf: number): Filling {
  const first = left[0]?.length ?? 0;
  let best: Filling = { length, taken: [0], over: afterCut(length, first, kerf) };
  let steps = 0;
  const taken = [0];
  const add = (from: number, over: number): void => {
    if (over < best.over) best = { length, taken: [...taken], over };
    let tried = -1;
    for (let i = from; i < left.length && steps < patience && best.over > 0; i += 1) {
      const piece = left[i]?.length ?? 0;
      if (piece > over || piece === tried) continue;
      tried = piece;
      steps += 1;
      taken.push(i);
      add(i + 1, afterCut(over, piece, kerf));
      taken.pop();
    }
  };
  add(1, best.over);
  return best;
}
