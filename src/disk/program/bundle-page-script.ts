import { build } from 'esbuild';
import { programPath } from './folder.js';

/** Bundles what runs in the book's pages, for browsers of the last few years. */
export async function bundlePageScript(): Promise<string> {
  const { outputFiles } = await build({
    absWorkingDir: programPath('.'),
    entryPoints: ['src/in-page/start.tsx'],
    bundle: true,
    write: false,
    minify: true,
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
    charset: 'utf8',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    legalComments: 'inline',
    logLevel: 'warning',
  });
  return outputFiles.map(({ text }) => text).join('');
}
