/** Writes fonts/ from the packages of the two typefaces: whole faces that the printed book is set in, and for the pages the same faces cut to
 *  two scripts, each with its licence. They are made at install and are not committed; the packed program brings them along. */
import { copyFile, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import subsetFont from 'subset-font';
import { printFaces } from '../src/print/fonts.js';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const [print, web] = [join(root, 'fonts/print'), join(root, 'fonts/web')];
const families = { PublicSans: 'public-sans', Spectral: 'spectral' } as const;
type Family = keyof typeof families;

/** What src/site/assets/type.css names, by the faces that they are cut from. */
const webFaces = {
  Spectral_400Regular: '400-normal',
  Spectral_400Regular_Italic: '400-italic',
  Spectral_600SemiBold: '600-normal',
  PublicSans_400Regular: '400-normal',
  PublicSans_400Regular_Italic: '400-italic',
  PublicSans_600SemiBold: '600-normal',
  PublicSans_700Bold: '700-normal',
} as const;

/** Code points of each file, first and last. type.css asks for latin-ext where a page has one of its letters. */
const scripts = {
  latin: [
    [0x20, 0xff],
    [0x131, 0x131],
    [0x152, 0x153],
    [0x2bb, 0x2bc],
    [0x2c6, 0x2c6],
    [0x2da, 0x2da],
    [0x2dc, 0x2dc],
    [0x304, 0x304],
    [0x308, 0x308],
    [0x329, 0x329],
    [0x2000, 0x206f],
    [0x20ac, 0x20ac],
    [0x2122, 0x2122],
    [0x2190, 0x2193],
    [0x2212, 0x2212],
    [0x2215, 0x2215],
  ],
  'latin-ext': [
    [0x100, 0x2ba],
    [0x1e00, 0x1e9f],
    [0x20a0, 0x20ab],
    [0x20ad, 0x20c0],
  ],
} as const;

/** Features of the layout that browsers use unasked, and the figures that the style sheets ask for. */
const keepFeatures = ['ccmp', 'locl', 'rlig', 'liga', 'clig', 'calt', 'kern', 'mark', 'mkmk', 'lnum', 'tnum'];

await rm(join(root, 'fonts'), { recursive: true, force: true });
for (const folder of [print, web]) {
  await mkdir(folder, { recursive: true });
  for (const name of Object.values(families))
    await copyFile(join(packageOf(name), 'LICENSE_FONT'), join(folder, `${name}-OFL.txt`));
}
for (const face of printFaces) await copyFile(fileOf(face), join(print, `${face}.ttf`));
for (const [face, style] of Object.entries(webFaces)) {
  const whole = await readFile(fileOf(face));
  for (const [script, ranges] of Object.entries(scripts)) {
    const cut = await subsetFont(whole, lettersIn(ranges), { targetFormat: 'woff2', keepFeatures });
    await writeFile(join(web, `${families[familyOf(face)]}-${script}-${style}.woff2`), cut);
  }
}

function familyOf(face: string): Family {
  return face.startsWith('Spectral') ? 'Spectral' : 'PublicSans';
}

/** `Spectral_400Regular_Italic` lies in the folder `400Regular_Italic` of its family's package. */
function fileOf(face: string): string {
  return join(packageOf(families[familyOf(face)]), face.slice(face.indexOf('_') + 1), `${face}.ttf`);
}

function packageOf(family: string): string {
  return join(root, 'node_modules/@expo-google-fonts', family);
}

function lettersIn(ranges: readonly (readonly [first: number, last: number])[]): string {
  return ranges
    .flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, index) => first + index))
    .map((code) => String.fromCodePoint(code))
    .join('');
}
