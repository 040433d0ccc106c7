import type { Book } from '../../src/core/book/index.js';
import { lockOf, triedOptions, type Pick } from '../../src/try/index.js';
import { seeded } from '../signoff/seeded.js';

/** Sets of picks by a seed, the same for the same Book: of one place up to eight, at places that are free. */
export function seededPicks(book: Book, count: number, seed = 1): readonly (readonly Pick[])[] {
  const random = seeded(seed);
  const oneOf = <One>(list: readonly One[]): One => {
    const one = list[Math.floor(random() * list.length)];
    if (one === undefined) throw new Error('there is nothing to pick from');
    return one;
  };
  const free = book.selections.filter(
    (selection) => lockOf(selection) === undefined && triedOptions(selection).length > 1,
  );
  return Array.from({ length: count }, (_, index) => {
    const picks = new Map<string, Pick>();
    for (let place = 0; place <= index % 8; place += 1) {
      const selection = oneOf(free);
      const { option } = oneOf(triedOptions(selection).filter(({ stands }) => !stands));
      picks.set(selection.id, { selection: selection.id, option });
    }
    return [...picks.values()];
  });
}
