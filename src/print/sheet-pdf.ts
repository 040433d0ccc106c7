import type { Book } from '../core/book/index.js';
import type { Sheet } from '../sheet/index.js';
import { inLocale, printDay } from '../base/units/index.js';
import { printSheet, printSigns } from '../write/index.js';
import type { BookPdf } from './book-pdf.js';
import { makeDrawable } from './drawable.js';
import { targetsOf } from './labels.js';
import { openTypeset } from './open-typeset.js';
import { documentFacts } from './sheets/index.js';
import { shorten } from './shorten.js';
import { standingOf } from './standing.js';
import { typeset } from './typeset.js';

/** One sheet of the Book by itself, such as the door schedule for a supplier. The same Book gives the same bytes. */
export async function makeSheetPdf(book: Book, sheet: Sheet): Promise<BookPdf> {
  const { pdf, undrawn } = inLocale(book.house, () => typesetSheet(book, sheet));
  const document = await openTypeset(pdf);
  return { pdf: await document.save({ updateFieldAppearances: false, objectsPerTick: Infinity }), undrawn };
}

function typesetSheet(book: Book, sheet: Sheet) {
  const { house, on } = book;
  const { standing, digest } = standingOf(undefined);
  const { anchors, labels } = targetsOf([sheet], []);
  const { model, undrawn } = makeDrawable({
    document: documentFacts(book, { title: `${house.name}: ${sheet.title}`, standing, on }),
    foot: { house: shorten(house.name, 26), job: shorten(house.number, 12), standing, digest, day: printDay(on) },
    sheet: printSheet(sheet, labels),
    signs: printSigns,
    anchors,
  });
  return { ...typeset(model, 'one-sheet'), undrawn };
}
