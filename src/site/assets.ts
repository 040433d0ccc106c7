import { readFileSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
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

/** The one style sheet of a set of pages. */
export const styleFile = 'assets/style.css';

/** Its parts, in the order of the cascade. */
const shared = ['type', 'stand-in', 'sheet', 'table', 'drawing', 'key-plan', 'picture'] as const;
const styles = {
  book: [
    ...shared,
    'parts',
    'choice',
    'try',
    'caution',
    'compare',
    'side',
    'drawn',
    'start',
    'room',
    'pages',
    'cards',
    'print',
    'forced',
  ],
  handout: [...shared, 'handout', 'cards', 'forced'],
} as const;

export function styleText(of: keyof typeof styles): string {
  const folder = programPath('src/site/styles');
  return styles[of].map((name) => readFileSync(join(folder, `${name}.css`), 'utf8')).join('\n');
}

/** What a folder of pages that opens by itself has in `assets/`: fonts with their licences, the style sheet, the theme, and scripts by their names. */
export async function ownAssets(
  of: keyof typeof styles,
  scripts: readonly string[] = [],
): Promise<Map<string, Uint8Array>> {
  const files = new Map<string, Uint8Array>();
  for (const name of await readdir(webFonts)) files.set(`fonts/${name}`, await readFile(join(webFonts, name)));
  files.set(basename(styleFile), Buffer.from(styleText(of)));
  for (const name of ['theme.js', ...scripts]) files.set(name, await readFile(programPath(`src/site/assets/${name}`)));
  return files;
}

/** The folder that Eleventy reads: empty and ours, so that nothing a house folder holds is ever taken for a template. */
export const pagesRoot = programPath('src/site/pages-root');
