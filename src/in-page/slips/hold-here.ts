import type { Book } from '../../core/book/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { holdAgainst, type Held, type SlipChoice } from '../../slip/index.js';

/** Holds choices against a Book as `choose` does, and against what can be tried in its pages: a place that is locked there is no longer free, and nothing is
 *  taken that is not considered. What is sent from here is chosen today. */
export function holdHere(
  book: Book,
  locks: Readonly<Record<string, string>>,
  today: IsoDate,
): (choice: SlipChoice) => Held {
  const hold = holdAgainst(book);
  return (choice) => {
    const held = hold(choice, today);
    if (held.is !== 'open to it') return held;
    const { selection } = held;
    const why = locks[choice.selection] ?? whyNotTried(choice.now, selection.alternatives);
    return why === undefined ? held : { is: 'refused', choice, selection, why };
  };
}

function whyNotTried(now: string | null, alternatives: readonly { readonly option: string }[]): string | undefined {
  const isThere = now === null || now === 'none' || alternatives.some(({ option }) => option === now);
  return isThere ? undefined : 'It is no longer considered there.';
}
