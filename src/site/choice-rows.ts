import type { Alternative, BookOption, BookSelection } from '../core/book/index.js';
import { withoutLabor } from '../core/fact/index.js';
import { describeSlack, printLeadTime } from '../core/calendar/index.js';
import { costParts } from '../core/model/index.js';
import {
  capital,
  printAmount,
  printDay,
  printRate,
  printLength,
  printLengthBeside,
  printMoney,
  printMoneyChange,
  printPercent,
  type Length,
  printWeight,
  printWeightPer,
  notPricedYet,
} from '../base/units/index.js';
import { leftWords, movesWords, rangeWords } from '../table/index.js';
import { lotText, neededText, netText } from './parts/arithmetic.js';
import type { SideRow } from './parts/side-by-side.js';
import { partWords } from './parts/words.js';
import type { View } from './view.js';

/** An option that could stand in a place, with its record. */
export interface Candidate {
  readonly alternative: Alternative;
  readonly option: BookOption;
}

export function candidatesOf(selection: BookSelection, view: View): readonly Candidate[] {
  return selection.alternatives.flatMap((alternative) => {
    const option = view.option(selection.category, alternative.option);
    return option ? [{ alternative, option }] : [];
  });
}

interface RowGroup {
  readonly title: string;
  readonly rows: readonly SideRow[];
}

export interface ChoiceRows {
  /** What is asked first: money, allowance, weight, time. */
  readonly first: readonly SideRow[];
  readonly groups: readonly RowGroup[];
}

/** Every short fact of the candidates for a place, and what follows from each. */
export function choiceRows(selection: BookSelection, candidates: readonly Candidate[], view: View): ChoiceRows {
  const row = (label: string, cell: (candidate: Candidate) => string, more: Partial<SideRow> = {}): SideRow => ({
    label,
    cells: candidates.map(cell),
    ...more,
  });
  const drawn = (figure: (candidate: Candidate) => number | undefined) => {
    const figures = candidates.map(figure);
    return figures.every((each) => each !== undefined) ? { drawn: figures } : {};
  };
  const [house, time] = [houseRows(selection, row, drawn, view), timeRows(row, drawn, candidates)];
  const product = productRows(selection, row, drawn, view);
  return {
    first: [...house.first, product.weight, ...time.first].filter(({ cells }) => cells.some((cell) => cell !== untold)),
    groups: [
      { title: 'Cost in place', rows: costRows(candidates, row) },
      { title: 'Quantity', rows: quantityRows(candidates, row) },
      { title: 'What it is', rows: product.rows },
      { title: 'Time and price', rows: [...time.rows, ...house.rows] },
    ].filter(({ rows }) => rows.length > 0),
  };
}

const untold = 'not recorded';

interface FirstAndMore {
  readonly first: readonly SideRow[];
  readonly rows: readonly SideRow[];
}

type RowMaker = (label: string, cell: (candidate: Candidate) => string, more?: Partial<SideRow>) => SideRow;
type Drawer = (figure: (candidate: Candidate) => number | undefined) => { readonly drawn?: readonly number[] };

function houseRows(selection: BookSelection, row: RowMaker, drawn: Drawer, view: View): FirstAndMore {
  const { id, standard, rest, allowance } = selection;
  const ranged = (view.decisionOf(id)?.choices.length ?? 0) > 1;
  const range = ({ alternative: { option } }: Candidate): string => {
    const found = view.rangeOf(id, option);
    return found ? rangeWords(found, 'always') : 'not considered';
  };
  return {
    first: [
      row(
        rest ? 'Moves the house by, against the place still open' : 'Moves the house by',
        ({ alternative }) => movesWords(alternative, selection.category, view, 'always'),
        { ...drawn(({ alternative }) => alternative.againstToday), strong: true },
      ),
      ...(ranged ? [row('The same over what else may be chosen', range)] : []),
      row('Contract total', ({ alternative }) => printMoney(alternative.houseTotal, 'always')),
      ...(allowance === undefined ? [] : leftRows(rest !== undefined, row)),
    ],
    rows: [
      row(standard === undefined ? 'Against none' : 'Against the standard', ({ alternative }) =>
        alternative.againstStandard === 0 ? 'no difference' : printMoneyChange(alternative.againstStandard, 'always'),
      ),
    ],
  };
}

function leftRows(hasRest: boolean, row: RowMaker): SideRow[] {
  const left = (of: 'after' | 'withRest') => (candidate: Candidate) => {
    const amount = candidate.alternative.left?.[of];
    return amount === undefined ? '–' : leftWords(amount, 'always');
  };
  return [
    row('Left in the allowance after this', left('after')),
    ...(hasRest ? [row('Left with the rest as above', left('withRest'))] : []),
  ];
}

function costRows(candidates: readonly Candidate[], row: RowMaker): SideRow[] {
  const parts = costParts.filter((part) => candidates.some(({ alternative }) => alternative.cost[part] !== 0));
  return [
    ...parts.map((part) =>
      row(capital(partWords[part]), ({ alternative, option }) =>
        part === 'labor' && withoutLabor(option) ? notPricedYet : printMoney(alternative.cost[part], 'always'),
      ),
    ),
    row('Total', ({ alternative }) => printMoney(alternative.cost.total, 'always'), { strong: true }),
    row('Material price', ({ option }) => pricesText(option, 'material')),
    row('Labor price', ({ option }) => pricesText(option, 'labor')),
  ];
}

function quantityRows(candidates: readonly Candidate[], row: RowMaker): SideRow[] {
  const anything = candidates.some(({ alternative }) => alternative.takeoff.length > 0);
  if (!anything) return [];
  const each = ({ alternative }: Candidate, text: (part: Alternative['takeoff'][number]) => string): string => {
    const { takeoff } = alternative;
    if (takeoff.length === 0) return 'nothing';
    return takeoff.map((part) => (takeoff.length > 1 ? `${part.part} ${text(part)}` : text(part))).join('\n');
  };
  return [
    row('Measured, net', (candidate) => each(candidate, netText)),
    row('Waste', (candidate) => each(candidate, ({ waste }) => `${printAmount(waste.percent, 2)} %`)),
    row('Needed here', (candidate) => each(candidate, neededText)),
    row('The house would order', ({ alternative: { lots } }) =>
      lots.length === 0
        ? 'nothing'
        : lots.map((lot) => (lots.length > 1 ? `${lot.part} ${lotText(lot)}` : lotText(lot))).join('\n'),
    ),
  ];
}

function productRows(
  { category }: BookSelection,
  row: RowMaker,
  drawn: Drawer,
  view: View,
): { readonly weight: SideRow; readonly rows: readonly SideRow[] } {
  const length = (value: Length): string =>
    view.book.house.beside ? `${printLength(value)} (${printLengthBeside(value)})` : printLength(value);
  const rules = view.category(category)?.attributes ?? [];
  const attribute = ({ option }: Candidate, name: string): string =>
    option.attributes.find((each) => each.name === name)?.attribute.text ?? '–';
  return {
    weight: row(
      'Weight in place',
      ({ alternative: { pounds } }) => (pounds === undefined ? untold : printWeight(pounds)),
      drawn(({ alternative }) => alternative.pounds),
    ),
    rows: [
      row('Thickness', ({ option }) => (option.thickness === undefined ? untold : length(option.thickness))),
      row('Weight', ({ option }) => (option.weight ? printWeightPer(option.weight) : untold)),
      ...rules
        .map(({ name, label }) => row(label, (candidate) => attribute(candidate, name)))
        .filter(({ cells }) => cells.some((cell) => cell !== '–')),
    ],
  };
}

function timeRows(row: RowMaker, drawn: Drawer, candidates: readonly Candidate[]): FirstAndMore {
  // A fact that none of them has is no row.
  const rowIf = <T>(
    label: string,
    of: (candidate: Candidate) => T | undefined,
    say: (fact: T) => string,
  ): SideRow[] => {
    const words = (candidate: Candidate): string => {
      const fact = of(candidate);
      return fact === undefined ? untold : say(fact);
    };
    return candidates.some((candidate) => of(candidate) !== undefined) ? [row(label, words)] : [];
  };
  return {
    first: [
      row(
        'Lead time',
        ({ option }) => printLeadTime(option.leadDays),
        drawn(({ option }) => option.leadDays),
      ),
      row('Decide by', ({ alternative: { decision } }) =>
        decision.state === 'decided'
          ? `${printDay(decision.by)}, decided`
          : `${printDay(decision.by)}, ${describeSlack(decision.slack)}`,
      ),
    ],
    rows: [
      row('Order by', ({ alternative }) => printDay(alternative.decision.orderBy)),
      ...rowIf('Ships', ({ alternative }) => alternative.decision.ships, printDay),
      row('On site', ({ alternative }) => printDay(alternative.decision.onSite)),
      ...rowIf('Taken back', ({ option }) => option.returns, returnWords),
      ...rowIf(
        'Restocking',
        ({ alternative }) => alternative.restocking,
        (cents) => printMoney(cents, 'always'),
      ),
      ...rowIf(
        'Withdrawn',
        ({ option }) => option.withdrawn,
        ({ on }) => `on ${printDay(on)}`,
      ),
      row('Price quoted', ({ option }) => quotedText(option)),
    ],
  };
}

/** `2 March 2026, good until 1 April 2026`. */
function quotedText({ quoted }: BookOption): string {
  if (!quoted) return untold;
  const until = quoted.until === undefined ? '' : `, good until ${printDay(quoted.until)}`;
  return `${printDay(quoted.on)}${until}`;
}

/** `$7.40 / sq ft`; parts by name where there are several. */
function pricesText({ parts }: BookOption, of: 'material' | 'labor'): string {
  return parts
    .map(({ part, unit, ...rates }) => {
      const rate = rates[of];
      const price = rate ? printRate({ rate, unit }) : notPricedYet;
      return parts.length > 1 ? `${part} ${price}` : price;
    })
    .join('\n');
}

function returnWords({ untilDays, restocking }: NonNullable<BookOption['returns']>): string {
  return `within ${untilDays} days, ${printPercent(restocking)} kept`;
}
