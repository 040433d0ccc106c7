import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test, vi } from 'vitest';
import { git } from '../../src/disk/history/index.js';

const dir = mkdtempSync(join(tmpdir(), 'bookmatch-git-'));
afterAll(() => rmSync(dir, { recursive: true }));

test('bytes go to git and come back as they are', async () => {
  const input = 'a\r\nb\n\u00e9 → \u{1F3E0}'.repeat(100_000);
  const answer = await git(dir, ['hash-object', '--stdin'], { input });
  // How git names a text: by its length and its bytes.
  const bytes = Buffer.from(input);
  const name = createHash('sha1').update(`blob ${bytes.length}\0`).update(bytes).digest('hex');
  expect(answer).toEqual({ ok: true, out: Buffer.from(`${name}\n`) });
});

test('a git that stops before it has read its input says why', async () => {
  const answer = await git(dir, ['rev-parse', '--verify', 'nowhere'], { input: 'x'.repeat(8_000_000) });
  expect(answer).toMatchObject({ ok: false, why: expect.stringMatching(/not a git repository/u) });
});

test('without git that is said', async () => {
  vi.stubEnv('PATH', dir);
  expect(await git(dir, ['--version'])).toEqual({ ok: false, why: 'the git program is not installed' });
  vi.unstubAllEnvs();
});
