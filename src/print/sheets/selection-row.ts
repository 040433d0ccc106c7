import { makerText, withoutLabor } from '../../core/fact/index.js';
import { leftWords, placesOf, rangeWords, restWords } from '../../table/index.js';
import type { BookOption, BookSelection, LookUp } from '../../core/book/index.js';
import type { Takeoff } from '../../core/takeoff/index.js';
import { counted, notToldYet, printDay, printLength, shown, notPricedYet } from '../../base/units/index.js';
import { amountFigure, changeFigure, type Figure } from './figure.js';
import { stateMark, type StateMark } from './state.js';

/** A line of a room's table of selections. */
export interface SelectionRow {
  readonly place: string;
  readonly category: string;
  /** Id of the option whose swatch it is; empty where there is nothing to show. */
  readonly swatch: string;
  readonly finish: string;
  /** Maker and model, then what decides fit: sizes, grade. */
  readonly product: string;
  readonly facts: string;
  readonly quantities: readonly QuantityLine[];
  readonly change: Figure;
  /** What the change is against. */
  readonly against: string;
  readonly state: StateMark;
  /** Number of its note under the table. */
  readonly note: string;
}

interface QuantityLine {
  readonly figure: Figure;
  readonly unit: string;
}

/** A place still open, with all that is considered for it. */
export interface OpenChoice {
  readonly place: string;
  readonly category: string;
  readonly decideBy: string;
  readonly reason: string;
  readonly isLate: boolean;
  readonly options: readonly OptionRow[];
}

interface OptionRow {
  readonly swatch: string;
  readonly name: string;
  readonly product: string;
  readonly summary: string;
  readonly mark: string;
  readonly difference: Figure;
  readonly lead: string;
}

export function selectionRow(selection: BookSelection, look: LookUp, note: string): SelectionRow {
  const option = look.option(selection.category, selection.chosen);
  const standard = look.option(selection.category, selection.standard);
  const shown = option ?? (selection.state === 'open' ? standard : undefined);
  return {
    place: placesOf(selection),
    category: look.categoryName(selection.category),
    swatch: option?.id ?? '',
    finish: finishText(selection, option),
    product: option ? productText(option) : openText(selection, standard),
    facts: shown && option ? factsText(shown) : '',
    quantities: selection.takeoff.filter(({ net }) => net > 0).map((takeoff) => quantityLine(takeoff)),
    change: changeFigure(selection.change),
    against: againstText(selection, look),
    state: stateMark(selection),
    note,
  };
}

export function openChoice(selection: BookSelection, look: LookUp): OpenChoice {
  const { decision } = selection;
  return {
    place: placesOf(selection),
    category: look.categoryName(selection.category),
    decideBy: printDay(decision.by),
    reason: [decision.reason, restWords(selection, look)].filter((text) => text !== '').join('. '),
    isLate: decision.state === 'late',
    options: selection.alternatives.flatMap((alternative) => {
      const option = look.option(selection.category, alternative.option);
      if (!option) return [];
      const range = look.rangeOf(selection.id, alternative.option);
      const { left } = alternative;
      return [
        {
          swatch: option.id,
          name: option.name,
          product: productText(option),
          summary: option.summary ?? '',
          mark: [
            ...(alternative.isStandard ? ['In the contract'] : []),
            ...(withoutLabor(option) ? [`labor ${notPricedYet}`] : []),
            ...(range ? [rangeWords(range, 'always')] : []),
            ...(left ? [`${leftWords(left.after, 'always')}${left.after < 0 ? '' : ' left'}`] : []),
          ].join('; '),
          difference: changeFigure(alternative.againstToday),
          lead: leadText(option.leadDays),
        },
      ];
    }),
  };
}

function productText(option: BookOption): string {
  return makerText(option, ' · ');
}

function leadText(days: number | undefined): string {
  if (days === undefined) return notToldYet;
  if (days === 0) return 'none';
  return days % 5 === 0 ? counted(days / 5, 'week') : counted(days, 'day');
}

/** `sq ft` as it is; parts of a product by name: `lin ft corners`. Each is said by its part alone. */
function unitText({ part, unit }: { readonly part: string; readonly unit: string }): string {
  if (part === 'main') return unit;
  return unit === 'each' ? `each, ${part}` : `${unit} ${part}`;
}

function quantityLine(takeoff: Takeoff): QuantityLine {
  const { part, net, unit } = takeoff;
  const own = shown(net, unit);
  return { figure: amountFigure(own.amount, own.digits), unit: unitText({ part, unit: own.unit }) };
}

function finishText(selection: BookSelection, option: BookOption | undefined): string {
  if (option) return option.name;
  return selection.state === 'none' ? 'None, by choice' : 'Not chosen yet';
}

function openText(selection: BookSelection, standard: BookOption | undefined): string {
  if (selection.state !== 'open') return '';
  const count = selection.alternatives.length;
  const considered = count === 0 ? 'nothing considered yet' : `${count} considered`;
  return standard ? `${considered}; the contract holds ${standard.name}` : considered;
}

/** The first facts that decide cost and fit, as many as a line holds. */
function factsText(option: BookOption): string {
  const facts = option.attributes.map(({ label, attribute: { value, text } }) => {
    if (value.kind === 'yes-no') return value.yes ? label.toLowerCase() : '';
    if (value.kind === 'text') return text;
    return `${label.charAt(0).toLowerCase()}${label.slice(1)} ${text}`;
  });
  const hasThickness = option.attributes.some(({ name }) => name.includes('thick'));
  if (option.thickness !== undefined && !hasThickness) facts.push(`${printLength(option.thickness)} thick`);
  return facts
    .filter((fact) => fact !== '')
    .reduce((line, fact) => (line.length + fact.length > 46 ? line : line === '' ? fact : `${line}, ${fact}`), '');
}

function againstText(selection: BookSelection, look: LookUp): string {
  if (selection.supply === 'owner-furnished') return 'owner furnishes';
  if (selection.allowance !== undefined) return `allowance: ${look.allowanceName(selection.allowance)}`;
  if (selection.chosen !== undefined && selection.chosen === selection.standard) return 'standard';
  return '';
}
