import type { Book } from '../core/book/index.js';
import { slipWords } from '../slip/index.js';
import type { KeptPick } from '../try/index.js';

/** `Great room · stone facing, chimney breast: Thin natural ledge`, in the words of slips. */
export function whereWords(pick: KeptPick, book: Book): string {
  const [words] = slipWords(book, { choices: [pick] }).choices;
  return words ? `${words.where}: ${words.now}` : pick.selection;
}
