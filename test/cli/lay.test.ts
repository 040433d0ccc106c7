import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { bookmatch } from './command-line.js';

const demo = join(import.meta.dirname, '../..');
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'bookmatch-lay-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const day = ['--on', '2026-04-23'];

test('writes one drawing a level, each a whole SVG file, and says where', async () => {
  const out = join(folder, 'levels');
  const { code, said } = await bookmatch(['lay', '--house', demo, ...day, '--svg', out]);
  expect(code).toBe(0);
  expect(readdirSync(out).toSorted()).toEqual(['main.svg', 'upper.svg']);
  for (const name of ['main', 'upper']) {
    expect(said).toContain(`${join(out, `${name}.svg`)}  `);
    expect(readFileSync(join(out, `${name}.svg`), 'utf8')).toMatch(/^<svg xmlns="[^"]+" [^]*<\/svg>\n$/u);
  }
});

test('says what the disk refuses, and leaves nothing behind', async () => {
  const taken = join(folder, 'taken');
  writeFileSync(taken, '');
  const { code, said } = await bookmatch(['lay', '--house', demo, ...day, '--svg', taken]);
  expect(code).toBe(2);
  expect(said).toContain('cannot be written or read');
  expect(readFileSync(taken, 'utf8')).toBe('');
});

test('says what check says of tapes that disagree, in the same words', async () => {
  const [laid, checked] = await Promise.all([
    bookmatch(['lay', '--house', demo, ...day]),
    bookmatch(['check', '--house', demo, ...day]),
  ]);
  const told = laid.said.split('\n').filter((line) => /^content\/\S+:\d+:\d+ /u.test(line));
  for (const line of told) expect(checked.said).toContain(line);
});
