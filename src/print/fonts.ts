import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { readFontFile, type FontFile } from './font-file.js';

const faces = [
  ['public-sans', '400Regular', 'PublicSans'],
  ['public-sans', '400Regular_Italic', 'PublicSans'],
  ['public-sans', '500Medium', 'PublicSans'],
  ['public-sans', '600SemiBold', 'PublicSans'],
  ['public-sans', '600SemiBold_Italic', 'PublicSans'],
  ['public-sans', '700Bold', 'PublicSans'],
  ['spectral', '400Regular', 'Spectral'],
  ['spectral', '400Regular_Italic', 'Spectral'],
  ['spectral', '500Medium', 'Spectral'],
  ['spectral', '600SemiBold', 'Spectral'],
] as const;

let loaded: readonly FontFile[] | undefined;

/** The fonts that the book is set in, text face first. They ship with packages of this project, wherever it is run from. */
export function bookFonts(): readonly FontFile[] {
  loaded ??= faces.map(([family, weight, name]) => {
    const require = createRequire(import.meta.url);
    const folder = dirname(require.resolve(`@expo-google-fonts/${family}/package.json`));
    const stem = `${name}_${weight}`;
    return readFontFile(readFileSync(join(folder, weight, `${stem}.ttf`)), stem.replace('_', '-'));
  });
  return loaded;
}

const printable = new Map<string, boolean>();

/** Can one of the two families draw this character in each of its faces? The layout falls back from one to the other. */
export function isPrintable(character: string): boolean {
  const known = printable.get(character);
  if (known !== undefined) return known;
  const codePoint = character.codePointAt(0) ?? 0;
  const found = ['PublicSans', 'Spectral'].some((family) =>
    bookFonts()
      .filter((font) => font.name.startsWith(family))
      .every((font) => font.covers(codePoint)),
  );
  printable.set(character, found);
  return found;
}
