import { AFRelationship, type PDFDocument } from 'pdf-lib';
import type { IsoDate } from '../base/units/index.js';

/** JSON that is attached to a PDF as the data that it was printed from, dated by a day of the records. */
export interface Attachment {
  readonly name: string;
  readonly description: string;
  readonly on: IsoDate;
  readonly bytes: Uint8Array;
}

export async function attach(document: PDFDocument, { name, description, on, bytes }: Attachment): Promise<void> {
  const day = new Date(`${on}T00:00:00Z`);
  await document.attach(bytes, name, {
    mimeType: 'application/json',
    description,
    creationDate: day,
    modificationDate: day,
    afRelationship: AFRelationship.Data,
  });
}
