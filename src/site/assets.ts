import { packagePath, programPath } from '../disk/program/index.js';

/** The pages' own faces with their licences, made by scripts/fonts.ts. */
export const webFonts = programPath('fonts/web');

/** What stands beside the pages, files and folders: from where on this disk, to where in the book's folder. */
export function assetCopies(): Readonly<Record<string, string>> {
  return {
    [programPath('src/site/assets')]: 'assets',
    [packagePath('minisearch', '../umd/index.js')]: 'assets/minisearch.js',
    [webFonts]: 'assets/fonts',
  };
}

/** The folder that Eleventy reads: empty and ours, so that nothing a house folder holds is ever taken for a template. */
export const pagesRoot = programPath('src/site/pages-root');
