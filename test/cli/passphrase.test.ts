import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { afterAll, expect, test } from 'vitest';
import { makeCertificate } from '../signoff/make-certificate.js';
import { makeSmallPdf } from '../signoff/small-pdf.js';

const root = join(import.meta.dirname, '..', '..');
const dir = mkdtempSync(join(tmpdir(), 'bookmatch-passphrase-'));
afterAll(() => rmSync(dir, { recursive: true }));

const secret = 'Zwetschge-9';
// The program itself is run, so the certificate is valid by the real clock.
const { p12 } = makeCertificate('The owner', { from: '2020-01-01', to: '2049-12-31', passphrase: secret });
writeFileSync(join(dir, 'owner.p12'), p12);
writeFileSync(join(dir, 'book.pdf'), await makeSmallPdf());

/** Runs the program as a person would, with no terminal to ask. */
function runSign(
  passphrase: string,
  words: readonly string[],
): { readonly code: number | null; readonly said: string } {
  const command = ['--import', 'tsx', join(root, 'src/cli/bookmatch.ts'), 'sign', join(dir, 'book.pdf')];
  const certificate = ['--certificate', join(dir, 'owner.p12'), '--as', 'owner'];
  const { status, stdout, stderr } = spawnSync(process.execPath, [...command, ...certificate, ...words], {
    cwd: root,
    env: { ...process.env, BOOKMATCH_PASSPHRASE: passphrase, NODE_DEBUG: '' },
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  return { code: status, said: stdout + stderr };
}

test('the passphrase is in nothing that the program writes, whether it signs or not', () => {
  const signed = runSign(secret, []);
  expect([signed.code, signed.said.split('  ')[0]]).toEqual([0, join(dir, 'book-signed-owner.pdf')]);
  const wrong = runSign(`${secret}x`, ['--out', join(dir, 'wrong.pdf')]);
  expect([wrong.code, existsSync(join(dir, 'wrong.pdf'))]).toEqual([1, false]);
  for (const { said } of [signed, wrong]) expect(said).not.toContain(secret);
  for (const name of readdirSync(dir)) expect(readFileSync(join(dir, name)).includes(secret), name).toBe(false);
  expect(readdirSync(dir).sort()).toEqual(['book-signed-owner.pdf', 'book.pdf', 'owner.p12']);
}, 60_000);
