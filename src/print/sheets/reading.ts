import { printDay, printPercent } from '../../base/units/index.js';
import { statusWords, type Status } from '../../sheet/index.js';
import { creditMarkupText, markupOnText, markupText, taxText } from '../../core/price/index.js';
import type { LookUp } from '../../core/book/index.js';

type Sign = Status | 'owner-furnished';

/** Half a page that says how the book is meant. */
export interface Reading {
  readonly states: readonly { readonly sign: Sign; readonly word: string; readonly text: string }[];
  readonly rules: readonly { readonly term: string; readonly text: string }[];
}

const signsExplained: readonly (readonly [Sign, string])[] = [
  ['open', 'not decided; the options considered are listed with the room'],
  ['due-soon', 'not decided, and its last day is near'],
  ['late', 'not decided, and its last day is past'],
  ['chosen', 'decided, and counted in every total'],
  ['ordered', 'bought; to change it is a change order'],
  ['installed', 'in place'],
  ['none', 'nothing is wanted here'],
  ['owner-furnished', 'bought by the owner, outside the contract'],
];

export function makeReading(look: LookUp): Reading {
  const { on, money } = look.book;
  return {
    states: signsExplained.map(([sign, text]) => ({ sign, word: statusWords[sign], text })),
    rules: [
      { term: 'Day', text: `All states, totals and days left are as of ${printDay(on)}.` },
      {
        term: 'Change',
        text: `What a choice adds to (+) or takes from (−) the contract sum, against what the contract holds for that place. Mark-up on what goes over is ${markupText(money)}, figured on ${markupOnText(money)}; of what is saved ${printPercent(money.creditReturns)} returns to the owner, ${creditMarkupText(money)}.`,
      },
      {
        term: 'Allowance',
        text: 'A sum in the contract for things not chosen when it was signed. It says what it covers. It moves the total when it is overrun, or when everything on it is decided.',
      },
      {
        term: 'Quantity',
        text: 'Net, measured from the recorded dimensions by the rule of the trade. Waste and whole packs are in the order list. For budget: the installer confirms.',
      },
      {
        term: 'Tax',
        text: `${money.tax.map(taxText).join('; ')}. Rounding: ${money.rounding}.`,
      },
      { term: 'Swatch', text: 'A drawing, for telling things apart. The sample on site decides, not the page.' },
      { term: 'Precedence', text: 'A note with a selection comes before the general text of its product.' },
    ],
  };
}
