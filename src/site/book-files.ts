import { inLocale } from '../base/units/index.js';
import { styleFile, styleText } from './assets.js';
import { bookSet } from './chapters.js';
import { swatchFile, swatchPath } from './drawings.js';
import { checkPath, type Page, type SheetSet } from './page.js';
import { pictureFiles, pictureText } from './pictures.js';
import { renderPage } from './render-page.js';
import { scriptText, searchEntries, searchScript } from './search-index.js';
import type { DeskOf, SheetContext } from './sheet-context.js';
import { allSheets } from './sheets.js';
import type { View } from './view.js';

/** A file of a set of pages, made when it is asked for. */
export interface BookFile {
  /** In the set's folder, with `/`. */
  readonly path: string;
  readonly text: (highlight: SheetContext['highlight']) => string;
}

/** All that is made of a Book but what is copied. */
export function bookFiles(view: View): readonly BookFile[] {
  return [...bookPages(view), ...besidePages(view)];
}

/** A Book's pages. `desk` says what they have besides. */
export function bookPages(view: View, desk?: DeskOf): readonly BookFile[] {
  const pages = inLocale(view.book.house, () => allSheets(view));
  return pageFiles(pages, view, bookSet(view), desk);
}

/** What pages show from files of their own: samples, pictures, what the search knows, and with what choices are tried. */
export function besidePages(view: View): readonly BookFile[] {
  const { book } = view;
  const swatches = book.options.flatMap((option) =>
    (['small', 'large'] as const).map((size) => ({
      path: swatchPath(option, size),
      text: () => swatchFile(option, size),
    })),
  );
  const pictures = inLocale(book.house, () => pictureFiles(view)).map((picture) => ({
    path: picture.path,
    text: () => pictureText(picture),
  }));
  const search = {
    path: 'assets/search-index.js',
    text: () => inLocale(book.house, () => searchScript(searchEntries(view))),
  };
  const files = [styleSheet, ...swatches, ...pictures, search, ...tryFiles(view)];
  for (const { path } of files) checkPath(path);
  return files;
}

export const styleSheet: BookFile = { path: styleFile, text: () => styleText('book') };

/** What computes choices that are tried: the house as data, and the program's own code. Pages load both with the first pick. */
function tryFiles({ beside: { trying } }: View): readonly BookFile[] {
  if (!trying) return [];
  const { script } = trying;
  return [
    {
      path: 'assets/try-data.js',
      // Read as JSON, since that is read faster than a script.
      text: () => `window.bookmatchHouse = JSON.parse(${scriptText(JSON.stringify(trying.house))});\n`,
    },
    ...(script === undefined ? [] : [{ path: tryScript, text: () => script }]),
  ];
}

/** What computes choices that are tried. */
export const tryScript = 'assets/try.js';

/** Pages of a set as files. */
export function pageFiles(pages: readonly Page[], view: View, set: SheetSet, desk?: DeskOf): readonly BookFile[] {
  return pages.map((page) => ({
    path: page.path,
    text: (highlight) => renderPage(page, view, highlight, set, desk),
  }));
}
