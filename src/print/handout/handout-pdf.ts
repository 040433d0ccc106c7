import { AFRelationship } from 'pdf-lib';
import { localeOf, type Handout } from '../../handout/index.js';
import { inLocale } from '../../base/units/index.js';
import { makeDrawable, type Undrawn } from '../drawable.js';
import { addFields } from '../fill-in.js';
import { openTypeset } from '../open-typeset.js';
import { typeset } from '../typeset.js';
import { makeHandoutSheets } from './handout-sheets.js';

interface HandoutPdf {
  readonly pdf: Uint8Array;
  /** What could not be printed as written. */
  readonly undrawn: readonly Undrawn[];
}

/** A handout as a tagged PDF with bookmarks, contents, the stamp on every foot and an as-built page to fill in; the
 *  handout's data is attached as `handout.json`. It takes a Handout and no Book, so it has no money to print. The same
 *  handout gives the same bytes. */
export async function makeHandoutPdf(handout: Handout): Promise<HandoutPdf> {
  const { undrawn, pdf, fields } = inLocale(localeOf(handout), () => {
    const drawable = makeDrawable(makeHandoutSheets(handout));
    return { ...drawable, ...typeset(drawable.model, 'handout') };
  });
  const document = await openTypeset(pdf);
  addFields(document, fields);
  const day = new Date(`${handout.cover.stamp?.date ?? handout.cover.on}T00:00:00Z`);
  await document.attach(new TextEncoder().encode(`${JSON.stringify(handout)}\n`), 'handout.json', {
    mimeType: 'application/json',
    description: 'The handout as data: all that these sheets were printed from',
    creationDate: day,
    modificationDate: day,
    afRelationship: AFRelationship.Data,
  });
  return { pdf: await document.save({ updateFieldAppearances: false, objectsPerTick: Infinity }), undrawn };
}
