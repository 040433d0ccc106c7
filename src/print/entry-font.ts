import type { PDFContext, PDFDict } from 'pdf-lib';
import { bookFonts } from './fonts.js';

/** What Windows-1252 puts at 128 to 159; elsewhere it is Latin-1. Source: PDF 32000-1, annex D.2. */
const upperHalf = '€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ';

/** The text face as a whole, simple TrueType font, for what people will type into fields: a subset could not show it, and
 *  fields need a font with one byte a character. */
export function embedEntryFont(context: PDFContext): PDFDict {
  const font = bookFonts()[0];
  if (!font) throw new Error('the book has no font');
  const file = context.register(context.flateStream(font.bytes, { Length1: font.bytes.length }));
  const widths = Array.from({ length: 224 }, (_, index) => font.width(codePointOf(32 + index)));
  const descriptor = context.obj({
    Type: 'FontDescriptor',
    FontName: font.name,
    // Bit 6: characters of the Latin set only.
    Flags: 32,
    FontBBox: [...font.box],
    ItalicAngle: 0,
    Ascent: font.ascent,
    Descent: font.descent,
    CapHeight: font.ascent,
    StemV: 80,
    FontFile2: file,
  });
  return context.obj({
    Type: 'Font',
    Subtype: 'TrueType',
    BaseFont: font.name,
    Encoding: 'WinAnsiEncoding',
    FirstChar: 32,
    LastChar: 255,
    Widths: widths,
    FontDescriptor: context.register(descriptor),
  });
}

function codePointOf(byte: number): number {
  if (byte < 128 || byte > 159) return byte;
  return upperHalf.codePointAt(byte - 128) ?? byte;
}
