import { readdir, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { byText, joinWords } from '../base/units/index.js';
import { readFileInside } from '../disk/store/index.js';
import type { Answer } from './answer.js';

const folder = 'issued';

/** What the name of a file says of it. */
interface Paper {
  readonly path: string;
  readonly isChange: boolean;
  readonly number: number;
  readonly signers: readonly string[];
}

/** PDFs that were issued or printed to be signed, by their path in the house: issues and then change orders, the last ones first, and of one the copy that
 *  most have signed. */
export async function papersOf(dir: string): Promise<readonly string[]> {
  const names = await readdir(join(dir, folder)).catch(() => []);
  const papers = names
    .map((name) => `${folder}/${name}`)
    .filter(isPaper)
    .map(paperNamed);
  const order = (a: Paper, b: Paper): number =>
    Number(a.isChange) - Number(b.isChange) ||
    b.number - a.number ||
    b.signers.length - a.signers.length ||
    byText(a.path, b.path);
  return papers.sort(order).map(({ path }) => path);
}

/** A file with another name has the number 0. */
function paperNamed(path: string): Paper {
  const [, change, digits = '0', signers] = /\/(change-)?(\d+)(?:-signed-([a-z-]+))?\.pdf$/u.exec(path) ?? [];
  return { path, isChange: change !== undefined, number: Number(digits), signers: signers?.split('-') ?? [] };
}

/** `Issue 2, signed by owner and builder`, by how the program names its files. */
export function paperWords(path: string): string {
  const { isChange, number, signers } = paperNamed(path);
  if (number === 0) return path;
  return `${isChange ? 'Change order' : 'Issue'} ${number}${signers.length === 0 ? '' : `, signed by ${joinWords(signers)}`}`;
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
