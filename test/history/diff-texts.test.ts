import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { afterAll, expect, test } from 'vitest';
import { diffTexts } from '../../src/disk/history/index.js';

const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-settings-'));
const before = { TMPDIR: process.env['TMPDIR'], GIT_CONFIG_GLOBAL: process.env['GIT_CONFIG_GLOBAL'] };
afterAll(() => {
  for (const [name, value] of Object.entries(before)) {
    if (value === undefined) delete process.env[name];
    else process.env[name] = value;
  }
  rmSync(scratch, { recursive: true, force: true });
});

test('hunks of each pair, in order; what is the same has none; a side may be absent', async () => {
  const told = await diffTexts([
    { from: 'a\nb\nc\n', to: 'a\nB\nc\n' },
    { from: 'same\n', to: 'same\n' },
    { to: 'new\n' },
    { from: 'gone\n' },
    { from: 'x\n', to: 'diff --git a/from/0 b/to/0\n@@ -1 +1 @@\n' },
  ]);
  expect(told).toEqual({
    ok: true,
    diffs: [
      '@@ -1,3 +1,3 @@\n a\n-b\n+B\n c\n',
      '',
      '@@ -0,0 +1 @@\n+new\n',
      '@@ -1 +0,0 @@\n-gone\n',
      '@@ -1 +1,2 @@\n-x\n+diff --git a/from/0 b/to/0\n+@@ -1 +1 @@\n',
    ],
  });
});

test("the reader's own settings of git change nothing, and nothing is left on the disk", async () => {
  const config = join(scratch, 'config');
  writeFileSync(
    config,
    '[diff]\n  noprefix = true\n  mnemonicPrefix = true\n  external = false\n[color]\n  ui = always\n',
  );
  process.env['GIT_CONFIG_GLOBAL'] = config;
  process.env['TMPDIR'] = scratch;
  const told = await diffTexts([{ from: 'a\n', to: 'b\n' }]);
  expect(told).toEqual({ ok: true, diffs: ['@@ -1 +1 @@\n-a\n+b\n'] });
  expect(readdirSync(scratch)).toEqual(['config']);
});
