import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** A cast makes a brand where nothing was looked at: it stands only in the files that look. */
test.each([
  ['Sieved', ['handout/sieve.ts']],
  ['Own', ['handout/own.ts']],
  ['Cleared<', ['handout/cleared.ts']],
  ['Ref', ['sheet/cell.ts']],
])('a cast to %s stands in no file but %j', (brand, files) => {
  const sources = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((path) => /\.tsx?$/u.test(path));
  const casts = sources.filter((path) => new RegExp(`\\bas (?:unknown as )?${brand}`, 'u').test(readCode(path)));
  expect(casts).toEqual(files);
});

/** Without comments, which may speak of it. */
function readCode(path: string): string {
  return readFileSync(join('src', path), 'utf8').replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*$/gmu, '');
}
