import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.js';
import { makeConsole } from './make-console.js';

const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-option-'));
const house = join(scratch, 'house');
afterAll(() => rmSync(scratch, { recursive: true }));

async function type(words: readonly string[]): Promise<string> {
  let said = '';
  const take = (text: string): void => void (said += text);
  await run(words, makeConsole({ out: take, error: take, today: () => '2026-03-02' }));
  return said;
}

beforeAll(async () => {
  const flags = ['--name', 'A', '--place', 'B', '--units', 'feet', '--currency', 'USD', '--room', "Kitchen 9' x 9'"];
  await type(['new', house, ...flags]);
});

describe('what cannot be an option', () => {
  const add = (...words: readonly string[]): Promise<string> =>
    type(['new', 'option', 'floor', '--house', house, '--name', 'Elm', ...words]);

  it('each --set that has no key, an unknown one or no value is told by what it lacks', async () => {
    const said = await add('--price', '$5', '--set', 'oak', '--set', 'species', '--set', 'spcies=oak', '--set', '=oak');
    expect(said.split('\n')).toEqual([
      expect.stringMatching(/^--set oak {2}it has no key: write KEY=oak; keys are kind, species, /u),
      '--set species  it has no value: write species=VALUE',
      "--set spcies=oak  there is no key 'spcies': did you mean 'species'?",
      expect.stringMatching(/^--set =oak {2}it has no key: write KEY=oak; /u),
      'Nothing was written.',
      '',
    ]);
  });

  it.each([
    ['$5 lb', "'lb' is not a unit"],
    ['abc', "'abc' is not a price: write $6.50 / sq ft"],
    ['', 'it is empty: write $6.50 / sq ft'],
    ['5 sf', "'5 sf' has no currency sign"],
    ['$5 / each', 'it is priced for sq ft, not for each: write $5 / sq ft'],
  ])('a price of %s is told in the words that were typed', async (price, words) => {
    const said = await add('--price', price);
    expect(said).toContain(`--price  ${words}`);
    expect(said).toContain('Nothing was written.');
  });

  it('a price may leave out what stands between the figure and the unit', async () => {
    await add('--price', '$5 sf');
    expect(readFileSync(join(house, 'content/options/floor/elm.md'), 'utf8')).toContain('material: $5 / sf');
  });
});

it('a price that is new is not of the quotation that a category has for all its options', async () => {
  const floor = join(house, 'content/categories/floor.md');
  const before = readFileSync(floor, 'utf8');
  const textOf = async (name: string): Promise<string> => {
    await type(['new', 'option', 'floor', '--house', house, '--name', name, '--price', '$5']);
    return readFileSync(join(house, `content/options/floor/${name.toLowerCase()}.md`), 'utf8');
  };
  expect(await textOf('Elm')).not.toContain('quoted');
  writeFileSync(floor, before.replace(/\n---\n/u, '\noptions:\n  quoted: { on: 2026-02-01, by: A showroom }\n---\n'));
  expect(await textOf('Ash')).toContain('\nquoted: none\n');
  writeFileSync(floor, before);
});
