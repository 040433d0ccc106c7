import { counted, feet, printLength } from '../../../base/units/index.js';
import type { PlaceQuantity, TradeCount } from '../takeoff.js';
import type { Infill, RailPiece } from './rail.js';

const source = 'common practice, no source';

/** A piece with what fills it, and the name of its run. */
interface Filled<Kind extends Infill['fill']> {
  readonly name: string;
  readonly piece: RailPiece;
  readonly infill: Extract<Infill, { readonly fill: Kind }>;
}

/** What fills the bays of all runs, as it is ordered: balusters, cables by number and length, panels by width. */
export function infillCounts(runs: readonly PlaceQuantity[]): readonly TradeCount[] {
  const filled = runs.flatMap(({ name, rail }) =>
    (rail?.pieces ?? []).flatMap((piece) => (piece.infill ? [{ name, piece, infill: piece.infill }] : [])),
  );
  return [
    ...balusters(filled.flatMap((each) => (isOf(each, 'balusters') ? [each] : []))),
    ...cables(filled.flatMap((each) => (isOf(each, 'cables') ? [each] : []))),
    ...panels(filled.flatMap((each) => (isOf(each, 'panels') ? [each] : []))),
  ];
}

function isOf<Kind extends Infill['fill']>(
  each: { readonly name: string; readonly piece: RailPiece; readonly infill: Infill },
  fill: Kind,
): each is Filled<Kind> {
  return each.infill.fill === fill;
}

function balusters(filled: readonly Filled<'balusters'>[]): readonly TradeCount[] {
  if (filled.length === 0) return [];
  const why = filled.map(({ name, piece: { bays }, infill: { count, bay, gap } }) => {
    const each = bays === 0 ? 0 : count / bays;
    return `${name}: ${counted(bays, 'bay')} of ${printLength(bay)} clear with ${each} in each, ${printLength(gap)} between`;
  });
  return [{ ...wholeCount('balusters', sum(filled)), why: why.join('; '), source }];
}

function cables(filled: readonly Filled<'cables'>[]): readonly TradeCount[] {
  if (filled.length === 0) return [];
  const why = filled
    .map(({ name, infill: { count, length } }) => `${name}: ${count} of ${printLength(length)}`)
    .join('; ');
  const length = filled.reduce((all, { infill }) => all + infill.count * feet(infill.length), 0);
  return [
    { ...wholeCount('cables', sum(filled)), why, source },
    { unit: 'lin ft of cable', amount: length, why: 'from post to post, without what is cut off at the ends', source },
  ];
}

/** One count for each width, as panels are made. */
function panels(filled: readonly Filled<'panels'>[]): readonly TradeCount[] {
  const widths = new Map<string, Filled<'panels'>[]>();
  for (const each of filled) {
    const width = printLength(each.infill.width);
    widths.set(width, [...(widths.get(width) ?? []), each]);
  }
  return [...widths].map(([width, own]) => ({
    ...wholeCount(`panels ${width} wide`, sum(own)),
    why: own
      .map(
        ({ name, piece: { bays }, infill: { bay } }) => `${name}: ${counted(bays, 'bay')} of ${printLength(bay)} clear`,
      )
      .join('; '),
    source,
  }));
}

function sum(filled: readonly { readonly infill: Pick<Infill, 'count'> }[]): number {
  return filled.reduce((all, { infill }) => all + infill.count, 0);
}

function wholeCount(unit: string, amount: number): Pick<TradeCount, 'unit' | 'amount' | 'whole'> {
  return { unit, amount, whole: amount };
}
