import { PDFDocument, PDFHexString, PDFName, PDFString, type PDFPage, type PDFRef } from 'pdf-lib';

export interface SmallPdfWish {
  /** Cross-references as a stream, as the printed book has them; else as a table. */
  readonly streams?: boolean;
  readonly withFields?: boolean;
  readonly withBook?: boolean;
}

/** Two pages of text, with fields to sign and to fill in and a `book.json`, as the printed book has them. */
export async function makeSmallPdf(wish: SmallPdfWish = {}): Promise<Uint8Array> {
  const { streams = true, withFields = true, withBook = true } = wish;
  const document = await PDFDocument.create({ updateMetadata: false });
  const page = document.addPage([612, 792]);
  page.drawText('Contract sum $1,486,000.00', { x: 72, y: 700 });
  document.addPage([612, 792]).drawText('Great room: white oak plank', { x: 72, y: 700 });
  if (withFields) addFields(document, page);
  if (withBook) {
    const day = new Date('2026-04-20T00:00:00Z');
    await document.attach(Buffer.from('{"format":"bookmatch/book/1","total":148600000}\n'), 'book.json', {
      mimeType: 'application/json',
      creationDate: day,
      modificationDate: day,
    });
  }
  return document.save({ useObjectStreams: streams, addDefaultPage: false, updateFieldAppearances: false });
}

function addFields(document: PDFDocument, page: PDFPage): void {
  const { context } = document;
  const add = (name: string, type: 'Sig' | 'Tx', bottom: number, extra: object = {}): PDFRef =>
    context.register(
      context.obj({
        Type: 'Annot',
        Subtype: 'Widget',
        FT: type,
        T: PDFString.of(name),
        TU: PDFHexString.fromText(name),
        P: page.ref,
        F: 4,
        Rect: [72, bottom, 312, bottom + 40],
        ...extra,
      }),
    );
  const fields = [
    add('owner-signature', 'Sig', 500),
    add('builder-signature', 'Sig', 440),
    add('owner-name', 'Tx', 380),
    add('initials-101', 'Tx', 320),
    add('prefilled', 'Tx', 260, { V: PDFString.of('as printed') }),
  ];
  page.node.set(PDFName.of('Annots'), context.obj(fields));
  document.catalog.set(PDFName.of('AcroForm'), context.register(context.obj({ Fields: fields, SigFlags: 1 })));
}
