import syntaxHighlight from '@11ty/eleventy-plugin-syntaxhighlight';
import type { UserConfig } from '@11ty/eleventy';
import type { Book } from '../core/book/index.js';
import { inLocale } from '../base/units/index.js';
import type { Comparison } from '../core/compare/index.js';
import { assetCopies } from './assets.js';
import { bookFiles, pageFiles, styleSheet, type BookFile } from './book-files.js';
import { comparisonPages, comparisonSet } from './comparison/index.js';
import { manualPages, type ManualText } from './manual.js';
import { makeView, type Beside } from './view.js';
import { virtualPages } from './virtual-pages.js';

/** Eleventy for one Book. */
export function bookConfig(book: Book, beside?: Beside): (config: UserConfig) => void {
  return (config) => {
    pagesConfig(config);
    addFiles(config, bookFiles(makeView(book, beside)));
  };
}

/** Eleventy for what lies between two Books, as a folder of its own. */
export function comparisonConfig(
  comparison: Comparison,
  from: Book,
  to: Book,
  beside?: Beside,
): (config: UserConfig) => void {
  return (config) => {
    const pages = inLocale(to.house, () => comparisonPages(comparison, from, to));
    pagesConfig(config);
    addFiles(config, [styleSheet, ...pageFiles(pages, makeView(to, beside), comparisonSet(comparison, pages, beside))]);
  };
}

/** Eleventy for the manual. */
export function manualConfig(texts: readonly ManualText[]): (config: UserConfig) => void {
  return (config) => {
    pagesConfig(config);
    addFiles(config, [styleSheet, ...manualPages(texts).map(({ path, render }) => ({ path, text: render }))]);
  };
}

/** The Book is held by closure: as Eleventy's data it would be copied for every page. No template language reads people's text, and no
 *  file but the assets is read: every page is a virtual template. */
function addFiles(config: UserConfig, files: readonly BookFile[]): void {
  for (const { path, text } of files) {
    config.addTemplate(`${path}.11ty.js`, {
      data: () => ({ permalink: path, eleventyExcludeFromCollections: true }),
      render() {
        return text((language, written) => this.highlight(language, written));
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
