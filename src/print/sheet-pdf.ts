import type { Book } from '../core/book/index.js';
import type { Sheet } from '../sheet/index.js';
import { inLocale } from '../base/units/index.js';
import { printSheet, printSigns } from '../write/index.js';
import type { BookPdf } from './book-pdf.js';
import { targetsOf } from './labels.js';
import { pdfJob, setPdf } from './set-pdf.js';
import { documentFacts, footOf } from './sheets/index.js';
import { standingOf } from './standing.js';

/** One sheet of the Book by itself, such as the door schedule for a supplier. The same Book gives the same bytes. */
export async function makeSheetPdf(book: Book, sheet: Sheet): Promise<BookPdf> {
  const { job, undrawn } = inLocale(book.house, () => pdfJob('one-sheet', oneSheet(book, sheet)));
  return { pdf: await setPdf(job), undrawn };
}

function oneSheet(book: Book, sheet: Sheet): object {
  const { house, on } = book;
  const { standing, digest } = standingOf(undefined);
  const { anchors, labels } = targetsOf([sheet], []);
  return {
    document: documentFacts(book, { title: `${house.name}: ${sheet.title}`, standing, on }),
    foot: footOf(book, { standing, digest, day: on }),
    sheet: printSheet(sheet, labels),
    signs: printSigns,
    anchors,
  };
}
