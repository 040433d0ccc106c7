import {
  PDFArray,
  PDFName,
  PDFNumber,
  PDFRawStream,
  StandardFontEmbedder,
  StandardFonts,
  type PDFContext,
  type PDFDict,
  type PDFHexString,
  type PDFObject,
} from 'pdf-lib';
import type { Revision } from '../pdf/index.js';

/** The font that the form's fields are written in: its name in the form's resources, and what it refers to. */
export interface EntryFont {
  readonly name: string;
  readonly font: PDFObject;
  readonly width: (text: string) => number;
}

/** The first simple font of the form's resources, with its own widths; Helvetica when the form has none. */
export function entryFont(context: PDFContext, revision: Revision, form: PDFDict | undefined): EntryFont {
  const fonts = revision.dict(revision.dict(form?.get(PDFName.of('DR')))?.get(PDFName.of('Font')));
  for (const [name, font] of fonts?.entries() ?? []) {
    const dict = revision.dict(font);
    const widths = revision.resolve(dict?.get(PDFName.of('Widths')));
    const first = dict?.get(PDFName.of('FirstChar'));
    if (!(widths instanceof PDFArray) || !(first instanceof PDFNumber)) continue;
    const widthOf = (byte: number): number => {
      const width = widths.asArray()[byte - first.asNumber()];
      return width instanceof PDFNumber ? width.asNumber() / 1000 : 0.6;
    };
    return {
      name: name.asString(),
      font,
      width: (text) => bytesOf(text).reduce((sum, byte) => sum + widthOf(byte), 0),
    };
  }
  const font = context.obj({ Type: 'Font', Subtype: 'Type1', BaseFont: 'Helvetica', Encoding: 'WinAnsiEncoding' });
  return { name: '/Helv', font, width: (text) => helvetica().widthOfTextAtSize(readable(text), 1) };
}

interface Look {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly string[];
  /** Points at most; smaller when the lines are long. */
  readonly size: number;
  /** A text field's content is marked so that a form program can replace it. */
  readonly isEntry: boolean;
}

/** What is seen in a filled or signed field: lines of text from the top, or one in the middle of the box's height. */
export function makeAppearance(
  context: PDFContext,
  font: EntryFont,
  { width, height, lines, size, isEntry }: Look,
): PDFRawStream {
  const inset = 3;
  const longest = Math.max(0.01, ...lines.map((line) => font.width(line)));
  const fitting = Math.min(size, (width - 2 * inset) / longest, (height - 2) / (lines.length * 1.2));
  const points = Math.max(2, Math.floor(fitting * 10) / 10);
  const block = lines.length * points * 1.2;
  const top = (height + block) / 2 - points * 0.95;
  const shown = lines.map(
    (line, index) => `1 0 0 1 ${inset} ${(top - index * points * 1.2).toFixed(2)} Tm ${encode(line).toString()} Tj`,
  );
  const drawing = `q BT ${font.name} ${points} Tf 0.086 0.141 0.18 rg\n${shown.join('\n')}\nET Q`;
  const content = Buffer.from(isEntry ? `/Tx BMC\n${drawing}\nEMC\n` : `${drawing}\n`, 'latin1');
  const dict = context.obj({
    Type: 'XObject',
    Subtype: 'Form',
    BBox: [0, 0, width, height],
    Resources: { Font: { [font.name.slice(1)]: font.font } },
    Length: content.length,
  });
  return PDFRawStream.of(dict as PDFDict, content);
}

function encode(line: string): PDFHexString {
  return helvetica().encodeText(readable(line));
}

/** The text in letters that a form font has; each other becomes a question mark. */
function readable(text: string): string {
  return [...text.replace(/\s+/gu, ' ')].map((letter) => (canShow(letter) ? letter : '?')).join('');
}

function canShow(letter: string): boolean {
  try {
    helvetica().encodeText(letter);
    return true;
  } catch {
    return false;
  }
}

function bytesOf(text: string): readonly number[] {
  return [...encode(text).asBytes()];
}

let known: StandardFontEmbedder | undefined;

/** Used for its encoding (Windows Latin) and, when the form has no font, for its widths. */
function helvetica(): StandardFontEmbedder {
  // pdf-lib's two lists of the standard fonts have the same names.
  known ??= StandardFontEmbedder.for(
    StandardFonts.Helvetica as unknown as Parameters<typeof StandardFontEmbedder.for>[0],
  );
  return known;
}
