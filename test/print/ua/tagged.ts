import {
  PDFArray,
  PDFDict,
  PDFHexString,
  PDFName,
  PDFStream,
  PDFString,
  type PDFRef,
  type PDFDocument,
  type PDFObject,
} from 'pdf-lib';
import { readMarks, type Marked } from './marks.js';

/** A structure element of a PDF's tag tree. */
export interface Tag {
  /** As it is written, and the standard type that the role map leads to; undefined where it leads nowhere. */
  readonly type: string;
  readonly standard: string | undefined;
  readonly dict: PDFDict;
  readonly parent: Tag | undefined;
  readonly kids: readonly Tag[];
}

/** A tagged PDF, read once for all rules. */
export interface Tagged {
  readonly document: PDFDocument;
  /** All elements, parents before kids, in reading order. */
  readonly tags: readonly Tag[];
  readonly annotations: readonly Annotation[];
  /** Marks and painting of each page's content, read when a rule asks for them. */
  readonly pages: readonly Marked[];
  readonly fonts: readonly PDFDict[];
}

export interface Annotation {
  readonly dict: PDFDict;
  readonly subtype: string;
  /** The element that holds it, by the parent tree. */
  readonly tag: PDFDict | undefined;
  /** From 1. */
  readonly page: number;
}

const standardTypes = new Set(
  (
    'Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody ' +
    'Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby RB RT RP Warichu WT WP ' +
    'Figure Formula Form'
  ).split(' '),
);

export const isStandard = (type: string): boolean => standardTypes.has(type);

export const key = (text: string): PDFName => PDFName.of(text);

export const nameIn = (dict: PDFDict | undefined, at: string): string | undefined => {
  const value = dict?.lookup(key(at));
  return value instanceof PDFName ? value.decodeText() : undefined;
};

/** Text of a string; undefined for anything else. */
export function textIn(dict: PDFDict | undefined, at: string): string | undefined {
  const value = dict?.lookup(key(at));
  return value instanceof PDFString || value instanceof PDFHexString ? value.decodeText() : undefined;
}

export const dictIn = (dict: PDFDict | undefined, at: string): PDFDict | undefined => {
  const value = dict?.lookup(key(at));
  if (value instanceof PDFStream) return value.dict;
  return value instanceof PDFDict ? value : undefined;
};

/** An array as it stands, anything else as the only one of its kind, nothing as none. */
export function listIn(dict: PDFDict | undefined, at: string): readonly PDFObject[] {
  const value = dict?.lookup(key(at));
  if (value === undefined) return [];
  if (!(value instanceof PDFArray)) return [value];
  return value.asArray().flatMap((one) => dict?.context.lookup(one) ?? []);
}

export const roleMap = (document: PDFDocument): PDFDict | undefined =>
  dictIn(dictIn(document.catalog, 'StructTreeRoot'), 'RoleMap');

/** Where the role map leads from a type, step by step; it stops at a standard type or where it has been before. */
export function rolesOf(type: string, roles: PDFDict | undefined): readonly string[] {
  const steps = [type];
  for (let last = type; !isStandard(last);) {
    const next = nameIn(roles, last);
    if (next === undefined || steps.includes(next)) return next === undefined ? steps : [...steps, next];
    steps.push(next);
    last = next;
  }
  return steps;
}

export function readTagged(document: PDFDocument): Tagged {
  const root = dictIn(document.catalog, 'StructTreeRoot');
  const roles = roleMap(document);
  const tags: Tag[] = [];
  const visit = (dict: PDFDict, parent: Tag | undefined): Tag => {
    const type = nameIn(dict, 'S') ?? '';
    const last = rolesOf(type, roles).at(-1) ?? '';
    const kids: Tag[] = [];
    const tag = { type, standard: isStandard(last) ? last : undefined, dict, parent, kids };
    tags.push(tag);
    for (const kid of listIn(dict, 'K'))
      if (kid instanceof PDFDict && nameIn(kid, 'S') !== undefined) kids.push(visit(kid, tag));
    return tag;
  };
  for (const kid of listIn(root, 'K')) if (kid instanceof PDFDict) visit(kid, undefined);
  const pages = document.getPages();
  const parents = parentTree(root);
  let marked: readonly Marked[] | undefined;
  return {
    document,
    tags,
    get pages() {
      return (marked ??= pages.map(({ node }) => readMarks(node)));
    },
    annotations: pages.flatMap(({ node }, index) =>
      listIn(node, 'Annots')
        .filter((one) => one instanceof PDFDict)
        .map((dict) => {
          const tag = parents.get(numberIn(dict, 'StructParent') ?? -1);
          return {
            dict,
            subtype: nameIn(dict, 'Subtype') ?? '',
            tag: tag instanceof PDFDict ? tag : undefined,
            page: index + 1,
          };
        }),
    ),
    fonts: everyDict(document).filter((dict) => nameIn(dict, 'Type') === 'Font'),
  };
}

export const numberIn = (dict: PDFDict | undefined, at: string): number | undefined => {
  const value = dict?.lookup(key(at))?.toString();
  return value !== undefined && /^-?\d+(?:\.\d+)?$/u.test(value) ? Number(value) : undefined;
};

/** What the numbers of pages and annotations lead to: an element, or a page's elements by the number of their content. */
export function parentTree(root: PDFDict | undefined): ReadonlyMap<number, PDFObject> {
  const found = new Map<number, PDFObject>();
  const visit = (node: PDFDict | undefined): void => {
    const nums = listIn(node, 'Nums');
    for (let at = 0; at + 1 < nums.length; at += 2) found.set(Number(String(nums[at])), nums[at + 1] as PDFObject);
    for (const kid of listIn(node, 'Kids')) if (kid instanceof PDFDict) visit(kid);
  };
  visit(dictIn(root, 'ParentTree'));
  return found;
}

export function everyDict(document: PDFDocument): readonly PDFDict[] {
  return document.context.enumerateIndirectObjects().flatMap(([, object]) => {
    if (object instanceof PDFStream) return [object.dict];
    return object instanceof PDFDict ? [object] : [];
  });
}

/** The value of an attribute, such as `Scope`, among those of an element. */
export function attribute(tag: Tag, at: string): string | undefined {
  for (const owner of listIn(tag.dict, 'A')) {
    const value = owner instanceof PDFDict ? owner.lookup(key(at)) : undefined;
    if (value !== undefined) return value.toString();
  }
  return undefined;
}

/** Types of an element's kids. */
export const kidTypes = (tag: Tag): readonly string[] => tag.kids.map(({ standard = '?' }) => standard);

export const refOf = (document: PDFDocument, dict: PDFDict): PDFRef => {
  const ref = document.context.getObjectRef(dict);
  if (!ref) throw new Error('the element is not an object of its own');
  return ref;
};
