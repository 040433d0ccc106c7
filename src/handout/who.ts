import { withParts } from '../base/units/index.js';
import type { Book, BookHouse, BookSelection } from '../core/book/index.js';
import { isCalled } from './standing.js';

/** Who did something, as trades read it: by role, or by name where the house lets trades read it. Undefined: nobody whom the house lists. */
export function whoReads(by: string, { people, namesToTrades }: BookHouse): string | undefined {
  const same = (word: string): boolean => word.toLowerCase() === by.toLowerCase();
  const person = people.find(({ role, name }) => same(role) || same(name));
  if (!person) return undefined;
  return namesToTrades === true && isCalled(person.role) ? person.name : `the ${person.role}`;
}

/** The Book with nobody but these in what was released, ordered and installed. */
export function withoutNames(book: Book): Book {
  const { house, trades } = book;
  const isTrade = (by: string): boolean => trades.some(({ contact, name }) => by === contact || by === name);
  const reading = (selection: BookSelection): BookSelection => {
    if (selection.facts.every(({ by }) => by === undefined)) return selection;
    const facts = selection.facts.map(({ by, ...fact }) => {
      const who = by === undefined || isTrade(by) ? by : whoReads(by, house);
      return who === undefined ? fact : { ...fact, by: who };
    });
    return withParts(selection, { facts });
  };
  return withParts(book, { selections: book.selections.map(reading) });
}
