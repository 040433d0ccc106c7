import syntaxHighlight from '@11ty/eleventy-plugin-syntaxhighlight';
import type { UserConfig } from '@11ty/eleventy';
import type { Book } from '../core/book/index.js';
import { inLocale } from '../base/units/index.js';
import type { Comparison } from '../core/compare/index.js';
import { assetCopies } from './assets.js';
import { bookSet } from './chapters.js';
import { comparisonPages, comparisonSet } from './comparison/index.js';
import { swatchFile, swatchPath } from './drawings.js';
import { pictureFiles, pictureText } from './pictures.js';
import { manualPages, type ManualText } from './manual.js';
import { checkPath, type Page, type SheetSet } from './page.js';
import { renderPage } from './render-page.js';
import { searchEntries, searchScript } from './search-index.js';
import { allSheets } from './sheets.js';
import { makeView, type Beside, type View } from './view.js';
import { virtualPages } from './virtual-pages.js';

/** Eleventy for one Book. */
export function bookConfig(book: Book, beside?: Beside): (config: UserConfig) => void {
  return (config) => {
    const view = makeView(book, beside);
    const pages = inLocale(book.house, () => allSheets(view));
    sheetsConfig(config, pages, view, bookSet(view));
    for (const option of book.options) {
      for (const size of ['small', 'large'] as const) {
        const path = checkPath(swatchPath(option, size));
        config.addTemplate(`${path}.11ty.js`, {
          data: () => ({ permalink: path, eleventyExcludeFromCollections: true }),
          render: () => swatchFile(option, size),
        });
      }
    }
    for (const picture of inLocale(book.house, () => pictureFiles(view))) {
      const path = checkPath(picture.path);
      config.addTemplate(`${path}.11ty.js`, {
        data: () => ({ permalink: path, eleventyExcludeFromCollections: true }),
        render: () => pictureText(picture),
      });
    }
    config.addTemplate('search-index.11ty.js', {
      data: () => ({ permalink: 'assets/search-index.js', eleventyExcludeFromCollections: true }),
      render: () => inLocale(book.house, () => searchScript(searchEntries(view))),
    });
  };
}

/** Eleventy for what lies between two Books, as a folder of its own. */
export function comparisonConfig(comparison: Comparison, from: Book, to: Book): (config: UserConfig) => void {
  return (config) => {
    const pages = inLocale(to.house, () => comparisonPages(comparison, from, to));
    sheetsConfig(config, pages, makeView(to), comparisonSet(comparison, pages));
  };
}

/** Eleventy for the manual. */
export function manualConfig(texts: readonly ManualText[]): (config: UserConfig) => void {
  return (config) => {
    pagesConfig(config);
    for (const page of manualPages(texts)) {
      config.addTemplate(`${page.path}.11ty.js`, {
        data: () => ({ permalink: page.path, eleventyExcludeFromCollections: true }),
        render() {
          return page.render((language, text) => this.highlight(language, text));
        },
      });
    }
  };
}

/** What every set of sheets has. The Book is held by closure: as Eleventy's data it would be copied for every page. No
 *  template language reads people's text, and no file but the assets is read: every page is a virtual template. */
function sheetsConfig(config: UserConfig, pages: readonly Page[], view: View, set: SheetSet): void {
  pagesConfig(config);
  for (const page of pages) {
    config.addTemplate(`${page.path}.11ty.js`, {
      data: () => ({ permalink: page.path, eleventyExcludeFromCollections: true }),
      render() {
        return renderPage(page, view, (language, text) => this.highlight(language, text), set);
      },
    });
  }
}

/** Pages that are all virtual templates, with the assets beside them and records' text in color. */
function pagesConfig(config: UserConfig): void {
  virtualPages(config);
  config.addPlugin(syntaxHighlight, {
    languages: ['yaml', 'markdown'],
    trim: false,
    lineSeparator: '\n',
    errorOnInvalidLanguage: true,
  });
  config.addPassthroughCopy(assetCopies());
}
