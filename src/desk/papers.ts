import { readdir, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { joinWords } from '../base/units/index.js';
import { readFileInside } from '../disk/store/index.js';
import type { Answer } from './answer.js';

const folder = 'issued';

/** PDFs that were issued or printed to be signed, by their path in the house; the last ones first. */
export async function papersOf(dir: string): Promise<readonly string[]> {
  const names = await readdir(join(dir, folder)).catch(() => []);
  return names
    .map((name) => `${folder}/${name}`)
    .filter(isPaper)
    .sort((a, b) => b.localeCompare(a, 'en'));
}

/** `Issue 2, signed by owner and builder`, by how the program names its files. */
export function paperWords(path: string): string {
  const [, change, digits = '', signers] = /\/(change-)?(\d+)(?:-signed-([a-z-]+))?\.pdf$/u.exec(path) ?? [];
  if (digits === '') return path;
  const signed = signers === undefined ? '' : `, signed by ${joinWords(signers.split('-'))}`;
  return `${change === undefined ? 'Issue' : 'Change order'} ${Number(digits)}${signed}`;
}

/** One of them, to be looked at and printed. */
export async function paperAt(dir: string, path: string): Promise<Answer | undefined> {
  if (!isPaper(path)) return undefined;
  // A link that leads out of the folder is none of ours, and what is no file may never end.
  const info = await stat(join(dir, path)).catch(() => undefined);
  const body = info?.isFile() === true ? await readFileInside(join(dir, folder), basename(path)) : undefined;
  const isPdf = body !== undefined && Buffer.from(body.subarray(0, 5)).toString('latin1') === '%PDF-';
  return isPdf ? { status: 200, type: 'application/pdf', body } : undefined;
}

function isPaper(path: string): boolean {
  return /^issued\/[\w-][\w.-]*\.pdf$/u.test(path);
}
