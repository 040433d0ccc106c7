import { PDFArray, PDFDict, PDFName, PDFNumber, PDFRawStream, PDFRef, PDFString } from 'pdf-lib';
import { pagesOf } from '../../src/signoff/pdf/index.js';
import {
  addField,
  changeCatalog,
  changeField,
  changePage,
  drawBox,
  newLook,
  nowhere,
  overText,
  type Change,
} from './add-to.js';

const streamOf = ({ file }: Parameters<Change>[0], text: string, more: object = {}): PDFRawStream => {
  const bytes = Buffer.from(text);
  return PDFRawStream.of(file.context.obj({ Length: bytes.length, ...more }) as PDFDict, bytes);
};

/** Another state of the first object that is like this. */
const replaceFirst =
  (
    isIt: (text: string) => boolean,
    make: (hand: Parameters<Change>[0], old: PDFDict) => PDFDict | PDFRawStream,
  ): Change =>
  (hand) => {
    for (const number of hand.now.entries.keys()) {
      const old = hand.now.read(number);
      if (!(old instanceof PDFDict || old instanceof PDFRawStream) || !isIt(String(old))) continue;
      return hand.additions.put(number, make(hand, old instanceof PDFDict ? old : old.dict));
    }
    throw new Error('no such object');
  };

const changeForm = (key: string): Change =>
  replaceFirst(
    (text) => text.includes('/SigFlags'),
    ({ file }, old) => {
      const form = old.clone(file.context);
      form.set(PDFName.of(key), PDFString.of('x'));
      return form;
    },
  );

const put = (key: string): Change =>
  changeCatalog((catalog, { file }) => catalog.set(PDFName.of(key), file.context.obj({})));

/** By an added revision, every signed byte as it was. */
export const added: readonly (readonly [string, string, Change])[] = [
  [
    'other words on a page',
    'something in the document was replaced',
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
    'a page was changed (Contents)',
    changePage(1, (page, { file, additions }) => {
      const text = Buffer.from('BT ET');
      const dict = file.context.obj({ Length: text.length });
      page.set(PDFName.of('Contents'), additions.add(PDFRawStream.of(dict as PDFDict, text)));
    }),
  ],
  [
    'a page turned',
    'a page was changed (Rotate)',
    changePage(0, (page) => page.set(PDFName.of('Rotate'), PDFNumber.of(180))),
  ],
  [
    'a visible signature box over the text',
    'a field, a note or a box was added or moved',
    drawBox('Sig', [60, 690, 400, 720]),
  ],
  ['a text field over the text', 'a field, a note or a box was added or moved', drawBox('Tx', [60, 690, 400, 720])],
  ['an unseen text field', 'a field, a note or a box was added or moved', drawBox('Tx', [0, 0, 0, 0])],
  [
    'an unseen field of a signature that nobody made',
    'a field, a note or a box was added or moved',
    addField(nowhere, ['form', 'page']),
  ],
  ['the same, in the form alone', 'a field, a note or a box was added or moved', addField(nowhere, ['form'])],
  [
    'the same, on the page alone, where no list of fields has it',
    'a field, a note or a box was added or moved',
    addField(nowhere, ['page']),
  ],
  [
    'the same, hidden by its flags',
    'a field, a note or a box was added or moved',
    addField({ ...overText, F: 2 }, ['form', 'page']),
  ],
  [
    'a box that is seen of a field with an empty list of boxes',
    'a field, a note or a box was added or moved',
    addField({ ...overText, Kids: [] }, ['form', 'page'], {}),
  ],
  [
    'an unseen field of a signature that is none',
    'a field, a note or a box was added or moved',
    addField({ ...nowhere, V: PDFString.of('x') }, ['form', 'page']),
  ],
  [
    'a box with a fifth number',
    'a field, a note or a box was added or moved',
    addField({ Rect: [60, 690, 400, 720, 0] }, ['form', 'page'], {}),
  ],
  [
    'a note taken off a page',
    'a field or a note was taken out',
    changePage(0, (page, { file }) => page.set(PDFName.of('Annots'), file.context.obj([]))),
  ],
  [
    'another book attached',
    'the document was changed (Names)',
    changeCatalog((catalog, { file }) => catalog.set(PDFName.of('Names'), file.context.obj({}))),
  ],
  [
    'a script that runs on opening',
    'the document was changed (OpenAction)',
    changeCatalog((catalog, { file }) =>
      catalog.set(PDFName.of('OpenAction'), file.context.obj({ S: 'JavaScript', JS: PDFString.of('1') })),
    ),
  ],
  ['the form taken out', 'its form is gone', changeCatalog((catalog) => void catalog.delete(PDFName.of('AcroForm')))],
  [
    'a filled-in name changed',
    'owner-name was filled in when signed and was changed',
    changeField('owner-name', () => ({ V: PDFString.of('Somebody else') })),
  ],
  [
    'what was printed in a field changed',
    'prefilled was filled in when signed and was changed',
    changeField('prefilled', () => ({ V: PDFString.of('other') })),
  ],
  [
    'the look of a filled-in name changed',
    'owner-name was filled in when signed and was changed',
    changeField('owner-name', (hand) => ({ AP: newLook(hand) })),
  ],
  [
    'a look without a value',
    'the field builder-signature shows something and holds nothing',
    changeField('builder-signature', (hand) => ({ AP: newLook(hand) })),
  ],
  [
    'an empty field moved',
    'the field initials-101 was changed (Rect)',
    changeField('initials-101', ({ file }) => ({
      V: PDFString.of('AB'),
      Rect: file.context.obj([60, 690, 400, 720]) as PDFArray,
    })),
  ],
  [
    'the signature taken out of its field',
    'the signature in owner-signature was replaced',
    changeField('owner-signature', () => ({ V: PDFString.of('') })),
  ],
  [
    'an action on an empty field',
    'the field initials-101 was changed (AA)',
    changeField('initials-101', ({ file }) => ({
      V: PDFString.of('AB'),
      AA: file.context.obj({}) as PDFDict,
    })),
  ],
  [
    'pages in another order',
    'something in the document was replaced',
    replaceFirst(
      (text) => text.includes('/Kids'),
      ({ file, now }, old) => {
        const pages = old.clone(file.context);
        const kids = now.resolve(old.get(PDFName.of('Kids')));
        pages.set(PDFName.of('Kids'), file.context.obj(kids instanceof PDFArray ? kids.asArray().toReversed() : []));
        return pages;
      },
    ),
  ],
  [
    'the bytes of the attached book',
    'an attached file was replaced',
    replaceFirst(
      (text) => /\/EmbeddedFile\b(?!s)/u.test(text),
      (hand, old) => streamOf(hand, '{}', { Type: old.get(PDFName.of('Type')) }),
    ),
  ],
  ['a second form beside the first', 'its form was changed (XFA)', changeForm('XFA')],
  ['fields drawn anew by whoever reads', 'its form was changed (NeedAppearances)', changeForm('NeedAppearances')],
  ['layers that can be put out', 'the document was changed (OCProperties)', put('OCProperties')],
  ['other rights', 'the document was changed (Perms)', put('Perms')],
  [
    'a note over the text',
    'a field, a note or a box was added or moved',
    changePage(0, (page, { file, now, additions }) => {
      const note = additions.add(
        file.context.obj({ Type: 'Annot', Subtype: 'FreeText', Rect: [60, 690, 400, 720], F: 4 }),
      );
      const old = now.resolve(page.get(PDFName.of('Annots')));
      page.set(PDFName.of('Annots'), file.context.obj([...(old instanceof PDFArray ? old.asArray() : []), note]));
    }),
  ],
  [
    'the signed field by another name',
    'the field owner-signature was changed (T)',
    changeField('owner-signature', () => ({ T: PDFString.of('x') })),
  ],
];

/** After the last signature, which locks all fields. */
export const late: readonly (readonly [string, string, Change])[] = [
  [
    'initials after the last',
    'the field initials-101 was locked by a signature',
    changeField('initials-101', (hand) => ({ V: PDFString.of('JE'), AP: newLook(hand) })),
  ],
  [
    'an object that nothing leads to',
    'objects that nothing leads to were added',
    ({ file, additions }) => void additions.add(file.context.obj({})),
  ],
  [
    'one more signature that is not seen',
    'a field, a note or a box was added or moved',
    addField(nowhere, ['form', 'page'], { Type: 'Sig' }),
  ],
];
