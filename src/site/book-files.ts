import { inLocale } from '../base/units/index.js';
import { bookSet } from './chapters.js';
import { swatchFile, swatchPath } from './drawings.js';
import { checkPath, type Page, type SheetSet } from './page.js';
import { pictureFiles, pictureText } from './pictures.js';
import { renderPage } from './render-page.js';
import { searchEntries, searchScript } from './search-index.js';
import type { SheetContext } from './sheet-context.js';
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

/** A Book's pages. `desk` stands above what they show. */
export function bookPages(view: View, desk?: SheetContext['desk']): readonly BookFile[] {
  const pages = inLocale(view.book.house, () => allSheets(view));
  return pageFiles(pages, view, bookSet(view), desk);
}

/** What pages show from files of their own: samples, pictures, and what the search knows. */
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
  const files = [...swatches, ...pictures, search];
  for (const { path } of files) checkPath(path);
  return files;
}

/** Pages of a set as files. */
export function pageFiles(
  pages: readonly Page[],
  view: View,
  set: SheetSet,
  desk?: SheetContext['desk'],
): readonly BookFile[] {
  return pages.map((page) => ({
    path: page.path,
    text: (highlight) => renderPage(page, view, highlight, set, desk),
  }));
}
