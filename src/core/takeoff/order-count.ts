import { printAmount, printPieces, printQuantity, printSize } from '../../base/units/index.js';
import { sumStock } from './stock.js';
import type { LaidShares, LayoutSummary, Takeoff } from './takeoff.js';

/** Said apart, so that who may not read of money is spared it. */
const byArea = 'The price goes by the area';

/** What is laid out, in pieces and in area, of one place or of the whole house. */
export interface LaidCount extends Pick<LayoutSummary, 'orderBy' | 'stock'> {
  readonly surface: LaidShares;
}

/** Two counts of the same thing, said apart: what to order, what to check it with, and where the pieces go. */
export interface OrderStatement {
  readonly order: string;
  readonly check: string;
  /** Both in few words, where the pieces stand beside them. */
  readonly short: string;
  /** What becomes of the pieces that are bought: the figures add up to them. */
  readonly why: string;
}

/** Which of two counts is the order, and which its check. `required`: the area with its waste. */
export function orderStatement(
  { orderBy, stock, surface }: LaidCount,
  { required, wasteWords }: { readonly required: number; readonly wasteWords: string },
): OrderStatement {
  const pieces = printPieces(stock);
  const laid = `${pieces}, ${areaWords(surface.bought)}`;
  const area = `${areaWords(required)} ${wasteWords}`;
  const more = surface.bought - required;
  const why = whyOf(surface);
  const by = orderBy === 'pieces' ? 'the pieces. Check by area' : 'area. Check by the pieces';
  const [checked, than] = orderBy === 'pieces' ? [required, -more] : [surface.bought, more];
  const short = `Order by ${by}: ${areaWords(checked)}, ${apart(than)}`;
  if (orderBy === 'pieces') {
    return {
      order: `Order by pieces, as laid: ${laid}`,
      check: `Check by area: ${area}; the pieces are ${apart(more)}`,
      short,
      why,
    };
  }
  const spare =
    more > 0
      ? `the pieces are ${apart(more)}, so the packs of the whole house must make up for it`
      : `the order is ${apart(-more)}, for faults and mistakes`;
  return { order: `Order by area: ${area}`, check: `Check as laid: ${laid}; ${spare}`, short, why };
}

/** The same for a take-off that is laid out; undefined where none is. */
export function statementOf({ layout, required, waste }: Takeoff): OrderStatement | undefined {
  return layout && orderStatement(layout, { required, wasteWords: `with ${printAmount(waste.percent, 1)} % waste` });
}

/** In sentences. */
export function statementWords({ order, check, why }: OrderStatement): string {
  return `${order}. ${check}. ${why}. ${byArea}.`;
}

/** What to order, by the count that is the order. */
export function orderedAmount(laid: Pick<LaidCount, 'orderBy' | 'surface'> | undefined, byArea: number): number {
  return laid?.orderBy === 'pieces' ? laid.surface.bought : byArea;
}

/** The layouts of several places as one count; undefined unless all of them are laid. */
export function sumLaid(takeoffs: readonly Takeoff[]): LaidCount | undefined {
  const laid = takeoffs.flatMap(({ layout }) => layout ?? []);
  const [first] = laid;
  if (!first || laid.length < takeoffs.length) return undefined;
  return {
    orderBy: first.orderBy,
    stock: sumStock(laid.flatMap(({ stock }) => stock)),
    surface: laid.map(({ surface }) => surface).reduce(addShares),
  };
}

function addShares(a: LaidShares, b: LaidShares): LaidShares {
  const sum = (key: keyof LaidShares) => (a[key] + b[key]) as LaidShares['bought'];
  return {
    bought: sum('bought'),
    covered: sum('covered'),
    cutAway: sum('cutAway'),
    strips: sum('strips'),
    ends: sum('ends'),
    endTrim: sum('endTrim'),
    sawCuts: sum('sawCuts'),
  };
}

const losses: readonly { readonly key: keyof LaidShares; readonly words: string }[] = [
  { key: 'cutAway', words: 'cut away at openings, slopes and notches' },
  { key: 'strips', words: 'strips that no other course takes' },
  { key: 'ends', words: 'ends too short for another place' },
  { key: 'endTrim', words: 'trimmed off the ends of boards' },
  { key: 'sawCuts', words: 'saw cuts' },
];

function whyOf(surface: LaidShares): string {
  const lost = losses.filter(({ key }) => surface[key] >= 0.05);
  const rest = lost.map(({ key, words }) => `${printSize(surface[key], 'sq ft')} ${words}`);
  return `Of the pieces ${[`${areaWords(surface.covered)} is covered`, ...rest].join(', ')}`;
}

function apart(more: number): string {
  if (Math.abs(more) < 0.05) return 'the same';
  return more > 0 ? `${areaWords(more)} more` : `${areaWords(-more)} less`;
}

const areaWords = (area: number): string => printQuantity(area, 'sq ft');
