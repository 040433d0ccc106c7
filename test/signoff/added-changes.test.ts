import { PDFArray, PDFName, PDFNumber, PDFRawStream, PDFRef, PDFString, type PDFDict } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { Allowance, openPdf, pagesOf, type Revision } from '../../src/signoff/pdf/index.js';
import { verifyPdf } from '../../src/signoff/verify/index.js';
import { addSection, addTo, changeCatalog, changeField, changePage, newLook } from './add-to.js';
import { askPoppler, askQpdf } from './outside-tools.js';
import { signAnyhow } from './sign-anyhow.js';
import { builder, owner, sign } from './signed.js';
import { makeSmallPdf } from './small-pdf.js';

const signed = await sign(await makeSmallPdf({ streams: false }), owner, {
  field: 'owner-signature',
  fill: { 'owner-name': 'The owners' },
});

describe('altered by an added revision, the signed bytes as they were', () => {
  test('and then signed by a second person: the first signature is not whole, the second is', async () => {
    const forged = addTo(
      signed,
      changePage(0, (page) => page.set(PDFName.of('Rotate'), PDFNumber.of(90))),
    );
    const both = await signAnyhow(forged, 'builder-signature', builder);
    const { verdict, signatures } = await verifyPdf(both);
    expect([verdict, ...signatures.map(({ state }) => state)]).toEqual(['altered', 'altered', 'whole']);
    // The outside tool looks at the bytes alone; that is why the states are compared here.
    expect(askPoppler(both).map(({ isValid }) => isValid)).toEqual([true, true]);
  });

  test('an added revision that leads to bytes that were hidden in the signed part', async () => {
    // The first draft of page 2's text stays in the file as an object that nothing leads to.
    const base = await makeSmallPdf({ streams: false });
    const draft = addTo(base, ({ additions, file }) => {
      const text = Buffer.from('BT ET');
      additions.add(PDFRawStream.of(file.context.obj({ Length: text.length }) as PDFDict, text));
    });
    const clean = await sign(draft, owner, { field: 'owner-signature' });
    const hidden = openPdf(clean, new Allowance(5000)).revisions[0];
    const offset =
      [...(hidden?.entries ?? [])].flatMap(([, one]) => (one.kind === 'at' ? [one.offset] : [])).at(-1) ?? 0;
    const contents = pagesOf(hidden as Revision)[1]?.dict.get(PDFName.of('Contents'));
    const target = contents instanceof PDFArray ? contents.get(0) : contents;
    if (!(target instanceof PDFRef) || !hidden) throw new Error('no contents');
    const row = `${target.objectNumber} 1\n${String(offset).padStart(10, '0')} 00000 n \n`;
    const { verdict, problems } = await verifyPdf(addSection(clean, row));
    expect(verdict).toBe('altered');
    expect(problems.join()).toContain('older bytes');
  });

  test('an object put in that the signed part refers to and does not have', async () => {
    const base = addTo(
      await makeSmallPdf({ streams: false }),
      changePage(1, (page, { file }) => {
        const contents = page.get(PDFName.of('Contents'));
        const list = contents instanceof PDFArray ? contents.asArray() : contents ? [contents] : [];
        page.set(PDFName.of('Contents'), file.context.obj([...list, PDFRef.of(500)]));
      }),
    );
    const clean = await sign(base, owner, { field: 'owner-signature' });
    expect((await verifyPdf(clean)).verdict).toBe('whole');
    const forged = addTo(clean, ({ additions, file }) => {
      const text = Buffer.from('BT ET');
      additions.put(500, PDFRawStream.of(file.context.obj({ Length: text.length }) as PDFDict, text));
    });
    const { verdict, problems } = await verifyPdf(forged);
    expect(verdict).toBe('altered');
    expect(problems.join()).toContain('missing when signed');
  });
});

describe('after the last signature', () => {
  const fillIn = changeField('initials-101', (hand) => ({ V: PDFString.of('JE'), AP: newLook(hand) }));
  const last = sign(signed, builder, { field: 'builder-signature' });

  test('it locks all fields, and other programs find it sound', async () => {
    const pdf = await last;
    expect(Buffer.from(signed).toString('latin1')).not.toContain('/FieldMDP');
    expect(Buffer.from(pdf).toString('latin1')).toContain(
      '/TransformMethod /FieldMDP /TransformParams << /Type /TransformParams /V /1.2 /Action /All >> /Data ',
    );
    expect(askPoppler(pdf).map(({ isValid }) => isValid)).toEqual([true, true]);
    expect(askQpdf(pdf)).toContain('No syntax or stream encoding errors');
    expect((await verifyPdf(pdf)).verdict).toBe('whole');
  });

  test('data to check certificates may be added', async () => {
    const kept = addTo(
      await last,
      changeCatalog((catalog, { file, additions }) => {
        catalog.set(PDFName.of('DSS'), additions.add(file.context.obj({ Certs: [] })));
      }),
    );
    expect((await verifyPdf(kept)).verdict).toBe('whole');
  });

  test('a lock that the form was made with may allow no change at all', async () => {
    const form = addTo(
      await makeSmallPdf({ streams: false }),
      changeField('owner-signature', ({ file }) => ({ Lock: file.context.obj({ Action: 'All', P: 1 }) as PDFDict })),
    );
    const closed = await sign(form, owner, { field: 'owner-signature' });
    expect((await verifyPdf(closed)).verdict).toBe('whole');
    expect((await verifyPdf(addTo(closed, fillIn))).problems).toEqual([
      'owner-signature: after this signature it was altered: a signer allowed no change',
    ]);
  });
});

describe('allowed after a signature, and told', () => {
  test('an empty field filled in', async () => {
    const filled = addTo(
      signed,
      changeField('initials-101', (hand) => ({ V: PDFString.of('JE'), AP: newLook(hand) })),
    );
    const { verdict, signatures } = await verifyPdf(filled);
    expect([verdict, signatures[0]?.after]).toEqual(['whole', [{ kind: 'filled', fields: ['initials-101'] }]]);
  });

  test('data to check certificates, and document properties', async () => {
    const kept = addTo(
      signed,
      changeCatalog((catalog, { file, additions }) => {
        catalog.set(PDFName.of('DSS'), additions.add(file.context.obj({ Certs: [] })));
      }),
    );
    const { verdict, signatures } = await verifyPdf(kept);
    expect([verdict, signatures[0]?.after]).toEqual(['whole', [{ kind: 'validation-data' }]]);
  });

  test('an object that nothing leads to', async () => {
    const stray = addTo(signed, ({ file, additions }) => void additions.add(file.context.obj({})));
    const { verdict, signatures } = await verifyPdf(stray);
    expect([verdict, signatures[0]?.after]).toEqual([
      'whole',
      [{ kind: 'loose-objects', numbers: expect.stringMatching(/^\d+$/u) as string }],
    ]);
  });

  test('an object written again as it was', async () => {
    const same = addTo(
      signed,
      changePage(0, () => undefined),
    );
    expect((await verifyPdf(same)).verdict).toBe('whole');
  });
});
