import { isMetric } from '../base/units/index.js';
import { attach, type Attachment } from './attach.js';
import { makeDrawable, type Undrawn } from './drawable.js';
import { addFields } from './fill-in.js';
import { openTypeset } from './open-typeset.js';
import { typeset, type SheetKind } from './typeset.js';

/** All that a PDF is made of, as data: it can be made in another process. */
export interface PdfJob {
  readonly kind: SheetKind;
  /** What the templates read, as JSON; every character of it is in our fonts. */
  readonly sheets: string;
  readonly attached?: Attachment;
}

/** Makes a PDF. The same job gives the same bytes. */
export type SetPdf = (job: PdfJob) => Promise<Uint8Array>;

/** The job for sheets that are printed in the locale in force, and what of them could not be printed as written. */
export function pdfJob(
  kind: SheetKind,
  sheets: object,
  attached?: Attachment,
): { readonly job: PdfJob; readonly undrawn: readonly Undrawn[] } {
  const { model, undrawn } = makeDrawable(sheets);
  const text = JSON.stringify({ ...model, paper: isMetric() ? 'a4' : 'us-letter' });
  return { job: { kind, sheets: text, ...(attached && { attached }) }, undrawn };
}

/** Tagged, with fields where the sheets have boxes to fill in, and the data that they were printed from attached. */
export async function setPdf({ kind, sheets, attached }: PdfJob): Promise<Uint8Array> {
  const { pdf, fields } = typeset(sheets, kind);
  const document = await openTypeset(pdf);
  if (fields.length > 0) addFields(document, fields);
  if (attached) await attach(document, attached);
  return document.save({ updateFieldAppearances: false, objectsPerTick: Infinity });
}
