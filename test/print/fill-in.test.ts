import { PDFDict, PDFDocument, PDFName, PDFSignature, PDFTextField } from 'pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import { makeBookPdf } from '../../src/print/index.js';
import { makeSheets } from '../../src/print/sheets/index.js';
import { pdfJob } from '../../src/print/set-pdf.js';
import { typeset } from '../../src/print/typeset.js';
import { makeFixture } from './fixture.js';
import { putDown } from './tool.js';

let document: PDFDocument;

beforeAll(async () => {
  const { pdf } = await makeBookPdf(makeFixture());
  document = await PDFDocument.load(pdf, { updateMetadata: false });
}, 60_000);

describe('fields', () => {
  it('are initials for each room, then name, date and signature of both parties', () => {
    const names = document
      .getForm()
      .getFields()
      .map((field) => field.getName());
    expect(names).toEqual([
      'initials-great-room-owner',
      'initials-great-room-builder',
      'initials-pantry-owner',
      'initials-pantry-builder',
      'initials-loft-owner',
      'initials-loft-builder',
      'owner-name',
      'owner-date',
      'owner-signature',
      'builder-name',
      'builder-date',
      'builder-signature',
    ]);
  });

  it('are of the right kind, and signatures are not signed', () => {
    for (const field of document.getForm().getFields()) {
      const isSignature = field.getName().endsWith('-signature');
      expect(field instanceof PDFSignature, field.getName()).toBe(isSignature);
      expect(field instanceof PDFTextField, field.getName()).toBe(!isSignature);
      expect(field.acroField.dict.has(PDFName.of('V'))).toBe(false);
    }
  });

  it('have words for who does not see them, lie on their page, and belong to its tab order and tag tree', () => {
    const pages = document.getPages();
    for (const field of document.getForm().getFields()) {
      const [widget] = field.acroField.getWidgets();
      const page = pages.find(({ ref }) => ref === widget?.P());
      const box = widget?.getRectangle();
      expect(page?.node.lookup(PDFName.of('Tabs'))).toBe(PDFName.of('S'));
      expect(widget?.dict.has(PDFName.of('StructParent'))).toBe(true);
      expect(widget?.dict.has(PDFName.of('TU'))).toBe(true);
      if (!page || !box) throw new Error('no page or no box');
      expect(box.x).toBeGreaterThan(0);
      expect(box.y).toBeGreaterThan(0);
      expect(box.x + box.width).toBeLessThan(page.getWidth());
      expect(box.y + box.height).toBeLessThan(page.getHeight());
    }
  });

  it('lie where the layout drew their boxes', () => {
    const { sheets, kind } = pdfJob('book', makeSheets(makeFixture())).job;
    const { fields } = typeset(sheets, kind);
    for (const { name, page, x, y, width, height } of fields) {
      const [widget] = document.getForm().getField(name).acroField.getWidgets();
      const top = document.getPage(page - 1).getHeight();
      const box = widget?.getRectangle();
      expect(box?.x).toBeCloseTo(x, 3);
      expect(box?.y).toBeCloseTo(top - y - height, 3);
      expect(box?.width).toBeCloseTo(width, 3);
      expect(box?.height).toBeCloseTo(height, 3);
    }
    expect(fields).toHaveLength(12);
  });

  it('take what is typed, in the embedded font', async () => {
    const { pdf } = await makeBookPdf(makeFixture());
    const filled = await PDFDocument.load(pdf, { updateMetadata: false });
    const field = filled.getForm().getTextField('owner-name');
    expect(field.getMaxLength()).toBe(80);
    const appearance = field.acroField.getDefaultAppearance() ?? '';
    const fonts = filled.getForm().acroForm.dict.lookup(PDFName.of('DR'), PDFDict).lookup(PDFName.of('Font'), PDFDict);
    const font = /\/(\w+) [\d.]+ Tf/.exec(appearance)?.[1] ?? '';
    expect(fonts.lookup(PDFName.of(font), PDFDict).lookup(PDFName.of('BaseFont'))).toBe(
      PDFName.of('PublicSans-400Regular'),
    );
    field.acroField.dict.set(PDFName.of('V'), filled.context.obj('')); // Cleared, as a reader does on a reset.
    expect(putDown(await filled.save({ updateFieldAppearances: false })).check()).toContain('No syntax');
  });
});
