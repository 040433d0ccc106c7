import { lookUp, type Book } from '../core/book/index.js';
import { printDay, printMoneyChange } from '../base/units/index.js';

/** What stands in the way of issuing for construction, each in a sentence with its place: choices that are due and open,
 *  work that nobody does, and change that no approved change order covers. Empty when nothing does. */
export function issueBlockers(book: Book): readonly string[] {
  const { selections, scope, money } = book;
  const look = lookUp(book);
  const due = selections.filter(
    ({ state, decision }) => state === 'open' && (decision.state === 'late' || decision.state === 'due-soon'),
  );
  const gaps = scope.findings.filter(({ kind }) => kind !== 'overlap');
  return [
    ...due.map(
      ({ room, placeText, category, decision, source, line }) =>
        `${source}:${line}: ${look.roomTitle(room)}, ${placeText}: ${category} is open and was to be decided by ${printDay(decision.by)}`,
    ),
    ...gaps.map(({ source, line, what }) => `${source}:${line}: ${what}`),
    ...(money.agreed.notCovered === 0
      ? []
      : [
          `${printMoneyChange(money.agreed.notCovered, 'always')} of change is not covered by an approved change order: draft one with bookmatch compare --draft`,
        ]),
  ];
}
