/** Builds dist/, what the package runs: the program as JavaScript in pieces, each read when a command first needs it, and the declarations of
 *  what a script may import. Packages stay outside; templates, styles, fonts, schemas and the demo's records are read from where they lie. */
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { execa } from 'execa';
import { builtPageScript, pageScript, programDigest } from '../src/disk/program/index.js';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const dist = join(root, 'dist');
const declared = join(dist, 'declared');

await rm(dist, { recursive: true, force: true });
await Promise.all([buildProgram(), buildPageScript(), declare()]);

async function buildProgram(): Promise<void> {
  await build({
    absWorkingDir: root,
    entryPoints: {
      bookmatch: 'src/cli/bookmatch.ts',
      index: 'src/api/index.ts',
      'press-process': 'src/print/press-process.ts',
    },
    outdir: dist,
    chunkNames: 'part/[name]-[hash]',
    bundle: true,
    splitting: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    define: { builtFrom: JSON.stringify(await programDigest()) },
    logLevel: 'warning',
  });
}

/** What runs in the book's pages, so that an installed program needs no bundler. */
async function buildPageScript(): Promise<void> {
  const path = join(root, builtPageScript);
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, await pageScript());
}

/** One file of declarations, with the types that the public ones are made of and no others. */
async function declare(): Promise<void> {
  const options = { cwd: root, preferLocal: true, stdio: ['ignore', 'ignore', 'inherit'] } as const;
  await execa('tsc', ['-p', 'tsconfig.api.json'], options);
  const bundle = ['--no-check', '--no-banner', '--silent', '--export-referenced-types=false'];
  const [from, to] = [join(declared, 'src/api/index.d.ts'), join(dist, 'index.d.ts')];
  await execa('dts-bundle-generator', [...bundle, '--project', 'tsconfig.api.json', '-o', to, from], options);
  await rm(declared, { recursive: true });
}
