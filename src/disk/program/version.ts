import { readFile } from 'node:fs/promises';
import { programPath } from './folder.js';

/** The program's version, as its package says it. */
export async function programVersion(): Promise<string> {
  const about = JSON.parse(await readFile(programPath('package.json'), 'utf8')) as { readonly version: string };
  return about.version;
}
