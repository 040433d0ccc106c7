import type { Book } from '../book/index.js';
import { inLocale } from '../../base/units/index.js';
import { selectionComparer } from './compare-selections.js';
import type { TouchedTrade } from './comparison.js';
import { compareCautions, compareFindings, type NoticeChange } from './notice-change.js';
import type { SelectionChange } from './room-change.js';
import { touchedTrades } from './touched-trades.js';

/** What choices alone change of a house. */
export interface ChoiceChanges {
  /** By the choices themselves, or by what they move elsewhere, in the order of the Book. */
  readonly selections: readonly SelectionChange[];
  readonly cautions: readonly NoticeChange[];
  readonly scope: readonly NoticeChange[];
  readonly trades: readonly TouchedTrade[];
}

/** Compares two Books of the same records that differ in nothing but what is chosen: no price, no room and no term of the contract is looked at. */
export function compareChoices(from: Book, to: Book): ChoiceChanges {
  return inLocale(to.house, () => {
    const sameOption = (_category: string, a: string | undefined, b: string | undefined): boolean => a === b;
    const comparing = selectionComparer({ from, to, byChoice: to, sameOption });
    const before = new Map(from.selections.map((selection) => [selection.id, selection]));
    const selections = to.selections.flatMap((now) => {
      const was = before.get(now.id);
      // One that nothing moved may be the same object in both Books.
      return was === undefined || was === now ? [] : (comparing({ from: was, to: now }) ?? []);
    });
    const sameRoom = (slug: string): string => slug;
    const cautions = compareCautions(from, to, sameRoom);
    const scope = compareFindings(from, to, sameRoom);
    return { selections, cautions, scope, trades: touchedTrades(selections, [...cautions, ...scope], [to]) };
  });
}
