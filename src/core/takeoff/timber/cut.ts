import { factOf } from '../../fact/index.js';
import type { Option } from '../../model/index.js';
import { printLength, type Length } from '../../../base/units/index.js';
import { usualKerf } from '../layout/rules.js';
import { packed } from '../layout/search/pack.js';
import { stockOf } from '../stock.js';
import type { Cut, Cutting, PlaceQuantity } from '../takeoff.js';

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
  const plan = planFor(stock, fitting);
  const cuts = plan.pieces.map(({ end, board }) => ({
    length: end as Length,
    from: (plan.boards[board] ?? end) as Length,
  }));
  return {
    stock: stockOf([...plan.boards.map((length) => length as Length), ...tooLong]),
    cuts: alike([...cuts, ...tooLong.map((length) => ({ length, from: length }))]),
    departures: stockOf(tooLong).map(
      ({ length, count }) =>
        `${count} of ${printLength(length)}, longer than any that is sold (${printLength(longest)}): ask for that length`,
    ),
  };
}

/** Packed board by board, unless each piece by itself from the shortest that holds it buys less. */
function planFor(
  stock: readonly Length[],
  pieces: readonly Length[],
): Pick<ReturnType<typeof packed>, 'boards' | 'pieces'> {
  const spot = { along: 0, across: 0 };
  const laid = pieces.map((length, span) => ({ span, start: 0, end: length as number, board: span, spot }));
  const none = { boards: [], pieces: laid, offcuts: [], bought: Infinity };
  const plan = packed(none, { stock, kerf: usualKerf, face: 1, spans: [] });
  const boards = pieces.map((length) => Math.min(...stock.filter((board) => board >= length)));
  const bought = boards.reduce((sum, board) => sum + board, 0);
  return plan.bought <= bought ? plan : { boards, pieces: laid };
}

/** Longest stock first, then longest piece. */
function alike(cuts: readonly Omit<Cut, 'count'>[]): readonly Cut[] {
  const counts = new Map<string, Cut>();
  for (const { length, from } of cuts) {
    const key = `${from} ${length}`;
    counts.set(key, { length, from, count: (counts.get(key)?.count ?? 0) + 1 });
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
