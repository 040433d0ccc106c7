import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { bookmatch } from './command-line.js';

const dir = mkdtempSync(join(tmpdir(), 'bookmatch-certificate-'));
afterAll(() => rmSync(dir, { recursive: true }));

describe('the line for house.md', () => {
  test.each([
    [['The builder'], '- { role: builder, '],
    [['The owners'], '- { role: owner, '],
    [['A. Person', '--as', 'builder'], '- { role: builder, '],
    [['A. Person'], 'The role is owner or builder'],
  ])('of %j has the role', async (words, expected) => {
    const out = join(dir, `${words.join(' ')}.p12`);
    const { code, said } = await bookmatch(['certificate', ...words, '--out', out], { typed: 'eight letters or more' });
    expect(code).toBe(0);
    expect(said).toContain(expected);
  });
});
