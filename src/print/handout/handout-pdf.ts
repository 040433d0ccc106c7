import { inLocale } from '../../base/units/index.js';
import { localeOf, type Handout } from '../../handout/index.js';
import type { BookPdf } from '../book-pdf.js';
import { pdfJob, setPdf, type SetPdf } from '../set-pdf.js';
import { makeHandoutSheets } from './handout-sheets.js';

/** A handout as a tagged PDF with bookmarks, contents, the stamp on every foot and an as-built page to fill in; the
 *  handout's data is attached as `handout.json`. It takes a Handout and no Book, so it has no money to print. The same
 *  handout gives the same bytes. */
export async function makeHandoutPdf(handout: Handout, set: SetPdf = setPdf): Promise<BookPdf> {
  const { job, undrawn } = inLocale(localeOf(handout), () =>
    pdfJob('handout', makeHandoutSheets(handout), {
      name: 'handout.json',
      description: 'The handout as data: all that these sheets were printed from',
      on: handout.cover.stamp?.date ?? handout.cover.on,
      bytes: new TextEncoder().encode(`${JSON.stringify(handout)}\n`),
    }),
  );
  return { pdf: await set(job), undrawn };
}
