import { PDFArray, PDFDict, PDFRawStream, PDFStream, PDFString, decodePDFRawStream, type PDFDocument } from 'pdf-lib';
import { contentOf } from './marks.js';
import { annotationOf, fontOf, memory, only, profile, type Rule } from './rule.js';
import { dictIn, everyDict, key, listIn, nameIn, textIn, type Annotation, type Tagged } from './tagged.js';

/** Rewrites the content of the first page that a change takes hold on. */
const inContent =
  (change: (content: string) => string) =>
  (document: PDFDocument): void => {
    for (const { node } of document.getPages()) {
      const content = contentOf(node);
      const changed = change(content);
      if (changed === content) continue;
      node.set(
        key('Contents'),
        document.context.register(document.context.flateStream(Buffer.from(changed, 'latin1'))),
      );
      return;
    }
    throw new Error('the file that faults are planted in has no such content');
  };

const onPages = (
  tagged: Tagged,
  find: (page: Tagged['pages'][number], at: number) => readonly string[],
): readonly string[] => tagged.pages.flatMap((page, at) => find(page, at).map((fault) => `page ${at + 1}: ${fault}`));

const annotated = (tagged: Tagged, isWrong: (one: Annotation) => boolean): readonly string[] =>
  tagged.annotations.filter(isWrong).map(({ subtype, page }) => `${subtype} on page ${page}`);

const tagType = ({ tag }: Annotation): string => nameIn(tag, 'S') ?? 'nothing';
const isPlain = ({ subtype }: Annotation): boolean => !['Widget', 'Popup', 'Link'].includes(subtype);

const setOn =
  (subtype: string, at: string, value: Parameters<PDFDict['set']>[1]) =>
  (document: PDFDocument): void =>
    annotationOf(document, subtype).set(key(at), value);

/** The font's own dictionary, or that of the letters it is composed of. */
const letters = (font: PDFDict): PDFDict | undefined => {
  const [first] = listIn(font, 'DescendantFonts');
  return first instanceof PDFDict ? first : font;
};

const isComposed = (font: PDFDict): boolean => nameIn(font, 'Subtype') === 'Type0';
const calledOf = (font: PDFDict): string => nameIn(font, 'BaseFont') ?? 'a font';

/** Texts that a font's map gives its letters, in UTF-16 as hexadecimal. */
function mapped(font: PDFDict): readonly string[] {
  const stream = font.lookup(key('ToUnicode'));
  if (!(stream instanceof PDFRawStream)) return [];
  const map = Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1');
  return [...map.matchAll(/^(?:<[0-9a-f]+>\s*){1,2}<([0-9a-f]+)>\s*$/gimu)].flatMap(
    ([, text = '']) => text.match(/.{4}/gu) ?? [],
  );
}

/** Content, annotations, fields and fonts. */
export const pageRules: readonly Rule[] = [
  {
    id: '7.1-1',
    source: profile,
    says: 'no artifact stands in what is tagged',
    faults: (tagged) =>
      onPages(tagged, ({ pieces }) =>
        pieces
          .filter(({ tag, around }) => tag === 'Artifact' && around.length > 0)
          .map(({ around }) => around.join(' ')),
      ),
    plant: inContent((content) => content.replace(/(\/MCID \d+\s*>>\s*BDC)/u, '$1 /Artifact BMC EMC')),
  },
  {
    id: '7.1-2',
    source: profile,
    says: 'nothing tagged stands in an artifact',
    faults: (tagged) =>
      onPages(tagged, ({ pieces }) => pieces.filter(({ around }) => around.includes('Artifact')).map(({ tag }) => tag)),
    plant: inContent((content) =>
      content.replace(/\/Artifact\s(?:BMC|<<[^>]*>>\s*BDC)/u, '$& /P <</MCID 9999>> BDC EMC'),
    ),
  },
  {
    id: '7.1-3',
    source: profile,
    says: 'all that is painted is tagged, or an artifact',
    faults: (tagged) => onPages(tagged, ({ bare }) => bare),
    plant: inContent((content) => `${content}\n0 0 1 1 re f`),
  },
  {
    id: '14.7.4.2',
    source: memory,
    says: 'no number of content stands twice on a page (ISO 32000-1)',
    faults: (tagged) =>
      onPages(tagged, ({ pieces }) => {
        const numbers = pieces.flatMap(({ mcid }) => mcid ?? []);
        return numbers.filter((mcid, at) => numbers.indexOf(mcid) < at).map(String);
      }),
    plant: inContent((content) => `${content}\n/P <</MCID 0>> BDC EMC`),
  },
  {
    id: '7.18.1-1',
    source: profile,
    says: 'an annotation that is neither field nor link stands in an Annot',
    faults: (tagged) => annotated(tagged, (one) => isPlain(one) && tagType(one) !== 'Annot'),
    plant: (document) => annotationOf(document, 'Link').set(key('Subtype'), key('Square')),
  },
  {
    id: '7.18.1-2',
    source: profile,
    says: 'an annotation that is neither field nor link has words',
    faults: (tagged) =>
      annotated(tagged, (one) => isPlain(one) && !textIn(one.dict, 'Contents') && !textIn(one.tag, 'Alt')),
    plant: (document) => {
      const annotation = annotationOf(document, 'Link');
      annotation.set(key('Subtype'), key('Square'));
      annotation.delete(key('Contents'));
    },
  },
  {
    id: '7.18.1-3',
    source: profile,
    says: 'a field has words',
    faults: (tagged) =>
      annotated(tagged, ({ subtype, dict, tag }) => subtype === 'Widget' && !textIn(dict, 'TU') && !textIn(tag, 'Alt')),
    plant: setOn('Widget', 'TU', PDFString.of('')),
  },
  {
    id: '7.18.2-2',
    source: profile,
    says: 'there are no marks of trapping among the annotations',
    faults: (tagged) => annotated(tagged, ({ subtype }) => subtype === 'TrapNet'),
    plant: setOn('Link', 'Subtype', key('TrapNet')),
  },
  {
    id: '7.18.3-1',
    source: profile,
    says: 'on a page with annotations the tabulator goes by the tags',
    faults: ({ document }) =>
      document
        .getPages()
        .flatMap(({ node }, at) =>
          listIn(node, 'Annots').length > 0 && nameIn(node, 'Tabs') !== 'S' ? [`page ${at + 1}`] : [],
        ),
    plant: (document) =>
      only(
        document.getPages().find(({ node }) => listIn(node, 'Annots').length > 0),
        'annotation',
      ).node.delete(key('Tabs')),
  },
  {
    id: '7.18.4-1',
    source: profile,
    says: 'a field stands in a Form',
    faults: (tagged) => annotated(tagged, (one) => one.subtype === 'Widget' && tagType(one) !== 'Form'),
    plant: setOn('Link', 'Subtype', key('Widget')),
  },
  {
    id: '7.18.5-1',
    source: profile,
    says: 'a link stands in a Link',
    faults: (tagged) => annotated(tagged, (one) => one.subtype === 'Link' && tagType(one) !== 'Link'),
    plant: setOn('Widget', 'Subtype', key('Link')),
  },
  {
    id: '7.18.5-2',
    source: profile,
    says: 'a link says in words where it leads',
    faults: (tagged) => annotated(tagged, ({ subtype, dict }) => subtype === 'Link' && !textIn(dict, 'Contents')),
    plant: (document) => {
      annotationOf(document, 'Link').delete(key('Contents'));
    },
  },
  {
    id: '7.18.8-1',
    source: profile,
    says: 'a mark for the printer is no part of the text',
    faults: (tagged) => annotated(tagged, ({ subtype, tag }) => subtype === 'PrinterMark' && tag !== undefined),
    plant: setOn('Link', 'Subtype', key('PrinterMark')),
  },
  {
    id: '7.20-1',
    source: profile,
    says: 'no drawing stands in another file',
    faults: ({ document }) =>
      everyDict(document)
        .filter((dict) => nameIn(dict, 'Subtype') === 'Form' && dict.has(key('Ref')))
        .map(() => 'a reference'),
    plant: (document) => {
      document.context.register(document.context.stream('', { Type: 'XObject', Subtype: 'Form', Ref: {} }));
    },
  },
  {
    id: '7.21.3.2-1',
    source: profile,
    says: 'a font of TrueType letters says which letter a number is',
    faults: ({ document }) =>
      everyDict(document)
        .filter((font) => nameIn(font, 'Subtype') === 'CIDFontType2' && !font.has(key('CIDToGIDMap')))
        .map(calledOf),
    plant: (document) => {
      const font = letters(fontOf(document, 'Type0'));
      font?.set(key('Subtype'), key('CIDFontType2'));
      font?.delete(key('CIDToGIDMap'));
    },
  },
  {
    id: '7.21.3.3-1',
    source: profile,
    says: 'a composed font is read by a map that every reader has, or that is embedded',
    faults: ({ fonts }) =>
      fonts
        .filter(isComposed)
        .filter(
          (font) =>
            !/^Identity-[HV]$/u.test(nameIn(font, 'Encoding') ?? '') &&
            !(font.lookup(key('Encoding')) instanceof PDFStream),
        )
        .map(calledOf),
    plant: (document) => fontOf(document, 'Type0').set(key('Encoding'), key('House-H')),
  },
  {
    id: '7.21.4.1-1',
    source: profile,
    says: 'every font is embedded',
    faults: ({ fonts }) =>
      fonts
        .filter((font) => nameIn(font, 'Subtype') !== 'Type3')
        .filter((font) => {
          const described = dictIn(letters(font), 'FontDescriptor');
          return !['FontFile', 'FontFile2', 'FontFile3'].some((file) => described?.has(key(file)));
        })
        .map(calledOf),
    plant: (document) => {
      const described = dictIn(letters(fontOf(document, 'Type0')), 'FontDescriptor');
      for (const file of ['FontFile', 'FontFile2', 'FontFile3']) described?.delete(key(file));
    },
  },
  {
    id: '7.21.7-1',
    source: profile,
    says: 'every letter of a composed font is some text',
    faults: ({ fonts }) => fonts.filter((font) => isComposed(font) && !font.has(key('ToUnicode'))).map(calledOf),
    plant: (document) => {
      fontOf(document, 'Type0').delete(key('ToUnicode'));
    },
  },
  {
    id: '7.21.7-2',
    source: profile,
    says: 'no letter is nothing, or a mark of the order of bytes',
    faults: ({ fonts }) =>
      fonts.filter((font) => mapped(font).some((text) => /^(?:0000|feff|fffe)$/iu.test(text))).map(calledOf),
    plant: (document) =>
      fontOf(document, 'Type0').set(
        key('ToUnicode'),
        document.context.register(document.context.flateStream('1 beginbfchar\n<0001> <FEFF>\nendbfchar\n')),
      ),
  },
  {
    id: '12.7.2',
    source: memory,
    says: 'every field is listed in the form, and every listed one is on a page (ISO 32000-1)',
    faults: ({ document, annotations }) => {
      const listed = new Set(listIn(dictIn(document.catalog, 'AcroForm'), 'Fields'));
      const placed = annotations.filter(({ subtype }) => subtype === 'Widget').map(({ dict }) => dict);
      return [
        ...placed.filter((dict) => !listed.has(dict)).map((dict) => `${textIn(dict, 'T') ?? '?'} is not listed`),
        ...(listed.size > placed.length ? ['a field that is on no page'] : []),
      ];
    },
    plant: (document) => {
      const form = only(dictIn(document.catalog, 'AcroForm'), 'form');
      const fields = form.lookup(key('Fields'), PDFArray);
      fields.remove(0);
    },
  },
];
