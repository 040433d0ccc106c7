import { notToldYet, printDay, printDays, printMoney, printMoneyChange, printWeight } from '../../base/units/index.js';
import type { SelectionChange, SelectionSide } from './room-change.js';
import { laterWords, leadWords, poundsWords, quantityWords } from './words.js';

/** One fact of a changed selection in words: what it was, what it is, and how far apart, where that can be said. */
export interface SelectionRow {
  readonly label: string;
  readonly from: string;
  readonly to: string;
  readonly difference: string;
}

const nothing = '–';

/** The facts of a changed selection that differ, in words for a table; the product itself is left to its picture. */
export function selectionRows(change: SelectionChange): readonly SelectionRow[] {
  const { from, to, cost, byChoice, own, contract, pounds, days } = change;
  const row = (label: string, read: (side: SelectionSide) => string, difference = ''): SelectionRow => ({
    label,
    from: from ? read(from) || nothing : nothing,
    to: to ? read(to) || nothing : nothing,
    difference,
  });
  const rows = [
    row('Places', (side) => side.placeText),
    row('Quantity', (side) => quantityWords(side.quantities)),
    row('Cost in place', (side) => printMoney(side.cost, 'always'), cost === 0 ? '' : printMoneyChange(cost, 'always')),
    row('Weight', weightText, pounds === 0 ? '' : poundsWords(pounds)),
    row('Lead time', leadText, days.lead === 0 ? '' : leadWords(days.lead)),
    row('Decide by', (side) => printDay(side.decideBy), days.decideBy === 0 ? '' : laterWords(days.decideBy)),
    row('Order by', (side) => printDay(side.orderBy), days.orderBy === 0 ? '' : laterWords(days.orderBy)),
    row('Supplied by', (side) => (side.supply === 'contractor' ? 'the contractor' : 'the owner')),
    row('Standard', (side) => side.standardName ?? ''),
    row('Allowance', (side) => side.allowanceName ?? ''),
    row('Considered', (side) => side.considering.join(', ')),
    row('State', (side) => side.state),
    row('Note', (side) => side.note ?? ''),
  ].filter((each) => each.from !== each.to);
  const effect = own ? byChoice : contract;
  return [
    {
      label: 'Contract',
      from: '',
      to: '',
      difference: effect === 0 ? 'unchanged' : printMoneyChange(effect, 'always'),
    },
    ...rows,
  ];
}

function weightText({ pounds, counted }: SelectionSide): string {
  if (counted === undefined) return '';
  return pounds === undefined ? 'not recorded' : printWeight(pounds);
}

function leadText({ leadDays, counted, option }: SelectionSide): string {
  if (counted === undefined && option === undefined) return '';
  if (leadDays === undefined) return notToldYet;
  return leadDays === 0 ? 'from stock' : printDays(leadDays).replace(' ', ' working ');
}
