import { PDFArray, PDFName, PDFRawStream, type PDFObject } from 'pdf-lib';
import { textOf } from './form-fields.js';
import { Malformed } from './malformed.js';
import type { PdfFile, Revision } from './pdf-file.js';
import { unpack } from './unpack.js';

interface Attachment {
  readonly name: string;
  /** The file's bytes as they were before they were packed. */
  bytes(): Uint8Array;
}

const most = 200;

/** Files that the PDF carries, by its tree of names. */
export function attachmentsOf({ allowance }: PdfFile, revision: Revision): readonly Attachment[] {
  const root = revision.dict(revision.trailer.get(PDFName.of('Root')));
  const names = revision.dict(root?.get(PDFName.of('Names')));
  const found: Attachment[] = [];

  const walk = (value: PDFObject | undefined, depth: number): void => {
    if (depth > 16 || found.length > most) throw new Malformed('it carries too many files');
    const node = revision.dict(value);
    const kids = revision.resolve(node?.get(PDFName.of('Kids')));
    if (kids instanceof PDFArray) for (const kid of kids.asArray()) walk(kid, depth + 1);
    const pairs = revision.resolve(node?.get(PDFName.of('Names')));
    if (!(pairs instanceof PDFArray)) return;
    for (let index = 1; index < pairs.size(); index += 2) {
      const made = attachmentOf(pairs.get(index));
      if (made) found.push(made);
    }
  };

  const attachmentOf = (value: PDFObject): Attachment | undefined => {
    const specification = revision.dict(value);
    const embedded = revision.dict(specification?.get(PDFName.of('EF')));
    const stream = revision.resolve(embedded?.get(PDFName.of('F')) ?? embedded?.get(PDFName.of('UF')));
    const [unicode, plain] = ['UF', 'F'].map((key) => textOf(revision.resolve(specification?.get(PDFName.of(key)))));
    const name = unicode ?? plain;
    if (name === undefined || !(stream instanceof PDFRawStream)) return undefined;
    return { name, bytes: () => unpack(stream, allowance) };
  };

  walk(names?.get(PDFName.of('EmbeddedFiles')), 0);
  return found;
}
