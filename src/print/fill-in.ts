import { PDFArray, PDFDict, PDFHexString, PDFName, PDFRef, PDFString, type PDFDocument, type PDFPage } from 'pdf-lib';
import { embedEntryFont } from './entry-font.js';
import type { PlacedField } from './typeset.js';

const linkStart = 'field:';
const entrySize = 10;

/** Makes each box that the layout placed a field to fill in: text fields, and signature fields that are not signed yet.
 *  The layout leaves a link in each box. That link's annotation becomes the field's widget, so the field stands in the
 *  tag tree and in the tab order where the box stands in the text. The rectangle is where the query says. */
export function addFields(document: PDFDocument, placed: readonly PlacedField[]): void {
  const { context } = document;
  const font = context.register(embedEntryFont(context));
  const fields = document.getPages().flatMap((page, index) =>
    widgetLinks(page).map(({ ref, link, name }) => {
      const field = placed.find((one) => one.name === name && one.page === index + 1);
      if (!field) throw new Error(`the layout has a link to the field ${name} but no box for it`);
      makeWidget(page, ref, link, field, font);
      return ref;
    }),
  );
  if (fields.length !== placed.length)
    throw new Error(`the layout has ${placed.length} boxes to fill in and ${fields.length} links to them`);
  const hasSignatures = placed.some(({ kind }) => kind === 'signature');
  const form = context.obj({
    Fields: fields,
    DR: { Font: { Entry: font } },
    DA: PDFString.of(appearance),
    // Bit 1: there are signature fields. They are empty, so bit 2 (append only) is not set.
    ...(hasSignatures && { SigFlags: 1 }),
  });
  document.catalog.set(PDFName.of('AcroForm'), context.register(form));
  markForms(document, new Set(fields.map((ref) => ref.toString())));
}

const appearance = `/Entry ${entrySize} Tf 0.086 0.141 0.180 rg`;

interface WidgetLink {
  readonly ref: PDFRef;
  readonly link: PDFDict;
  readonly name: string;
}

function widgetLinks(page: PDFPage): readonly WidgetLink[] {
  const annotations = page.node.Annots();
  if (!annotations) return [];
  return annotations.asArray().flatMap((ref) => {
    const link = page.doc.context.lookup(ref, PDFDict);
    const uri = link.lookupMaybe(PDFName.of('A'), PDFDict)?.lookup(PDFName.of('URI'));
    const target = uri instanceof PDFString || uri instanceof PDFHexString ? uri.decodeText() : '';
    return ref instanceof PDFRef && target.startsWith(linkStart)
      ? [{ ref, link, name: target.slice(linkStart.length) }]
      : [];
  });
}

function makeWidget(page: PDFPage, ref: PDFRef, widget: PDFDict, field: PlacedField, font: PDFRef): void {
  const { context } = widget;
  const left = field.x;
  const bottom = page.getHeight() - field.y - field.height;
  for (const key of ['A', 'Border', 'C', 'H', 'QuadPoints']) widget.delete(PDFName.of(key));
  const empty = context.register(
    context.stream('/Tx BMC\nEMC\n', {
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [0, 0, field.width, field.height],
      Resources: { Font: { Entry: font } },
    }),
  );
  const entries = {
    Type: 'Annot',
    Subtype: 'Widget',
    FT: field.kind === 'signature' ? 'Sig' : 'Tx',
    T: PDFString.of(field.name),
    TU: PDFHexString.fromText(field.says),
    Contents: PDFHexString.fromText(field.says),
    P: page.ref,
    // Printed.
    F: 4,
    Rect: [left, bottom, left + field.width, bottom + field.height],
    AP: { N: empty },
    ...(field.kind === 'text' && {
      DA: PDFString.of(appearance),
      MaxLen: field.name.startsWith('initials') ? 8 : 80,
      Q: 0,
    }),
  };
  const filled = context.obj(entries);
  for (const [key, value] of filled.entries()) widget.set(key, value);
  context.assign(ref, widget);
}

/** Turns the tag of each field's box from a link into a form. */
function markForms(document: PDFDocument, fields: ReadonlySet<string>): void {
  for (const [, object] of document.context.enumerateIndirectObjects()) {
    if (!(object instanceof PDFDict) || object.get(PDFName.of('S')) !== PDFName.of('Link')) continue;
    const holds = object.lookupMaybe(PDFName.of('K'), PDFArray)?.asArray() ?? [];
    const isField = holds.some((kid) => {
      const reference = document.context.lookup(kid);
      const target = reference instanceof PDFDict ? reference.get(PDFName.of('Obj')) : undefined;
      return target instanceof PDFRef && fields.has(target.toString());
    });
    if (isField) object.set(PDFName.of('S'), PDFName.of('Form'));
  }
}
