import type { Comparison, OptionChange, SelectionChange } from '../core/compare/index.js';
import type { IsoDate } from '../base/units/index.js';
import type { HandoutChange, HandoutChanges } from './handout.js';
import { own, told, quantity, size } from './own.js';
import { moneyWords, sieve, sieveName } from './sieve.js';
import { workAt } from './words.js';
import type { Work } from './work.js';

/** The issue before, and what lies between it and the Book of this handout. */
export interface Since {
  readonly number: number;
  readonly date: IsoDate;
  readonly comparison: Comparison;
}

/** What changed for the trade since an issue, in words: choices, places, quantities, supply, notes and product data. What
 *  moved money alone is no change of its work. */
export function changes({ number, date, comparison }: Since, work: Work): HandoutChanges {
  return {
    since: { number, date: sieve(date) },
    rooms: comparison.rooms.flatMap((room) => {
      const lines = room.selections
        .filter(({ trade }) => trade === work.trade.slug)
        .flatMap((change) => selectionLines(change, work));
      return lines.length === 0 ? [] : [{ room: told`${sieveName(room.number)} ${sieveName(room.name)}`, lines }];
    }),
    products: comparison.priceBook.flatMap((change) => productLines(change, work)),
  };
}

function selectionLines(change: SelectionChange, work: Work): readonly HandoutChange[] {
  const { from, to, aspects, quantities } = change;
  const has = (aspect: SelectionChange['aspects'][number]) => aspects.includes(aspect);
  const [before, after] = [sieveName(from?.optionName ?? ''), sieveName(to?.optionName ?? '')];
  const lines = [
    has('added') ? told`new: ${after}` : own(''),
    has('removed') ? told`no longer here: ${before}` : own(''),
    has('choice') ? told`${before} → ${after}` : own(''),
    has('places') ? own('other places') : own(''),
    has('supply') ? told`supply: ${sieve(from?.supply ?? '')} → ${sieve(to?.supply ?? '')}` : own(''),
    has('state') && !has('choice') ? told`${sieve(from?.state ?? '')} → ${sieve(to?.state ?? '')}` : own(''),
    has('note') ? own('the note reads differently') : own(''),
    ...quantities.map(({ part, unit, from: net, to: now }) => {
      const of = part === 'main' ? own('') : told` of ${sieveName(part)}`;
      return told`net${of} ${size(net, unit)} → ${quantity(now, unit)}`;
    }),
    has('decide-by') && to?.state === 'open' ? own('another day to decide') : own(''),
  ].filter((line) => line !== '');
  if (lines.length === 0) return [];
  return [{ what: workAt(work.look.categoryName(change.category), change.placeText), lines }];
}

/** Fields of an option that are money, by the names that a comparison gives them. */
const moneyFields = /^(?:material|labor|freight)\b/u;

function productLines({ option, name, fields }: OptionChange, work: Work): HandoutChanges['products'] {
  if (!work.products.has(option)) return [];
  const lines = fields
    .filter(({ field, from, to }) => !moneyFields.test(field) && moneyWords(`${field} ${from} ${to}`) === undefined)
    .map(({ field, from, to }) => told`${sieve(field)}: ${sieve(from)} → ${sieve(to)}`);
  return lines.length === 0 ? [] : [{ name: sieveName(name), lines }];
}
