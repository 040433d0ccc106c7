import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readRecords } from '../../src/core/records/index.js';

/** What a metric house is told speaks its units and its currency: the cabin with one change to one record. */
const cabin = join(import.meta.dirname, '../houses/cabin');

const texts = (readdirSync(cabin, { recursive: true, encoding: 'utf8' }) as string[])
  .filter((path) => path.endsWith('.md'))
  .map((path) => ({ path, text: readFileSync(join(cabin, path), 'utf8') }));

function toldOf(record: string, from: string, to: string): readonly string[] {
  const path = `content/${record}`;
  expect(texts.find((one) => one.path === path)?.text).toContain(from);
  const changed = texts.map((one) => (one.path === path ? { path, text: one.text.replace(from, to) } : one));
  return readRecords(changed).problems.map(({ code, message, fix = '' }) => `${code} ${message} | ${fix}`);
}

const board = 'options/ceiling-board/spruce-20x120.md';

test('a board that is priced for a metre, where the ceiling is measured by area', () => {
  expect(toldOf(board, '€19.80 / m2', '€19.80 / m')).toEqual([
    'unit-unsuited ceiling-board is measured by area, priced for m², not for m | write €… / m²',
  ]);
});

test('labor that is priced for a metre', () => {
  expect(toldOf(board, '€31.00 / m2', '€31.00 / m')).toEqual([
    'unit-differs labor is for m, material for m² | price both for the same unit',
  ]);
});

test('a weight of a metre', () => {
  expect(toldOf(board, 'kg / m2', 'kg / m')).toEqual([
    'unit-differs the weight is for m, the price for m² | say the weight of one m²',
  ]);
});

test('a pack that holds metres', () => {
  expect(toldOf('options/floor/ash-21x160.md', 'holds: 1.92 m2', 'holds: 1.92 m')).toEqual([
    'unit-differs the pack holds m, the price is for m² | say how many m² it holds',
  ]);
});

test('a house record that does not parse, whose lines still tell the units and the currency of all others', () => {
  expect(toldOf('house.md', 'name: ', 'name: "')).toEqual([expect.stringMatching(/^yaml-broken /u)]);
});

test('no house record, so that nobody knows what others are written in', () => {
  const rest = texts.filter(({ path }) => path !== 'content/house.md');
  expect(readRecords(rest).problems.map(({ code }) => code)).toEqual(['house-missing']);
});
