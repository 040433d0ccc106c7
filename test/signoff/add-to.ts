import {
  PDFArray,
  PDFName,
  PDFRawStream,
  PDFRef,
  PDFString,
  type PDFDict,
  type PDFHexString,
  type PDFObject,
} from 'pdf-lib';
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

interface Hand {
  readonly file: PdfFile;
  readonly now: Revision;
  readonly additions: Additions;
}

export type Change = (hand: Hand) => void;

/** Adds a revision to a signed file, as a clever forger would: every signed byte stays as it is. */
export function addTo(pdf: Uint8Array, change: Change): Uint8Array {
  const file = openPdf(pdf, new Allowance(5000));
  const [now] = file.revisions;
  if (!now) throw new Error('no revision');
  const additions = startAdditions(file);
  change({ file, now, additions });
  return addRevision(file, additions);
}

export const changeField =
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

export const newLook = ({ file, additions }: Hand): PDFDict => {
  const content = Buffer.from('BT ET');
  const form = file.context.obj({ Type: 'XObject', Subtype: 'Form', BBox: [0, 0, 9, 9], Length: content.length });
  return file.context.obj({ N: additions.add(PDFRawStream.of(form as PDFDict, content)) }) as PDFDict;
};

export const changePage =
  (index: number, alter: (page: PDFDict, hand: Hand) => void): Change =>
  (hand) => {
    const page = pagesOf(hand.now)[index];
    if (!page) throw new Error('no page');
    const dict = page.dict.clone(hand.file.context);
    alter(dict, hand);
    hand.additions.put(page.number, dict);
  };

export const changeCatalog =
  (alter: (catalog: PDFDict, hand: Hand) => void): Change =>
  (hand) => {
    const root = hand.now.trailer.get(PDFName.of('Root'));
    const catalog = hand.now.dict(root)?.clone(hand.file.context);
    if (!(root instanceof PDFRef) || !catalog) throw new Error('no catalog');
    alter(catalog, hand);
    hand.additions.put(root.objectNumber, catalog);
  };

/** A new signature field, put into the form's list or the page's, or both. */
export const addField =
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

export const nowhere = { Rect: [0, 0, 0, 0], F: 132 };
export const overText = { Rect: [60, 690, 400, 720], F: 4 };

/** A signature's box that is seen, put over a page. */
export const drawBox = (type: 'Sig' | 'Tx', rect: readonly number[]): Change =>
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

/** Adds a table of cross-references alone, with rows, entries of its trailer and, where it is told, another root. */
export function addSection(pdf: Uint8Array, rows: string, entries = '', root?: string): Uint8Array {
  const [now] = openPdf(pdf, new Allowance(5000)).revisions;
  if (!now) throw new Error('no revision');
  const own = String(now.trailer.get(PDFName.of('Root')));
  const trailer = `/Size 99 /Root ${root ?? own} /Prev ${now.section.start} ${entries}`;
  const text = `\nxref\n${rows}trailer\n<< ${trailer} >>\nstartxref\n${pdf.length + 1}\n%%EOF\n`;
  return Buffer.concat([pdf, Buffer.from(text, 'latin1')]);
}
