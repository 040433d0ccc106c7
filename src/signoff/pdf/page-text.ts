import { PDFArray, PDFName, PDFRawStream, PDFString, type PDFDict, type PDFObject } from 'pdf-lib';
import { pagesOf } from './pages.js';
import type { PdfFile, Revision } from './pdf-file.js';
import { unpack } from './unpack.js';

/** The text of each page in the order in which it is drawn, without any white space: enough to look for a word that is
 *  printed, not to read the page. It knows what the printed book uses: strings shown by fonts that say in `ToUnicode` which
 *  letters their glyphs are (ISO 32000-1, 9.10.3), else Latin letters. Text inside pictures is left out. */
export function pageTexts({ allowance }: PdfFile, revision: Revision): readonly string[] {
  const known = new Map<PDFObject, Decode>();
  const decoderOf = (font: PDFDict): Decode => {
    const decode = known.get(font) ?? readDecoder(font);
    known.set(font, decode);
    return decode;
  };

  const readDecoder = (font: PDFDict): Decode => {
    const map = revision.resolve(font.get(PDFName.of('ToUnicode')));
    if (!(map instanceof PDFRawStream)) return (bytes) => bytes.toString('latin1');
    const letters = readToUnicode(Buffer.from(unpack(map, allowance)).toString('latin1'));
    const width = font.get(PDFName.of('Subtype')) === PDFName.of('Type0') ? 2 : 1;
    return (bytes) => {
      let text = '';
      for (let at = 0; at + width <= bytes.length; at += width) text += letters.get(bytes.readUIntBE(at, width)) ?? '';
      return text;
    };
  };

  return pagesOf(revision).map(({ dict }) => {
    const fonts = revision.dict(resourcesOf(revision, dict)?.get(PDFName.of('Font')));
    const contents = revision.resolve(dict.get(PDFName.of('Contents')));
    const streams = contents instanceof PDFArray ? contents.asArray().map((one) => revision.resolve(one)) : [contents];
    const drawn = streams.map((one) => (one instanceof PDFRawStream ? unpack(one, allowance) : new Uint8Array()));
    const text = shownText(drawn.map((bytes) => Buffer.from(bytes).toString('latin1')).join('\n'), (name) => {
      const font = revision.dict(fonts?.get(PDFName.of(name)));
      return font && decoderOf(font);
    });
    // A line may be broken after a hyphen that is another character than the one that is typed.
    return text.replace(/\s+/gu, '').replace(/[\u2010\u2011]/gu, '-');
  });
}

type Decode = (bytes: Buffer) => string;

/** A page's own resources, or those of the group of pages that it is in. */
function resourcesOf(revision: Revision, page: PDFDict): PDFDict | undefined {
  let node: PDFDict | undefined = page;
  for (let hops = 0; node && hops < 64; hops += 1) {
    const own = revision.dict(node.get(PDFName.of('Resources')));
    if (own) return own;
    node = revision.dict(node.get(PDFName.of('Parent')));
  }
  return undefined;
}

/** Names, strings and the operators that choose a font or end a text; all else only passes by. */
const tokens = /\/([^\s/<>()[\]{}%]+)|<([0-9a-fA-F\s]*)>|(\()|\b(Tf|ET)\b/gu;

function shownText(content: string, fontOf: (name: string) => Decode | undefined): string {
  let name = '';
  let decode: Decode | undefined;
  let text = '';
  const next = new RegExp(tokens);
  for (let token = next.exec(content); token; token = next.exec(content)) {
    const [, named, hex, opened, operator] = token;
    if (named !== undefined) name = named;
    else if (operator === 'Tf') decode = fontOf(name);
    else if (operator === 'ET') text += '\n';
    else if (hex !== undefined) text += decode?.(Buffer.from(hex.replace(/\s/gu, ''), 'hex')) ?? '';
    else if (opened !== undefined) {
      const start = next.lastIndex;
      next.lastIndex = stringEnd(content, start);
      const bytes = PDFString.of(content.slice(start, next.lastIndex - 1)).asBytes();
      text += decode?.(Buffer.from(bytes)) ?? '';
    }
  }
  return text;
}

/** The place after the parenthesis that ends a string; parentheses may stand in pairs inside it (ISO 32000-1, 7.3.4.2). */
function stringEnd(content: string, start: number): number {
  let depth = 1;
  let at = start;
  for (; at < content.length && depth > 0; at += 1) {
    const letter = content[at];
    if (letter === '\\') at += 1;
    else if (letter === '(') depth += 1;
    else if (letter === ')') depth -= 1;
  }
  return at;
}

/** Letters by code, from the lists of single codes and of ranges. */
function readToUnicode(map: string): ReadonlyMap<number, string> {
  const letters = new Map<number, string>();
  for (const [, list = ''] of map.matchAll(/beginbfchar([^]*?)endbfchar/gu)) {
    for (const [, code = '', text = ''] of list.matchAll(/<([0-9a-fA-F]+)>\s*<([0-9a-fA-F]+)>/gu))
      letters.set(Number.parseInt(code, 16), utf16(text));
  }
  for (const [, list = ''] of map.matchAll(/beginbfrange([^]*?)endbfrange/gu)) {
    const ranges = list.matchAll(/<([0-9a-fA-F]+)>\s*<([0-9a-fA-F]+)>\s*(?:<([0-9a-fA-F]+)>|\[([^\]]*)\])/gu);
    for (const [, from = '', to = '', first, each = ''] of ranges) {
      const start = Number.parseInt(from, 16);
      const count = Math.min(Number.parseInt(to, 16) - start + 1, 65_536);
      const listed = [...each.matchAll(/<([0-9a-fA-F]+)>/gu)].map(([, text = '']) => text);
      for (let step = 0; step < count; step += 1) {
        const text = first === undefined ? utf16(listed[step] ?? '') : counted(first, step);
        letters.set(start + step, text);
      }
    }
  }
  return letters;
}

function utf16(hex: string): string {
  return (hex.match(/.{4}/gu) ?? []).map((unit) => String.fromCharCode(Number.parseInt(unit, 16))).join('');
}

/** A range counts on in the last unit of its first letter. */
function counted(first: string, step: number): string {
  const last = Number.parseInt(first.slice(-4), 16) + step;
  return utf16(first.slice(0, -4)) + String.fromCharCode(last & 0xffff);
}
