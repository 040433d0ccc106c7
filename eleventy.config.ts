import process from 'node:process';
import syntaxHighlight from '@11ty/eleventy-plugin-syntaxhighlight';
import type { UserConfig } from '@11ty/eleventy';
import type { Book } from './src/core/book/index.js';
import { inLocale } from './src/base/units/index.js';
import type { Comparison } from './src/core/compare/index.js';
import { assetCopies, pagesRoot } from './src/site/assets.js';
import { bookSet } from './src/site/chapters.js';
import { comparisonPages, comparisonSet } from './src/site/comparison/index.js';
import { swatchFile, swatchPath } from './src/site/drawings.js';
import { manualPages, type ManualText } from './src/site/manual.js';
import { checkPath, type Page, type SheetSet } from './src/site/page.js';
import { renderPage } from './src/site/render-page.js';
import { searchEntries, searchScript } from './src/site/search-index.js';
import { allSheets } from './src/site/sheets.js';
import { makeView, type Beside, type View } from './src/site/view.js';
import { virtualPages } from './src/site/virtual-pages.js';

/** Eleventy run by itself builds the house of this folder, or the folder and day that the environment names:
 *  `node --import tsx node_modules/@11ty/eleventy/cmd.cjs --config=eleventy.config.ts` */
export default async function demoConfig(config: UserConfig): Promise<void> {
  const { loadBook } = await import('./src/disk/load/index.js');
  const house = process.env['BOOKMATCH_HOUSE'] ?? '.';
  const { book, problems } = await loadBook(
    house,
    process.env['BOOKMATCH_ON'] ?? new Date().toLocaleDateString('sv-SE'),
  );
  if (!book) throw new Error(`${house} has ${problems.length} problems; run: bookmatch check --house ${house}`);
  config.setInputDirectory(pagesRoot);
  config.setOutputDirectory('_site/book');
  bookConfig(book)(config);
}

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
