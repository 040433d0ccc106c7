/** What the book needs to know of a TrueType file. Distances are in thousandths of the em. */
export interface FontFile {
  readonly bytes: Uint8Array;
  readonly name: string;
  readonly ascent: number;
  readonly descent: number;
  readonly box: readonly [number, number, number, number];
  /** Does the font draw this code point? */
  covers(codePoint: number): boolean;
  /** Advance of a code point; that of the missing glyph when it has none. */
  width(codePoint: number): number;
}

/** Reads a static TrueType font. Source of the tables: OpenType specification 1.9, chapters head, hhea, hmtx and cmap
 *  (formats 4 and 12). The fonts ship with a package, so a table that is missing is a fault of the program. */
export function readFontFile(bytes: Uint8Array, name: string): FontFile {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const head = tableAt(view, 'head');
  const hhea = tableAt(view, 'hhea');
  const hmtx = tableAt(view, 'hmtx');
  const scale = (units: number): number => Math.round((units * 1000) / view.getUint16(head + 18));
  const glyphs = readCharacterMap(view, tableAt(view, 'cmap'));
  const lastMetric = view.getUint16(hhea + 34) - 1;
  const advance = (glyph: number): number => scale(view.getUint16(hmtx + 4 * Math.min(glyph, lastMetric)));
  return {
    bytes,
    name,
    ascent: scale(view.getInt16(hhea + 4)),
    descent: scale(view.getInt16(hhea + 6)),
    box: [
      scale(view.getInt16(head + 36)),
      scale(view.getInt16(head + 38)),
      scale(view.getInt16(head + 40)),
      scale(view.getInt16(head + 42)),
    ],
    covers: (codePoint) => glyphs.has(codePoint),
    width: (codePoint) => advance(glyphs.get(codePoint) ?? 0),
  };
}

function tableAt(view: DataView, tag: string): number {
  const count = view.getUint16(4);
  for (let index = 0; index < count; index++) {
    const record = 12 + 16 * index;
    const name = String.fromCharCode(...[0, 1, 2, 3].map((at) => view.getUint8(record + at)));
    if (name === tag) return view.getUint32(record + 8);
  }
  throw new Error(`font without a ${tag} table`);
}

/** Glyph of every code point of the Unicode sub-tables. */
function readCharacterMap(view: DataView, cmap: number): ReadonlyMap<number, number> {
  const glyphs = new Map<number, number>();
  const count = view.getUint16(cmap + 2);
  for (let index = 0; index < count; index++) {
    const table = cmap + view.getUint32(cmap + 4 + 8 * index + 4);
    const format = view.getUint16(table);
    if (format === 4) readSegments(view, table, glyphs);
    if (format === 12) readGroups(view, table, glyphs);
  }
  return glyphs;
}

function readSegments(view: DataView, table: number, glyphs: Map<number, number>): void {
  const segments = view.getUint16(table + 6) / 2;
  const ends = table + 14;
  const starts = ends + 2 * segments + 2;
  const deltas = starts + 2 * segments;
  const offsets = deltas + 2 * segments;
  for (let segment = 0; segment < segments; segment++) {
    const end = view.getUint16(ends + 2 * segment);
    const start = view.getUint16(starts + 2 * segment);
    const delta = view.getUint16(deltas + 2 * segment);
    const offset = view.getUint16(offsets + 2 * segment);
    for (let code = start; code <= end && code < 0xffff; code++) {
      const raw = offset === 0 ? code : view.getUint16(offsets + 2 * segment + offset + 2 * (code - start));
      const glyph = offset !== 0 && raw === 0 ? 0 : (raw + delta) & 0xffff;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
}

function readGroups(view: DataView, table: number, glyphs: Map<number, number>): void {
  const groups = view.getUint32(table + 12);
  for (let group = 0; group < groups; group++) {
    const at = table + 16 + 12 * group;
    const start = view.getUint32(at);
    const end = view.getUint32(at + 4);
    const first = view.getUint32(at + 8);
    for (let code = start; code <= end; code++) glyphs.set(code, first + code - start);
  }
}
