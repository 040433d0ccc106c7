import { AFRelationship, ParseSpeeds, PDFDocument } from 'pdf-lib';
import type { Book } from '../book/index.js';
import type { Problem } from '../problem/index.js';
import { makeDrawable } from './drawable.js';
import { addFields } from './fill-in.js';
import { markRowHeads } from './row-heads.js';
import { makeSheets } from './sheets/index.js';
import { typeset } from './typeset.js';

export interface BookPdf {
  readonly pdf: Uint8Array;
  /** What could not be printed as written, as warnings. */
  readonly problems: readonly Problem[];
}

/** The Book as a printed book: Letter, tagged, with fields for initials and signatures, and the Book's JSON attached as
 *  `book.json`. The same Book gives the same bytes. */
export async function makeBookPdf(book: Book): Promise<BookPdf> {
  const { model, problems } = makeDrawable(makeSheets(book));
  const { pdf, fields } = typeset(model);
  const document = await PDFDocument.load(pdf, { updateMetadata: false, parseSpeed: ParseSpeeds.Fastest });
  markRowHeads(document);
  addFields(document, fields);
  await attachBook(document, book);
  return { pdf: await document.save({ updateFieldAppearances: false, objectsPerTick: Infinity }), problems };
}

async function attachBook(document: PDFDocument, book: Book): Promise<void> {
  const day = new Date(`${book.on}T00:00:00Z`);
  await document.attach(new TextEncoder().encode(`${JSON.stringify(book)}\n`), 'book.json', {
    mimeType: 'application/json',
    description: 'The book as data: all that these sheets were printed from',
    creationDate: day,
    modificationDate: day,
    afRelationship: AFRelationship.Data,
  });
}
