import {
  PDFArray,
  PDFName,
  PDFNumber,
  PDFRawStream,
  PDFRef,
  PDFString,
  type PDFDict,
  type PDFHexString,
  type PDFObject,
} from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { verifyPdf } from '../../src/signoff/verify/index.js';
import {
  addRevision,
  Allowance,
  formFields,
  openPdf,
  pagesOf,
  startAdditions,
  type Additions,
  type PdfFile,
  type Revision,
} from '../../src/signoff/pdf/index.js';
import { askPoppler } from './outside-tools.js';
import { signAnyhow } from './sign-anyhow.js';
import { builder, owner, sign } from './signed.js';
import { makeSmallPdf } from './small-pdf.js';

interface Hand {
  readonly file: PdfFile;
  readonly now: Revision;
  readonly additions: Additions;
}

type Change = (hand: Hand) => void;

const signed = await sign(await makeSmallPdf({ streams: false }), owner, {
  field: 'owner-signature',
  fill: { 'owner-name': 'The owners' },
});

/** Adds a revision to a signed file, as a clever forger would: every signed byte stays as it is. */
function addTo(pdf: Uint8Array, change: Change): Uint8Array {
  const file = openPdf(pdf, new Allowance(5000));
  const [now] = file.revisions;
  if (!now) throw new Error('no revision');
  const additions = startAdditions(file);
  change({ file, now, additions });
  return addRevision(file, additions);
}

const changeField =
  (
    name: string,
    entries: (hand: Hand) => Readonly<Record<string, PDFString | PDFHexString | PDFRef | PDFArray | PDFDict | PDFName>>,
  ): Change =>
  (hand) => {
    const field = formFields(hand.now).find((one) => one.name === name);
    if (field?.number === undefined) throw new Error(`no field ${name}`);
    const dict = field.dict.clone(hand.file.context);
    for (const [key, value] of Object.entries(entries(hand))) dict.set(PDFName.of(key), value);
    hand.additions.put(field.number, dict);
  };

const newLook = ({ file, additions }: Hand): PDFDict => {
  const content = Buffer.from('BT ET');
  const form = file.context.obj({ Type: 'XObject', Subtype: 'Form', BBox: [0, 0, 9, 9], Length: content.length });
  return file.context.obj({ N: additions.add(PDFRawStream.of(form as PDFDict, content)) }) as PDFDict;
};

const changePage =
  (index: number, alter: (page: PDFDict, hand: Hand) => void): Change =>
  (hand) => {
    const page = pagesOf(hand.now)[index];
    if (!page) throw new Error('no page');
    const dict = page.dict.clone(hand.file.context);
    alter(dict, hand);
    hand.additions.put(page.number, dict);
  };

const changeCatalog =
  (alter: (catalog: PDFDict, hand: Hand) => void): Change =>
  (hand) => {
    const root = hand.now.trailer.get(PDFName.of('Root'));
    const catalog = hand.now.dict(root)?.clone(hand.file.context);
    if (!(root instanceof PDFRef) || !catalog) throw new Error('no catalog');
    alter(catalog, hand);
    hand.additions.put(root.objectNumber, catalog);
  };

/** A new signature field, put into the form's list or the page's, or both. */
const addField =
  (entries: object, lists: readonly ('form' | 'page')[], signature?: object): Change =>
  ({ file, now, additions }) => {
    const dict = file.context.obj({ Type: 'Annot', Subtype: 'Widget', FT: 'Sig', T: PDFString.of('late'), ...entries });
    if (signature) (dict as PDFDict).set(PDFName.of('V'), additions.add(file.context.obj({ ...signature })));
    const field = additions.add(dict);
    const longer = (list: PDFObject | undefined): PDFArray => {
      const old = now.resolve(list);
      return file.context.obj([...(old instanceof PDFArray ? old.asArray() : []), field]);
    };
    const form = now.dict(now.trailer.get(PDFName.of('Root')))?.get(PDFName.of('AcroForm'));
    const [page] = pagesOf(now);
    if (!page || !(form instanceof PDFRef)) throw new Error('no form');
    const changed = (now.dict(form) as PDFDict).clone(file.context);
    changed.set(PDFName.of('Fields'), longer(changed.get(PDFName.of('Fields'))));
    const shown = page.dict.clone(file.context);
    shown.set(PDFName.of('Annots'), longer(shown.get(PDFName.of('Annots'))));
    if (lists.includes('form')) additions.put(form.objectNumber, changed);
    if (lists.includes('page')) additions.put(page.number, shown);
  };

const nowhere = { Rect: [0, 0, 0, 0], F: 132 };
const overText = { Rect: [60, 690, 400, 720], F: 4 };

/** A signature's box that is seen, put over a page. */
const drawBox = (type: 'Sig' | 'Tx', rect: readonly number[]): Change =>
  changePage(0, (page, { file, now, additions }) => {
    const box = additions.add(
      file.context.obj({
        Type: 'Annot',
        Subtype: 'Widget',
        FT: type,
        T: PDFString.of('cover'),
        Rect: [...rect],
        F: 4,
      }),
    );
    const annotations = now.resolve(page.get(PDFName.of('Annots')));
    const list = annotations instanceof PDFArray ? annotations.asArray() : [];
    page.set(PDFName.of('Annots'), file.context.obj([...list, box]));
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

  test('an object written again as it was', async () => {
    const same = addTo(
      signed,
      changePage(0, () => undefined),
    );
    expect((await verifyPdf(same)).verdict).toBe('whole');
  });
});
