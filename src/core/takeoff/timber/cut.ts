import { factOf } from '../../fact/index.js';
import type { Option } from '../../model/index.js';
import { printLength, type Length } from '../../../base/units/index.js';
import { usualKerf } from '../layout/rules.js';
import { packed } from '../layout/search/pack.js';
import type { Cut, Cutting, PlaceQuantity, StockCount } from '../takeoff.js';

/** Cuts the timbers of all places together from the lengths that the option is sold in. A timber is never joined from two: one longer
 *  than any is asked for by its own length. Undefined where there are no timbers or no lengths are recorded. */
export function cutTimbers(places: readonly PlaceQuantity[], option: Option): Cutting | undefined {
  const stock = [...new Set(factOf(option, 'pieces', 'stock') ?? [])].sort((a, b) => b - a);
  const pieces = places.flatMap(({ timber }) =>
    timber ? Array.from({ length: timber.count }, () => timber.length) : [],
  );
  const [longest] = stock;
  if (longest === undefined || pieces.length === 0) return undefined;
  const fitting = pieces.filter((length) => length <= longest);
  const tooLong = pieces.filter((length) => length > longest);
  const cuts = [...cutFrom(stock, fitting), ...tooLong.map((length) => ({ piece: length, board: length }))];
  const boards = [...boardsOf(stock, fitting), ...tooLong];
  return {
    stock: countOf(boards),
    cuts: alike(cuts),
    departures: countOf(tooLong).map(
      ({ length, count }) =>
        `${count} of ${printLength(length)}, longer than any that is sold (${printLength(longest)}): ask for that length`,
    ),
  };
}

interface CutPiece {
  readonly piece: Length;
  readonly board: Length;
}

function cutFrom(stock: readonly Length[], pieces: readonly Length[]): readonly CutPiece[] {
  const plan = planFor(stock, pieces);
  return plan.pieces.map(({ end, board }) => ({ piece: end as Length, board: (plan.boards[board] ?? end) as Length }));
}

function boardsOf(stock: readonly Length[], pieces: readonly Length[]): readonly Length[] {
  return planFor(stock, pieces).boards.map((length) => length as Length);
}

function planFor(stock: readonly Length[], pieces: readonly Length[]): ReturnType<typeof packed> {
  const spot = { along: 0, across: 0 };
  const laid = pieces.map((length, span) => ({ span, start: 0, end: length as number, board: span, spot }));
  const each = { boards: [], pieces: laid, offcuts: [], bought: Infinity };
  const task = { stock, kerf: usualKerf, face: 1, spans: [], stagger: 0, leastPiece: 0 };
  return packed(each, { ...task, reuseOffcuts: true, reuseRips: false, joinAny: false });
}

function countOf(lengths: readonly Length[]): readonly StockCount[] {
  const counts = new Map<Length, number>();
  for (const length of lengths) counts.set(length, (counts.get(length) ?? 0) + 1);
  return [...counts].sort(([a], [b]) => a - b).map(([length, count]) => ({ length, count }));
}

/** Longest stock first, then longest piece. */
function alike(cuts: readonly CutPiece[]): readonly Cut[] {
  const counts = new Map<string, Cut>();
  for (const { piece, board } of cuts) {
    const key = `${board} ${piece}`;
    counts.set(key, { length: piece, from: board, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return [...counts.values()].sort((a, b) => b.from - a.from || b.length - a.length);
}

/** `3 of 26'-0", cut into 3 of 25'-0"`. */
export function cuttingWords({ stock, cuts, departures }: Cutting): readonly string[] {
  const bought = stock.toReversed().map(({ length, count }) => {
    const own = cuts.filter(({ from }) => from === length).map((cut) => `${cut.count} of ${printLength(cut.length)}`);
    return `${count} of ${printLength(length)}, cut into ${own.join(' and ')}`;
  });
  return [...bought, ...departures];
}
