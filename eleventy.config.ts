import process from 'node:process';
import type { UserConfig } from '@11ty/eleventy';
import { pagesRoot } from './src/site/assets.js';
import { bookConfig } from './src/site/config.js';

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
