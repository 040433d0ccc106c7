import { execFileSync } from 'node:child_process';
import { PDFArray, PDFDict, PDFName, PDFRef, type PDFDocument } from 'pdf-lib';

/** How full a sheet is. */
export interface Fill {
  /** From 1. */
  readonly page: number;
  /** Share of the height between the margins that is left when the tallest empty strip is taken away: what stands at the very foot, such as a
   *  line for initials, fills no sheet. */
  readonly whole: number;
  /** The same of its left and its right half. */
  readonly left: number;
  readonly right: number;
  readonly isUpright: boolean;
}

/** Pixels to the inch: a letter is one or two. */
const dpi = 18;
/** Darker than this is a mark; 255 is paper. */
const ink = 200;

/** How full each sheet of a PDF is between `top` and `foot`, inches from its edges, drawn by poppler. */
export function fillOf(path: string, { top, foot }: { readonly top: number; readonly foot: number }): readonly Fill[] {
  const drawn = execFileSync('pdftoppm', ['-r', String(dpi), '-gray', path], { maxBuffer: 256 * 1024 * 1024 });
  return pictures(drawn).map(({ width, height, pixels }, index) => {
    const rows = Array.from(
      { length: height - Math.round((top + foot) * dpi) },
      (_, row) => (row + Math.round(top * dpi)) * width,
    );
    const share = (from: number, to: number) =>
      1 -
      emptiest(rows.map((start) => pixels.subarray(start + from, start + to).some((gray) => gray < ink))) / rows.length;
    const half = width >> 1;
    return {
      page: index + 1,
      whole: share(0, width),
      left: share(0, half),
      right: share(half, width),
      isUpright: height > width,
    };
  });
}

/** The longest run of rows without a mark. */
function emptiest(marked: readonly boolean[]): number {
  let longest = 0;
  let run = 0;
  for (const isMarked of marked) {
    run = isMarked ? 0 : run + 1;
    longest = Math.max(longest, run);
  }
  return longest;
}

/** Binary gray maps, one after the other: `P5`, width, height and 255, then a byte a pixel. */
function pictures(all: Buffer): readonly { width: number; height: number; pixels: Uint8Array }[] {
  const found = [];
  for (let at = 0; at < all.length;) {
    const head = /^P5\s(\d+)\s(\d+)\s255\s/u.exec(all.subarray(at, at + 32).toString('latin1'));
    if (!head) throw new Error('pdftoppm wrote no gray map');
    const [width, height] = [Number(head[1]), Number(head[2])];
    const from = at + head[0].length;
    at = from + width * height;
    found.push({ width, height, pixels: all.subarray(from, at) });
  }
  return found;
}

/** Pages that a bookmark leads to, from 1: a chapter or a room begins there. */
export function chapterPages(document: PDFDocument): ReadonlySet<number> {
  const { context, catalog } = document;
  const number = new Map(document.getPages().map(({ ref }, index) => [ref.toString(), index + 1]));
  const pages = new Set<number>();
  const visit = (item: PDFDict | undefined): void => {
    for (let one = item; one; one = one.lookupMaybe(PDFName.of('Next'), PDFDict)) {
      const action = one.lookupMaybe(PDFName.of('A'), PDFDict);
      const to = context.lookup(one.get(PDFName.of('Dest')) ?? action?.get(PDFName.of('D')));
      const page = to instanceof PDFArray ? to.get(0) : undefined;
      const at = page instanceof PDFRef ? number.get(page.toString()) : undefined;
      if (at !== undefined) pages.add(at);
      visit(one.lookupMaybe(PDFName.of('First'), PDFDict));
    }
  };
  visit(catalog.lookupMaybe(PDFName.of('Outlines'), PDFDict)?.lookupMaybe(PDFName.of('First'), PDFDict));
  return pages;
}
