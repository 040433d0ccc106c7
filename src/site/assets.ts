import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const require = createRequire(import.meta.url);
const own = fileURLToPath(new URL('./assets', import.meta.url));

/** Weights that the style sheets name; the same list is in assets/type.css. */
const faces = [
  ['spectral', ['400-normal', '400-italic', '600-normal']],
  ['public-sans', ['400-normal', '400-italic', '600-normal', '700-normal']],
] as const;

/** Files that stand beside the pages: from where on this disk, to where in the book's folder. */
export function assetCopies(): Readonly<Record<string, string>> {
  const copies: Record<string, string> = {
    [own]: 'assets',
    [join(dirname(require.resolve('minisearch')), '../umd/index.js')]: 'assets/minisearch.js',
  };
  for (const [family, styles] of faces) {
    const folder = dirname(require.resolve(`@fontsource/${family}/package.json`));
    copies[join(folder, 'LICENSE')] = `assets/fonts/${family}-OFL.txt`;
    for (const style of styles) {
      for (const script of ['latin', 'latin-ext']) {
        copies[join(folder, `files/${family}-${script}-${style}.woff2`)] =
          `assets/fonts/${family}-${script}-${style}.woff2`;
      }
    }
  }
  return copies;
}

/** The folder that Eleventy reads: empty and ours, so that nothing a house folder holds is ever taken for a template. */
export const pagesRoot = fileURLToPath(new URL('./pages-root', import.meta.url));
