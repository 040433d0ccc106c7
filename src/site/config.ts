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

/** Eleventy for one Book, whole. */
export function bookConfig(book: Book, beside?: Beside): (config: UserConfig) => void {
  return (config) => {
    filesConfig(config, bookFiles(makeView(book, beside)));
    config.addPassthroughCopy(assetCopies());
  };
}

/** Files of one write at most: Eleventy holds what it makes until the last of them is made. */
const mostAtOnce = 250;

/** Eleventy for one set of files in a folder, in parts that are written one after the other. */
export function partsOf(files: readonly BookFile[]): readonly ((config: UserConfig) => void)[] {
  const starts = files.map((_, index) => index).filter((index) => index % mostAtOnce === 0);
  return starts.map((start) => (config) => {
    filesConfig(config, files.slice(start, start + mostAtOnce));
    if (start === 0) config.addPassthroughCopy(assetCopies());
  });
}

/** What lies between two Books, as files of a folder of its own. */
export function comparisonFiles(comparison: Comparison, from: Book, to: Book, beside?: Beside): readonly BookFile[] {
  const pages = inLocale(to.house, () => comparisonPages(comparison, from, to));
  return [styleSheet, ...pageFiles(pages, makeView(to, beside), comparisonSet(comparison, pages, beside))];
}

/** The manual as files. */
export function manualFiles(texts: readonly ManualText[]): readonly BookFile[] {
  return [styleSheet, ...manualPages(texts).map(({ path, render }) => ({ path, text: render }))];
}

/** Files that are all virtual templates, with records' text in color. The Book is held by closure: as Eleventy's data it would be copied for every page. No
 *  template language reads people's text, and no file but the assets is read. */
function filesConfig(config: UserConfig, files: readonly BookFile[]): void {
  virtualPages(config);
  config.addPlugin(syntaxHighlight, {
    languages: ['yaml', 'markdown'],
    trim: false,
    lineSeparator: '\n',
    errorOnInvalidLanguage: true,
  });
  for (const { path, text } of files) {
    config.addTemplate(`${path}.11ty.js`, {
      data: () => ({ permalink: path, eleventyExcludeFromCollections: true }),
      render() {
        return text((language, written) => this.highlight(language, written));
      },
    });
  }
}
