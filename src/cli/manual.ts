import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { Command } from 'commander';
import { programPath } from '../disk/program/index.js';
import type { ManualText } from '../site/index.js';
import type { Console } from './console.js';

/** `bookmatch manual`: the how-to pages, the glossary and the reference, as pages to open from disk. */
export function manual(console: Console, done: (code: number) => void): Command {
  return new Command('manual')
    .option('--out <dir>', 'where to write', '_site')
    .action(async ({ out }: { readonly out: string }) => {
      const { writeManual } = await import('../site/index.js');
      const pages = await writeManual(await manualTexts(), resolve(out));
      console.tell(`${join(resolve(out), 'manual', 'index.html')}  the manual, ${pages.length} pages\n`);
      done(0);
    });
}

/** The first text of docs/, README.md, and those that it links to, in that order. */
export async function manualTexts(): Promise<readonly ManualText[]> {
  const first = await readText('README.md');
  const paths = [...first.text.matchAll(/\]\(((?:[a-z-]+\/)?[a-z-]+\.md)\)/gu)].map(([, path]) => path ?? '');
  return [first, ...(await Promise.all([...new Set(paths)].map(readText)))];
}

async function readText(path: string): Promise<ManualText> {
  return { path, text: await readFile(programPath(`docs/${path}`), 'utf8') };
}
