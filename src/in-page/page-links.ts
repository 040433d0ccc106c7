import { lookUp, type Book } from '../core/book/index.js';
import { tryFields } from '../try/index.js';
import { choicePaths, placeLinks } from '../where/index.js';
import type { Links } from '../write/index.js';

/** Where things are from the page that this runs in; pages were made of the Book as it stands. */
export function linksHere(book: Book): Links {
  const page = document.getElementById(tryFields.root)?.getAttribute(tryFields.page) ?? '';
  const compared = choicePaths(book.selections.filter(({ alternatives }) => alternatives.length > 1));
  return placeLinks({ ...lookUp(book), choicePath: ({ id }) => compared.get(id) }, page);
}
