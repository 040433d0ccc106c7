import { goneWords } from '../core/fact/index.js';
import { lookUp, type Book, type BookSelection, type LookUp } from '../core/book/index.js';
import { chosenAt } from './pick.js';

/** A pick as it is kept between visits, with what stood there when it was made. */
export interface KeptPick {
  readonly selection: string;
  readonly was: string | null;
  readonly now: string | null;
}

/** Picks by whether they still fit. */
export interface SortedPicks {
  readonly fit: readonly KeptPick[];
  /** In words, one by one: what was picked and why it fits no longer. */
  readonly unfit: readonly { readonly pick: KeptPick; readonly why: string }[];
}

/** Which picks of older records still fit newer ones: the place is there and free, stands as it stood, and what was picked can be picked. What was
 *  chosen as it was picked is neither. */
export function sortPicks(
  picks: readonly KeptPick[],
  book: Book,
  locks: Readonly<Record<string, string>>,
): SortedPicks {
  const look = lookUp(book);
  const sorted = picks.flatMap((pick) => {
    const selection = look.selection(pick.selection);
    if (!selection) return [{ pick, why: 'the place is no longer there' }];
    return chosenAt(selection) === pick.now
      ? []
      : [{ pick, why: whyUnfit(pick, selection, locks[pick.selection], look) }];
  });
  return {
    fit: sorted.flatMap(({ pick, why }) => (why === undefined ? [pick] : [])),
    unfit: sorted.flatMap(({ pick, why }) => (why === undefined ? [] : [{ pick, why }])),
  };
}

function whyUnfit(
  { was, now }: KeptPick,
  selection: BookSelection,
  lock: string | undefined,
  look: LookUp,
): string | undefined {
  if (lock !== undefined) return 'it can no longer be changed here';
  if (chosenAt(selection) !== was) return 'something else was chosen there meanwhile';
  const option = look.option(selection.category, now ?? '');
  if (option && goneWords(option, look.book.on) !== undefined) return 'it was withdrawn';
  const isThere = now === null || now === 'none' || selection.alternatives.some(({ option }) => option === now);
  return isThere ? undefined : 'it is no longer considered there';
}
