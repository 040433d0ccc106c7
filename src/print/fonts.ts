import { readFileSync } from 'node:fs';
import { programPath } from '../disk/program/index.js';
import { readFontFile, type FontFile } from './font-file.js';

/** The faces that the book is set in, text face first: files that scripts/fonts.ts puts into fonts/print/. */
export const printFaces = [
  'PublicSans_400Regular',
  'PublicSans_400Regular_Italic',
  'PublicSans_500Medium',
  'PublicSans_600SemiBold',
  'PublicSans_600SemiBold_Italic',
  'PublicSans_700Bold',
  'Spectral_400Regular',
  'Spectral_400Regular_Italic',
  'Spectral_500Medium',
  'Spectral_600SemiBold',
] as const;

let loaded: readonly FontFile[] | undefined;

/** These faces as files, read once. */
export function bookFonts(): readonly FontFile[] {
  loaded ??= printFaces.map((face) =>
    readFontFile(readFileSync(programPath(`fonts/print/${face}.ttf`)), face.replace('_', '-')),
  );
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
