import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import matter from 'gray-matter';

/** The demo's records as they lie on disk, and their words read by a few lines of their own. No publication is behind what is made of
 *  them in this folder: it is the same records worked by other formulas, as an estimator would check a bid. Only `worlds.ts` imports the
 *  program, to ask it for the figures under test. */

export type Fields = Readonly<Record<string, unknown>>;

const content = join(import.meta.dirname, '../../../../content');

/** Front matter of each record of a folder, by slug. Days stay texts. */
export function recordsIn(folder: string): ReadonlyMap<string, Fields> {
  const files = readdirSync(join(content, folder), { recursive: true, encoding: 'utf8' });
  return new Map(
    files
      .filter((file) => file.endsWith('.md'))
      .sort()
      .map((file) => [file.replaceAll('\\', '/').slice(0, -3), frontMatter(join(content, folder, file))]),
  );
}

export function houseRecord(): Fields {
  return frontMatter(join(content, 'house.md'));
}

function frontMatter(path: string): Fields {
  return matter(readFileSync(path, 'utf8')).data;
}

/** `14'-6 1/2"`, `3'`, `5 1/4"` in feet. */
export function feetOf(value: unknown): number {
  const found = /^(?:(\d+)')?-?(?:(\d+)(?: (\d+)\/(\d+))?"|(\d+)\/(\d+)")?$/u.exec(text(value).trim());
  if (!found) throw new Error(`not a length: ${text(value)}`);
  const [, feet = 0, inches = 0, over = 0, under = 1, only = 0, of = 1] = found.map(
    (part) => Number(part ?? NaN) || undefined,
  );
  return feet + (inches + over / under + only / of) / 12;
}

/** `8/12` as a ratio. */
export function pitchOf(value: unknown): number {
  const [rise = NaN, run = NaN] = text(value).split('/').map(Number);
  return rise / run;
}

/** `7 %` as a share. Absent: none. */
export function shareOf(value: unknown): number {
  return value === undefined ? 0 : parseFloat(text(value)) / 100;
}

/** `$1,650 / each` or `$240` in dollars. Absent: none. */
export function dollarsOf(value: unknown): number {
  return value === undefined ? 0 : parseFloat(text(value).replaceAll(/[$,]/gu, ''));
}

/** A number that starts a text: `32 sq ft`, `1,000 sq ft`. */
export function numberOf(value: unknown): number {
  return parseFloat(text(value).replaceAll(',', ''));
}

export function text(value: unknown): string {
  if (typeof value === 'string' || typeof value === 'number') return String(value);
  throw new Error(`not a text: ${JSON.stringify(value)}`);
}

/** One or several, as a list. Absent: none. */
export function listOf(value: unknown): readonly unknown[] {
  if (value === undefined) return [];
  return Array.isArray(value) ? (value as readonly unknown[]) : [value];
}

export function groupsOf(value: unknown): readonly Fields[] {
  return listOf(value) as readonly Fields[];
}

export function groupOf(value: unknown): Fields {
  return (value ?? {}) as Fields;
}

export const sum = (numbers: Iterable<number>): number => [...numbers].reduce((total, number) => total + number, 0);
