import {
  PDFBool,
  PDFStream,
  PDFString,
  decodePDFRawStream,
  PDFRawStream,
  type PDFDict,
  type PDFDocument,
} from 'pdf-lib';
import { elementOf, memory, metadataOf, only, profile, retype, type Rule } from './rule.js';
import { dictIn, everyDict, isStandard, key, listIn, nameIn, parentTree, roleMap, rolesOf, textIn } from './tagged.js';

const whole = (isSo: boolean, fault: string): readonly string[] => (isSo ? [] : [fault]);

function xmp(document: PDFDocument): string {
  const stream = document.catalog.lookup(key('Metadata'));
  if (!(stream instanceof PDFStream)) return '';
  const bytes = stream instanceof PDFRawStream ? decodePDFRawStream(stream).decode() : stream.getContents();
  return Buffer.from(bytes).toString('utf8');
}

/** Writes the metadata anew, changed. */
const inXmp =
  (from: RegExp, to: string) =>
  (document: PDFDocument): void => {
    metadataOf(document);
    const changed = xmp(document).replace(from, to);
    document.catalog.set(key('Metadata'), document.context.register(document.context.stream(changed)));
  };

const language = (document: PDFDocument): string => textIn(document.catalog, 'Lang') ?? '';
const marks = (document: PDFDocument): PDFDict | undefined => dictIn(document.catalog, 'MarkInfo');
const roles = (document: PDFDocument): PDFDict => only(roleMap(document), 'role map');
const setRole =
  (from: string, to: string) =>
  (document: PDFDocument): void =>
    roles(document).set(key(from), key(to));
const without =
  (at: string) =>
  (document: PDFDocument): void => {
    document.catalog.delete(key(at));
  };

/** What the file says of itself, its types and its attachments. */
export const fileRules: readonly Rule[] = [
  {
    id: '5-1',
    source: profile,
    says: 'the metadata says which part of PDF/UA it keeps to',
    faults: ({ document }) => whole(/pdfuaid:part/u.test(xmp(document)), 'no pdfuaid:part'),
    plant: inXmp(/<pdfuaid:part>.*?<\/pdfuaid:part>/u, ''),
  },
  {
    id: '5-2',
    source: profile,
    says: 'that part is 1',
    faults: ({ document }) => whole(/pdfuaid:part(?:>|=")1\b/u.test(xmp(document)), 'another part than 1'),
    plant: inXmp(/(pdfuaid:part>)1/u, '$12'),
  },
  {
    id: '6.2-1',
    source: profile,
    says: 'the file says that it is tagged',
    faults: ({ document }) => whole(marks(document)?.lookup(key('Marked')) === PDFBool.True, 'Marked is not true'),
    plant: (document) => marks(document)?.set(key('Marked'), PDFBool.False),
  },
  {
    id: '7.1-4',
    source: profile,
    says: 'no tag is suspect',
    faults: ({ document }) => whole(marks(document)?.lookup(key('Suspects')) !== PDFBool.True, 'Suspects is true'),
    plant: (document) => marks(document)?.set(key('Suspects'), PDFBool.True),
  },
  {
    id: '7.1-5',
    source: profile,
    says: 'each type is a standard one, or leads to one',
    faults: ({ tags }) =>
      tags.filter(({ standard }) => standard === undefined).map(({ type }) => `${type} leads nowhere`),
    plant: retype('Div', 'Parcel'),
  },
  {
    id: '7.1-6',
    source: profile,
    says: 'no type leads back to itself',
    faults: ({ document }) =>
      roleMap(document)
        ?.keys()
        .map((name) => rolesOf(name.decodeText(), roleMap(document)))
        .filter((steps) => new Set(steps).size < steps.length)
        .map((steps) => steps.join(' → ')) ?? [],
    plant: (document) => {
      setRole('Here', 'There')(document);
      setRole('There', 'Here')(document);
    },
  },
  {
    id: '7.1-7',
    source: profile,
    says: 'no standard type is given another meaning',
    faults: ({ document }) =>
      roleMap(document)
        ?.keys()
        .map((name) => name.decodeText())
        .filter(isStandard) ?? [],
    plant: setRole('Figure', 'P'),
  },
  {
    id: '7.1-8',
    source: profile,
    says: 'there is metadata',
    faults: ({ document }) => whole(xmp(document) !== '', 'no metadata'),
    plant: without('Metadata'),
  },
  {
    id: '7.1-9',
    source: profile,
    says: 'the metadata has a title',
    faults: ({ document }) => whole(/<dc:title>[\s\S]*?<rdf:li[^>]*>[^<]+</u.test(xmp(document)), 'no dc:title'),
    plant: inXmp(/<dc:title>[\s\S]*?<\/dc:title>/u, ''),
  },
  {
    id: '7.1-10',
    source: profile,
    says: 'windows show the title, not the name of the file',
    faults: ({ document }) =>
      whole(
        dictIn(document.catalog, 'ViewerPreferences')?.lookup(key('DisplayDocTitle')) === PDFBool.True,
        'DisplayDocTitle is not true',
      ),
    plant: without('ViewerPreferences'),
  },
  {
    id: '7.1-11',
    source: profile,
    says: 'there is a tag tree',
    faults: ({ document }) => whole(dictIn(document.catalog, 'StructTreeRoot') !== undefined, 'no StructTreeRoot'),
    plant: without('StructTreeRoot'),
  },
  {
    id: '7.1-12',
    source: profile,
    says: 'each element names the one that holds it, and that is so',
    faults: ({ tags }) =>
      tags
        .filter(({ dict, parent }) =>
          parent ? dictIn(dict, 'P') !== parent.dict : nameIn(dictIn(dict, 'P'), 'Type') !== 'StructTreeRoot',
        )
        .map(({ type }) => `${type} names another`),
    plant: (document) => {
      elementOf(document, 'Caption').delete(key('P'));
    },
  },
  {
    id: '7.2-29',
    source: profile,
    says: 'a language is written as RFC 3066 has it',
    faults: ({ document, tags }) =>
      [document.catalog, ...tags.map(({ dict }) => dict)]
        .flatMap((dict) => textIn(dict, 'Lang') ?? [])
        .filter((lang) => !/^[a-zA-Z]{1,8}(-[a-zA-Z0-9]{1,8})*$/u.test(lang)),
    plant: (document) => {
      document.catalog.set(key('Lang'), PDFString.of('American English'));
    },
  },
  {
    id: '7.2-33',
    source: profile,
    says: 'the language is told: of bookmarks, of alternative texts, of fields and of the metadata alike',
    faults: ({ document }) => whole(language(document) !== '', 'no Lang'),
    plant: without('Lang'),
  },
  {
    id: '7.11-1',
    source: profile,
    says: 'what is attached has its name twice, as old and as new readers look for it',
    faults: ({ document }) =>
      everyDict(document)
        .filter((dict) => dict.has(key('EF')))
        .filter((dict) => [textIn(dict, 'F'), textIn(dict, 'UF')].some((name) => name === undefined || name === ''))
        .map((dict) => textIn(dict, 'UF') ?? textIn(dict, 'F') ?? 'a file without a name'),
    plant: (document) => {
      only(
        everyDict(document).find((dict) => dict.has(key('EF'))),
        'attachment',
      ).delete(key('UF'));
    },
  },
  {
    id: '7.16-1',
    source: profile,
    says: 'a file that is encrypted lets readers for the blind in; none is encrypted here',
    faults: ({ document }) => whole(document.context.trailerInfo.Encrypt === undefined, 'encrypted'),
    plant: (document) => {
      document.context.trailerInfo.Encrypt = document.context.obj({ Filter: 'Standard', P: 0 });
    },
  },
  {
    id: '14.7.4.4',
    source: memory,
    says: 'the numbers of pages and annotations lead to elements (ISO 32000-1)',
    faults: ({ document, annotations }) => {
      const tree = parentTree(dictIn(document.catalog, 'StructTreeRoot'));
      return [
        ...document.getPages().flatMap(({ node }, index) => {
          const number = Number(node.lookup(key('StructParents'))?.toString() ?? -1);
          return tree.has(number) ? [] : [`page ${index + 1}`];
        }),
        ...annotations.filter(({ tag }) => tag === undefined).map(({ subtype, page }) => `${subtype} on page ${page}`),
      ];
    },
    plant: (document) => {
      const root = only(dictIn(document.catalog, 'StructTreeRoot'), 'tag tree');
      root.set(
        key('ParentTree'),
        document.context.obj({ Nums: listIn(dictIn(root, 'ParentTree'), 'Nums').slice(0, 2) }),
      );
    },
  },
];
