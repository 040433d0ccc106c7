import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { codedPicture } from '../signoff/coded-picture.js';

/** The package as somebody gets it: built, packed, and installed in an empty folder elsewhere with what it needs to run. */
const root = join(import.meta.dirname, '../..');
const folder = mkdtempSync(join(tmpdir(), 'bookmatch-installed-'));
const house = join(folder, 'house');
const installed = join(folder, 'node_modules', 'bookmatch');
const onDay = ['--house', house, '--on', '2026-04-20'];
let packed: readonly string[] = [];

/** Processes of a machine that others use too. */
const minutes = 10 * 60_000;

beforeAll(() => {
  run(process.execPath, ['--import', 'tsx', 'scripts/build.ts'], root);
  run(process.execPath, ['--import', 'tsx', 'scripts/licences.ts'], root);
  writeFileSync(join(root, 'bom.cdx.json'), run('npm', ['run', '--silent', 'bom'], root));
  // That was prepack; prepare would make files anew that other tests read at this moment.
  const said = run('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', folder], root);
  const [{ filename, files }] = JSON.parse(said) as [{ filename: string; files: readonly { path: string }[] }];
  packed = files.map(({ path }) => path);
  writeFileSync(join(folder, 'package.json'), '{ "private": true, "type": "module" }\n');
  const quick = ['--omit=dev', '--prefer-offline', '--no-audit', '--no-fund'];
  run('npm', ['install', ...quick, join(folder, filename)]);
  cpSync(join(root, 'test/cases/small-house'), house, { recursive: true });
  run('git', ['init', '--quiet', house]);
}, minutes);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('is built before it is packed, and made whole at install of a clone', () => {
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    scripts: Record<string, string>;
  };
  expect(scripts.prepack).toBe('npm run build && npm run licences && npm run --silent bom > bom.cdx.json');
  expect(scripts.prepare).toBe('npm run schemas && npm run fonts');
});

test('holds the built program, what it reads, licences, and neither sources nor tests', () => {
  const sources = packed.filter((path) => /\.tsx?$/u.test(path) && !path.endsWith('.d.ts'));
  expect(sources).toEqual([]);
  expect(packed.filter((path) => /(?:^|\/)tests?\//u.test(path))).toEqual([]);
  expect(packed).toEqual(
    expect.arrayContaining([
      'LICENCES.md',
      'LICENSE',
      'bom.cdx.json',
      'README.md',
      'content/house.md',
      'dist/bookmatch.js',
      'dist/index.d.ts',
      'dist/page/try.js',
      'fonts/print/spectral-OFL.txt',
      'fonts/web/public-sans-OFL.txt',
      'schemas/book.schema.json',
      'schemas/house.schema.json',
      'src/desk/assets/desk.css',
      'src/desk/assets/desk.js',
      'src/desk/assets/there.js',
      'src/site/pages-root/.gitkeep',
    ]),
  );
});

test('installs what it runs on and no tools of its making', () => {
  const names = readdirSync(join(folder, 'node_modules'));
  expect(names).toContain('pdf-lib');
  for (const tool of ['typescript', 'tsx', 'esbuild', 'vitest', '@expo-google-fonts', 'subset-font'])
    expect(names).not.toContain(tool);
});

test('bundles nothing once it is installed', () => {
  const parts = readdirSync(join(installed, 'dist'), { recursive: true, encoding: 'utf8' });
  const scripts = parts.filter((path) => path.endsWith('.js') && !path.startsWith('page'));
  expect(
    scripts.filter((path) => /["']esbuild["']/u.test(readFileSync(join(installed, 'dist', path), 'utf8'))),
  ).toEqual([]);
});

describe('the command', () => {
  test('runs by its name', () => {
    expect(run('npx', ['bookmatch', '--help'])).toMatch(/Usage: bookmatch[^]*\bcheck\b[^]*\bbuild\b/u);
  }, 60_000);

  test('checks a house', () => {
    expect(bookmatch('check', ...onDay)).toContain('No errors.');
  });

  test(
    'builds its book: pages with fonts and search, PDFs, handouts, data',
    () => {
      const out = join(folder, 'out');
      bookmatch('build', ...onDay, '--out', out);
      for (const path of [
        'book/index.html',
        'book/assets/style.css',
        'book/assets/minisearch.js',
        'book/assets/try-data.js',
        'book/assets/fonts/spectral-latin-400-normal.woff2',
        'book/assets/fonts/spectral-OFL.txt',
        'book.pdf',
        'data/book.json',
        'handout/carpentry/carpentry.pdf',
        'handout/carpentry/assets/fonts/public-sans-latin-400-normal.woff2',
      ])
        expect(existsSync(join(out, path)), path).toBe(true);
      expect(readFileSync(join(out, 'book.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
      const script = (path: string): string => readFileSync(path, 'utf8');
      expect(script(join(out, 'book/assets/try.js'))).toBe(script(join(installed, 'dist/page/try.js')));
    },
    minutes,
  );

  test('reads the code in a picture by what was installed with it', () => {
    const picture = join(folder, 'picture');
    writeFileSync(picture, codedPicture('tel:5550117'));
    expect(() => bookmatch('verify', picture, '--house', house)).toThrow(
      "its code is that of no printed sheet, and says 'tel:5550117'",
    );
  });

  test.each([
    // Colors of problems are one small file.
    ['bookmatch.js', /^(?:commander|picocolors|temporal-polyfill)$/u],
    ['index.js', /^(?!.*(?:eleventy|typst|pdf|pkijs|asn1js|forge|preact|markdown-it))/u],
    // It reads prose as handouts do, to tell what they leave out.
    ['check', /^(?!.*(?:eleventy|typst|pdf|pkijs|asn1js|forge|preact))/u],
    ['build', /^(?!.*(?:eleventy|typst|pdf|pkijs|asn1js|forge))/u],
    ['sign', /^(?!.*(?:eleventy|typst|preact|markdown-it))/u],
    // What decodes pictures is for who hands it one.
    ['verify', /^(?!.*(?:eleventy|typst|preact|zxing|jsquash))/u],
  ])('%s brings no package along before it needs it', (name, expected) => {
    const packages = packagesOf(fileOf(name));
    expect(packages.size).toBeGreaterThan(1);
    expect([...packages].filter((one) => !expected.test(one))).toEqual([]);
  });
});

describe('a script', () => {
  test('reads a house and gets the Book that the command prints', () => {
    const script = `
      import { readBook, printProblems } from 'bookmatch';
      const { book, problems } = await readBook(process.argv[2], '2026-04-20');
      if (!book) throw new Error(printProblems(problems));
      console.log(JSON.stringify(book, null, 2));
    `;
    writeFileSync(join(folder, 'ask.mjs'), script);
    expect(run(process.execPath, ['ask.mjs', house])).toBe(bookmatch('build', '--json', ...onDay));
  });

  test('is checked against the types, which need no others', () => {
    const typed = (field: string): string => `
      import { readBook, type BookRoom } from 'bookmatch';
      const { book, problems } = await readBook('house', '2026-04-20');
      export const rooms: readonly BookRoom[] = book?.rooms ?? [], today: number | undefined = book?.money.${field};
      export const first: string | undefined = problems[0]?.message;
    `;
    mkdirSync(join(folder, 'typed'));
    writeFileSync(join(folder, 'typed/right.ts'), typed('today'));
    writeFileSync(join(folder, 'typed/wrong.ts'), typed('tody'));
    const options = ['--noEmit', '--strict', '--module', 'nodenext', '--target', 'es2022', '--lib', 'es2022'];
    const tsc = (file: string): string => run(process.execPath, [typescript, ...options, join('typed', file)]);
    expect(tsc('right.ts')).toBe('');
    expect(() => tsc('wrong.ts')).toThrow(/'tody' does not exist.*Did you mean 'today'/u);
  }, 60_000);
});

const typescript = join(root, 'node_modules/typescript/bin/tsc');

function bookmatch(...words: string[]): string {
  return run(join(folder, 'node_modules/.bin/bookmatch'), words);
}

/** What a program prints; throws with all that it said when it fails. */
function run(program: string, args: readonly string[], cwd = folder): string {
  try {
    return execFileSync(program, args, { cwd, encoding: 'utf8', stdio: 'pipe', maxBuffer: 64 * 1024 * 1024 });
  } catch (error) {
    const { stdout, stderr } = error as { readonly stdout?: string; readonly stderr?: string };
    throw new Error(`${program} ${args.join(' ')}\n${stdout}\n${stderr}`, { cause: error });
  }
}

/** The built file of a command, or the one of that name. */
function fileOf(name: string): string {
  if (name.endsWith('.js')) return join(installed, 'dist', name);
  const parts = join(installed, 'dist/part');
  const file = readdirSync(parts).find((one) => new RegExp(`^${name}-[A-Z0-9]+\\.js$`, 'u').test(one));
  if (file === undefined) throw new Error(`no part of the package is of ${name}`);
  return join(parts, file);
}

/** Packages that a built file imports before it runs, by itself and by the parts that it imports. */
function packagesOf(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return new Set();
  seen.add(file);
  const named = [...readFileSync(file, 'utf8').matchAll(/^(?:import|export)\b[^;]*?"([^"]+)";$/gmu)].map(
    ([, from = '']) => from,
  );
  const packages = new Set(named.filter((from) => !from.startsWith('.') && !from.startsWith('node:')));
  for (const part of named.filter((from) => from.startsWith('.')))
    for (const one of packagesOf(join(dirname(file), part), seen)) packages.add(one);
  return packages;
}
