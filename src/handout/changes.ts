import type { Comparison, OptionChange, SelectionChange } from '../compare/index.js';
import { printAmount } from '../units/index.js';
import type { IsoDate } from '../units/index.js';
import type { HandoutChange, HandoutChanges } from './handout.js';
import { moneyWords } from './sieve.js';
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
    since: { number, date },
    rooms: comparison.rooms.flatMap((room) => {
      const lines = room.selections
        .filter(({ trade }) => trade === work.trade.slug)
        .flatMap((change) => selectionLines(change, work));
      return lines.length === 0 ? [] : [{ room: `${room.number} ${room.name}`, lines }];
    }),
    products: comparison.priceBook.flatMap((change) => productLines(change, work)),
  };
}

function selectionLines(change: SelectionChange, work: Work): readonly HandoutChange[] {
  const { from, to, aspects, quantities } = change;
  const has = (aspect: SelectionChange['aspects'][number]) => aspects.includes(aspect);
  const lines = [
    has('added') ? `new: ${to?.optionName ?? ''}` : '',
    has('removed') ? `no longer here: ${from?.optionName ?? ''}` : '',
    has('choice') ? `${from?.optionName ?? ''} → ${to?.optionName ?? ''}` : '',
    has('places') ? 'other places' : '',
    has('supply') ? `supply: ${from?.supply ?? ''} → ${to?.supply ?? ''}` : '',
    has('state') && !has('choice') ? `${from?.state ?? ''} → ${to?.state ?? ''}` : '',
    has('note') ? 'the note reads differently' : '',
    ...quantities.map(({ part, unit, from: before, to: after }) => {
      const of = part === 'main' ? '' : ` of ${part}`;
      return `net${of} ${printAmount(before, 1)} → ${printAmount(after, 1)} ${unit}`;
    }),
    has('decide-by') && to?.state === 'open' ? 'another day to decide' : '',
  ].filter((line) => line !== '');
  if (lines.length === 0) return [];
  return [{ what: `${work.look.categoryName(change.category)}, ${change.placeText}`, lines }];
}

/** Fields of an option that are money, by the names that a comparison gives them. */
const moneyFields = /^(?:material|labor|freight)\b/u;

function productLines({ option, name, fields }: OptionChange, work: Work): HandoutChanges['products'] {
  if (!work.products.has(option)) return [];
  const lines = fields
    .filter(({ field, from, to }) => !moneyFields.test(field) && moneyWords(`${field} ${from} ${to}`) === undefined)
    .map(({ field, from, to }) => `${field}: ${from} → ${to}`);
  return lines.length === 0 ? [] : [{ name, lines }];
}
