import { lookUp, type Book, type BookSelection, type LookUp } from '../core/book/index.js';
import { capital, printDay } from '../base/units/index.js';
import type { SlipChoice } from './slip.js';
import { optionWords } from './slip-text.js';

/** A choice beside the house as it stands now: it may be taken, stands already, or cannot be taken, with why in sentences. */
export type Held =
  | { readonly is: 'open to it'; readonly choice: SlipChoice; readonly selection: BookSelection }
  | { readonly is: 'so already'; readonly choice: SlipChoice; readonly selection: BookSelection }
  | { readonly is: 'refused'; readonly choice: SlipChoice; readonly selection?: BookSelection; readonly why: string };

/** Holds choices against a Book, each by itself: what stood when it was made must stand still. */
export function holdAgainst(book: Book, choices: readonly SlipChoice[]): readonly Held[] {
  return choices.map(holder(book));
}

/** The same for one choice after the other. */
export function holder(book: Book): (choice: SlipChoice) => Held {
  const look = lookUp(book);
  return (choice) => {
    const selection = look.selection(choice.selection);
    if (!selection) return { is: 'refused', choice, why: 'There is no such place in the house any more.' };
    if (standing(selection) === choice.now) return { is: 'so already', choice, selection };
    const why = whyNot(choice, selection, look);
    return why === undefined ? { is: 'open to it', choice, selection } : { is: 'refused', choice, selection, why };
  };
}

/** What a selection has now: an option's slug, `none`, or null. */
export function standing({ state, chosen }: Pick<BookSelection, 'state' | 'chosen'>): string | null {
  return state === 'none' ? 'none' : (chosen ?? null);
}

function whyNot({ selection: id, was, now }: SlipChoice, selection: BookSelection, look: LookUp): string | undefined {
  const name = (slug: string | null): string => optionWords(id, slug, look);
  if (selection.facts.length > 0) return `${orderedWords(selection)}; it is changed in the record, with instead-of.`;
  if (now !== null && now !== 'none' && !look.option(selection.category, now))
    return `There is no option '${now}' any more.`;
  if (standing(selection) === was) return undefined;
  const { chosenBy, chosenOn } = selection;
  const by = chosenBy === undefined ? '' : `, chosen by ${chosenBy}`;
  const on = chosenOn === undefined ? '' : `${by === '' ? ', chosen' : ''} on ${printDay(chosenOn)}`;
  return `It was ${name(was)} when this was chosen, and is ${name(standing(selection))} now${by}${on}; wanted is ${name(now)}.`;
}

/** `Ordered on 24 February 2026 as order T-2614-1`: the last thing that was done of a selection that is released or ordered. */
export function orderedWords({ facts }: Pick<BookSelection, 'facts'>): string {
  const fact = facts.findLast(({ option }) => option !== undefined);
  if (!fact) return 'Ordered';
  const number = fact.number === undefined ? '' : ` as order ${fact.number}`;
  return `${capital(fact.step)} on ${printDay(fact.on)}${number}`;
}
