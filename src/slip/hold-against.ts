import { lookUp, type Book, type BookSelection, type LookUp } from '../core/book/index.js';
import { capital, printDay, type IsoDate } from '../base/units/index.js';
import { goneWords } from '../core/fact/index.js';
import type { SlipChoice } from './slip.js';
import { optionWords } from './slip-text.js';

/** A choice beside the house as it stands now: it may be taken, stands already, or cannot be taken, with why in sentences. */
export type Held =
  | { readonly is: 'open to it'; readonly choice: SlipChoice; readonly selection: BookSelection }
  | { readonly is: 'so already'; readonly choice: SlipChoice; readonly selection: BookSelection }
  | { readonly is: 'refused'; readonly choice: SlipChoice; readonly selection?: BookSelection; readonly why: string };

/** Holds choices against a Book, each by itself and by the day on which it was made: what stood then must stand still. */
export function holdAgainst(book: Book): (choice: SlipChoice, on: IsoDate) => Held {
  const look = lookUp(book);
  return (choice, on) => {
    const selection = look.selection(choice.selection);
    if (!selection) return { is: 'refused', choice, why: 'There is no such place in the house any more.' };
    if (standing(selection) === choice.now) return { is: 'so already', choice, selection };
    const why = whyNot(choice, on, selection, look);
    return why === undefined ? { is: 'open to it', choice, selection } : { is: 'refused', choice, selection, why };
  };
}

/** What a selection has now: an option's slug, `none`, or null. */
export function standing({ state, chosen }: Pick<BookSelection, 'state' | 'chosen'>): string | null {
  return state === 'none' ? 'none' : (chosen ?? null);
}

function whyNot(
  { selection: id, was, now }: SlipChoice,
  on: IsoDate,
  selection: BookSelection,
  look: LookUp,
): string | undefined {
  const name = (slug: string | null): string => optionWords(id, slug, look);
  if (selection.facts.length > 0) return `${orderedWords(selection)}; it is changed in the record, with instead-of.`;
  const option = now === null || now === 'none' ? {} : look.option(selection.category, now);
  if (!option) return `There is no option '${now ?? ''}' any more.`;
  const gone = goneWords(option, on);
  if (gone !== undefined) return gone;
  if (standing(selection) === was) return undefined;
  const { chosenBy, chosenOn } = selection;
  const by = chosenBy === undefined ? '' : `, chosen by ${chosenBy}`;
  const when = chosenOn === undefined ? '' : `${by === '' ? ', chosen' : ''} on ${printDay(chosenOn)}`;
  return `It was ${name(was)} when this was chosen, and is ${name(standing(selection))} now${by}${when}; wanted is ${name(now)}.`;
}

/** `Ordered on 24 February 2026 as order T-2614-1`: the last thing that was done of a selection that is released or ordered. */
export function orderedWords({ facts }: Pick<BookSelection, 'facts'>): string {
  const fact = facts.findLast(({ option }) => option !== undefined);
  if (!fact) return 'Ordered';
  const number = fact.number === undefined ? '' : ` as order ${fact.number}`;
  return `${capital(fact.step)} on ${printDay(fact.on)}${number}`;
}
