import type { PDFDocument, PDFObject, PDFRef } from 'pdf-lib';
import { elementOf } from './rule.js';
import { key, kidTypes, listIn, refOf, type Tag, type Tagged } from './tagged.js';

export const ofType = ({ tags }: Tagged, ...types: readonly string[]): readonly Tag[] =>
  tags.filter(({ standard = '' }) => types.includes(standard));

/** Elements of a type stand in those types alone. */
export const standsIn =
  (type: string, ...parents: readonly string[]) =>
  (tagged: Tagged): readonly string[] =>
    ofType(tagged, type)
      .filter(({ parent }) => !parents.includes(parent?.standard ?? ''))
      .map(({ parent }) => `${type} in ${parent?.type ?? 'the root'}`);

/** An element of a type holds others in that order alone: a pattern over `A B C`. */
export const holds =
  (type: string, order: RegExp) =>
  (tagged: Tagged): readonly string[] =>
    ofType(tagged, type)
      .map((tag) => kidTypes(tag).join(' '))
      .filter((kids) => !order.test(kids))
      .map((kids) => `${type} holds ${kids}`);

/** Puts a new element of a type behind what the first one of another holds. */
export const put =
  (type: string, into: string) =>
  (document: PDFDocument): void => {
    const holder = elementOf(document, into);
    append(holder, element(document, type, refOf(document, holder)));
  };

/** A new element that holds others. */
export const element = (document: PDFDocument, type: string, parent: PDFRef, more: object = {}): PDFRef =>
  document.context.register(document.context.obj({ Type: 'StructElem', S: type, P: parent, ...more }));

/** Puts an element behind what another holds. */
export function append(holder: ReturnType<typeof elementOf>, kid: PDFRef): void {
  holder.set(key('K'), holder.context.obj([...kidRefs(holder), kid]));
}

export const kidRefs = (holder: ReturnType<typeof elementOf>): readonly PDFObject[] =>
  listIn(holder, 'K').map((one) => holder.context.getObjectRef(one) ?? one);
