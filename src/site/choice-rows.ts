import type { Alternative, BookOption, BookSelection } from '../core/book/index.js';
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
} from '../base/units/index.js';
import { changeWords } from '../sheet/index.js';
import { leftWords, rangeWords } from '../table/index.js';
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

/** Every short fact of the candidates for a place, and what follows from each. */
export function choiceRows(selection: BookSelection, candidates: readonly Candidate[], view: View): RowGroup[] {
  const row = (label: string, cell: (candidate: Candidate) => string, more: Partial<SideRow> = {}): SideRow => ({
    label,
    cells: candidates.map(cell),
    ...more,
  });
  const drawn = (figure: (candidate: Candidate) => number | undefined) => {
    const figures = candidates.map(figure);
    return figures.every((each) => each !== undefined) ? { drawn: figures } : {};
  };
  return [
    { title: 'The house', rows: houseRows(selection, row, drawn, view) },
    { title: 'Cost in place', rows: costRows(candidates, row) },
    { title: 'Quantity', rows: quantityRows(candidates, row) },
    { title: 'What it is', rows: productRows(selection, row, drawn, view) },
    { title: 'Time', rows: timeRows(row, drawn, candidates) },
  ];
}

type RowMaker = (label: string, cell: (candidate: Candidate) => string, more?: Partial<SideRow>) => SideRow;
type Drawer = (figure: (candidate: Candidate) => number | undefined) => { readonly drawn?: readonly number[] };

function houseRows(selection: BookSelection, row: RowMaker, drawn: Drawer, view: View): SideRow[] {
  const { id, standard, rest, allowance } = selection;
  const ranged = (view.decisionOf(id)?.choices.length ?? 0) > 1;
  const range = ({ alternative: { option } }: Candidate): string => {
    const found = view.rangeOf(id, option);
    return found ? rangeWords(found, 'always') : 'not considered';
  };
  return [
    row('Contract total', ({ alternative }) => printMoney(alternative.houseTotal, 'always'), { strong: true }),
    row(
      rest ? 'Against the place still open' : 'Against today',
      ({ alternative }) => changeWords(alternative.againstToday, 'always'),
      drawn(({ alternative }) => alternative.againstToday),
    ),
    row(standard === undefined ? 'Against none' : 'Against the standard', ({ alternative }) =>
      alternative.againstStandard === 0 ? 'no difference' : printMoneyChange(alternative.againstStandard, 'always'),
    ),
    ...(ranged ? [row('Over what else may be chosen', range)] : []),
    ...(allowance === undefined ? [] : leftRows(rest !== undefined, row)),
  ];
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
      row(capital(partWords[part]), ({ alternative }) => printMoney(alternative.cost[part], 'always')),
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

function productRows({ category }: BookSelection, row: RowMaker, drawn: Drawer, view: View): SideRow[] {
  const length = (value: Length): string =>
    view.book.house.beside ? `${printLength(value)} (${printLengthBeside(value)})` : printLength(value);
  const rules = view.category(category)?.attributes ?? [];
  const attribute = ({ option }: Candidate, name: string): string =>
    option.attributes.find((each) => each.name === name)?.attribute.text ?? '–';
  return [
    row('Thickness', ({ option }) => (option.thickness === undefined ? 'not recorded' : length(option.thickness))),
    row('Weight', ({ option }) => (option.weight ? printWeightPer(option.weight) : 'not recorded')),
    row(
      'Weight in place',
      ({ alternative: { pounds } }) => (pounds === undefined ? 'not recorded' : printWeight(pounds)),
      drawn(({ alternative }) => alternative.pounds),
    ),
    ...rules
      .map(({ name, label }) => row(label, (candidate) => attribute(candidate, name)))
      .filter(({ cells }) => cells.some((cell) => cell !== '–')),
  ];
}

function timeRows(row: RowMaker, drawn: Drawer, candidates: readonly Candidate[]): SideRow[] {
  // A fact that none of them has is no row.
  const rowIf = <T>(
    label: string,
    of: (candidate: Candidate) => T | undefined,
    say: (fact: T) => string,
  ): SideRow[] => {
    const words = (candidate: Candidate): string => {
      const fact = of(candidate);
      return fact === undefined ? 'not recorded' : say(fact);
    };
    return candidates.some((candidate) => of(candidate) !== undefined) ? [row(label, words)] : [];
  };
  return [
    row(
      'Lead time',
      ({ option }) => printLeadTime(option.leadDays),
      drawn(({ option }) => option.leadDays),
    ),
    row('Decide by', ({ alternative }) => printDay(alternative.decision.by), { strong: true }),
    row('How far off', ({ alternative: { decision } }) =>
      decision.state === 'decided' ? 'decided' : describeSlack(decision.slack),
    ),
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
  ];
}

/** `2 March 2026, good until 1 April 2026`. */
function quotedText({ quoted }: BookOption): string {
  if (!quoted) return 'not recorded';
  const until = quoted.until === undefined ? '' : `, good until ${printDay(quoted.until)}`;
  return `${printDay(quoted.on)}${until}`;
}

/** `$7.40 / sq ft`; parts by name where there are several. */
function pricesText({ parts }: BookOption, of: 'material' | 'labor'): string {
  return parts
    .map(({ part, unit, ...rates }) => {
      const price = printRate({ rate: rates[of], unit });
      return parts.length > 1 ? `${part} ${price}` : price;
    })
    .join('\n');
}

function returnWords({ untilDays, restocking }: NonNullable<BookOption['returns']>): string {
  return `within ${untilDays} days, ${printPercent(restocking)} kept`;
}
