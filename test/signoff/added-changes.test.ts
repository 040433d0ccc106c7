import { PDFArray, PDFName, PDFNumber, PDFRawStream, PDFRef, PDFString, type PDFDict } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { Allowance, openPdf, pagesOf, type Revision } from '../../src/signoff/pdf/index.js';
import { verifyPdf } from '../../src/signoff/verify/index.js';
import {
  addField,
  addTo,
  changeCatalog,
  changeField,
  changePage,
  drawBox,
  newLook,
  nowhere,
  overText,
  type Change,
} from './add-to.js';
import { askPoppler, askQpdf } from './outside-tools.js';
import { signAnyhow } from './sign-anyhow.js';
import { builder, owner, sign } from './signed.js';
import { makeSmallPdf } from './small-pdf.js';

const signed = await sign(await makeSmallPdf({ streams: false }), owner, {
  field: 'owner-signature',
  fill: { 'owner-name': 'The owners' },
});

describe('altered by an added revision, the signed bytes as they were', () => {
  const forgeries: readonly (readonly [string, Change])[] = [
    [
      'other words on a page',
      (hand) => {
        const contents = pagesOf(hand.now)[0]?.dict.get(PDFName.of('Contents'));
        const found = contents instanceof PDFArray ? contents.get(0) : contents;
        if (!(found instanceof PDFRef)) throw new Error('no contents');
        const text = Buffer.from('BT ET');
        const dict = hand.file.context.obj({ Length: text.length });
        hand.additions.put(found.objectNumber, PDFRawStream.of(dict as PDFDict, text));
      },
    ],
    [
      'another contents for a page',
      changePage(1, (page, { file, additions }) => {
        const text = Buffer.from('BT ET');
        const dict = file.context.obj({ Length: text.length });
        page.set(PDFName.of('Contents'), additions.add(PDFRawStream.of(dict as PDFDict, text)));
      }),
    ],
    ['a page turned', changePage(0, (page) => page.set(PDFName.of('Rotate'), PDFNumber.of(180)))],
    ['a visible signature box over the text', drawBox('Sig', [60, 690, 400, 720])],
    ['a text field over the text', drawBox('Tx', [60, 690, 400, 720])],
    ['an unseen text field', drawBox('Tx', [0, 0, 0, 0])],
    ['an unseen field of a signature that nobody made', addField(nowhere, ['form', 'page'])],
    ['the same, in the form alone', addField(nowhere, ['form'])],
    ['the same, on the page alone, where no list of fields has it', addField(nowhere, ['page'])],
    ['the same, hidden by its flags', addField({ ...overText, F: 2 }, ['form', 'page'])],
    [
      'a box that is seen of a field with an empty list of boxes',
      addField({ ...overText, Kids: [] }, ['form', 'page'], {}),
    ],
    ['an unseen field of a signature that is none', addField({ ...nowhere, V: PDFString.of('x') }, ['form', 'page'])],
    ['a box with a fifth number', addField({ Rect: [60, 690, 400, 720, 0] }, ['form', 'page'], {})],
    [
      'a note taken off a page',
      changePage(0, (page, { file }) => page.set(PDFName.of('Annots'), file.context.obj([]))),
    ],
    [
      'another book attached',
      changeCatalog((catalog, { file }) => catalog.set(PDFName.of('Names'), file.context.obj({}))),
    ],
    [
      'a script that runs on opening',
      changeCatalog((catalog, { file }) =>
        catalog.set(PDFName.of('OpenAction'), file.context.obj({ S: 'JavaScript', JS: PDFString.of('1') })),
      ),
    ],
    ['the form taken out', changeCatalog((catalog) => void catalog.delete(PDFName.of('AcroForm')))],
    ['a filled-in name changed', changeField('owner-name', () => ({ V: PDFString.of('Somebody else') }))],
    ['what was printed in a field changed', changeField('prefilled', () => ({ V: PDFString.of('other') }))],
    ['the look of a filled-in name changed', changeField('owner-name', (hand) => ({ AP: newLook(hand) }))],
    ['a look without a value', changeField('builder-signature', (hand) => ({ AP: newLook(hand) }))],
    [
      'an empty field moved',
      changeField('initials-101', ({ file }) => ({
        V: PDFString.of('AB'),
        Rect: file.context.obj([60, 690, 400, 720]) as PDFArray,
      })),
    ],
    ['the signature taken out of its field', changeField('owner-signature', () => ({ V: PDFString.of('') }))],
    [
      'an action on an empty field',
      changeField('initials-101', ({ file }) => ({
        V: PDFString.of('AB'),
        AA: file.context.obj({}) as PDFDict,
      })),
    ],
  ];
  test.each(forgeries)('%s', async (_what, change) => {
    const forged = addTo(signed, change);
    const { verdict, signatures } = await verifyPdf(forged);
    expect(verdict).toBe('altered');
    expect(signatures[0]).toMatchObject({ digestMatches: true, signatureVerifies: true, state: 'altered' });
    expect(signatures[0]?.after.at(-1)?.kind).toBe('altered');
  });

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
    const start = clean.length + 1;
    const text = [
      `\nxref\n${target.objectNumber} 1\n${String(offset).padStart(10, '0')} 00000 n \n`,
      `trailer\n<< /Size 99 /Root ${String(hidden.trailer.get(PDFName.of('Root')))} /Prev ${hidden.section.start} >>\n`,
      `startxref\n${start}\n%%EOF\n`,
    ].join('');
    const { verdict, problems } = await verifyPdf(Buffer.concat([clean, Buffer.from(text, 'latin1')]));
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

  test.each<readonly [string, Change, string]>([
    ['initials', fillIn, 'the field initials-101 was locked by a signature'],
    [
      'an object that nothing leads to',
      ({ file, additions }) => void additions.add(file.context.obj({})),
      'nothing leads',
    ],
    ['a signature that is not seen', addField(nowhere, ['form', 'page'], { Type: 'Sig' }), 'was added or moved'],
  ])('%s', async (_what, change, why) => {
    const { verdict, signatures } = await verifyPdf(addTo(await last, change));
    expect(verdict).toBe('altered');
    const told = signatures.slice(0, 2).map(({ after }) => after.at(-1));
    const altered: unknown = { kind: 'altered', why: expect.stringContaining(why) };
    expect(told).toEqual([altered, altered]);
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
